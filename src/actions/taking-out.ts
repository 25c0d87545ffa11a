/** Prey taken out of a bin: as many as there are, or more where the keeper insists, with the lengths they have. */
import type { DayNumber } from '../husbandry/calendar.ts';
import { type Bin, type Chain, isApart, type LengthRange, type Lot } from '../husbandry/larder/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { binNow, holdingOf, spokenDay } from '../husbandry/supply/index.ts';
import type { BinRow, EntryInput } from '../store/index.ts';
import { recordOf, settingOn } from './bin-standing.ts';
import type { Scene } from './perform.ts';

export interface Out {
  readonly bin: BinRow;
  readonly day: DayNumber;
  readonly kind: 'moved out' | 'culled';
  /** How many; 'all' for the whole bin. */
  readonly heads: number | 'all' | { readonly share: number };
  /** Which lengths, null for all; told the bin's chain, since adults are as long as their species is. */
  readonly lengths: (chain: Chain, bin: Bin) => LengthRange | null;
  /** The keeper insists: counting says more than the record. */
  readonly sure: boolean;
}

export interface Taken {
  readonly heads: number;
  readonly entries: readonly EntryInput[];
  readonly lots: readonly Lot[];
}

/** What is taken, and the line of the journal for it; or how many there are, where that is fewer. */
export async function takeOut(scene: Scene, out: Out): Promise<Result<Taken>> {
  const { day, kind, sure } = out;
  const setting = await settingOn(scene, day);
  const bin = await recordOf(scene, out.bin, day);
  const stock = binNow(setting, bin);
  const lengths = out.lengths(stock.chain, bin);
  const holding = holdingOf(setting, stock, lengths);
  const heads = headsOf(out.heads, holding.there);
  if (!sure && heads > Math.ceil(holding.most))
    return err(tooMany({ ...holding, heads, sized: lengths !== null, name: out.bin.name }));
  const entry: EntryInput = { day, kind, bin: out.bin.code, heads, ...lengths };
  return ok({ heads, entries: heads > 0 ? [entry] : [], lots: holding.lots(heads) });
}

/** Passes where a bin holds as many on that day, or the keeper insists; else it says how many there are. */
export async function unlessFewer(
  scene: Scene,
  { bin: row, day, heads, sure }: Pick<Out, 'bin' | 'day' | 'sure'> & { readonly heads: number },
): Promise<Result<null>> {
  if (sure) return ok(null);
  const setting = await settingOn(scene, day);
  const stock = binNow(setting, await recordOf(scene, row, day));
  const { there, most } = holdingOf(setting, stock, null);
  if (heads <= Math.ceil(most)) return ok(null);
  return err(tooMany({ there, heads, sized: false, name: row.name }));
}

function headsOf(wanted: Out['heads'], there: number): number {
  if (typeof wanted === 'number') return wanted;
  return Math.round(wanted === 'all' ? there : there * wanted.share);
}

interface TooMany {
  readonly there: number;
  readonly heads: number;
  readonly sized: boolean;
  readonly name: string;
}

/** 'There are about 140 of that size in Dubia colony; you wrote 400.' */
function tooMany({ there, heads, sized, name }: TooMany) {
  const about = Math.round(there);
  const known = about === 0 ? 'none' : `about ${about.toLocaleString('en-GB')}`;
  const sentence = `There ${about === 1 ? 'is' : 'are'} ${known}${sized ? ' of that size' : ''} in ${name}; you wrote ${heads}.`;
  return problem('more-than-there', `${sentence} Count it, or tick that you are sure.`, 'heads');
}

/** What is asked of both is asked at once: one tick answers only what was read. */
export function allAsked<T>(first: Result<unknown>, second: Result<T>): Result<T> {
  if (first.ok) return second;
  if (second.ok) return first;
  const { code, sentence, field } = second.problem;
  return err(problem(code, `${first.problem.sentence} ${sentence}`, field));
}

/** A bin in quarantine gives nothing away unless the keeper insists. */
export function unlessApart(bin: BinRow, day: DayNumber, sure: boolean): Result<null> {
  if (sure || bin.quarantineUntil === null || !isApart(bin, day)) return ok(null);
  const until = spokenDay(bin.quarantineUntil);
  const sentence = `${bin.name} is kept apart until ${until}, in case it carries a virus. Leave it, or tick that you are sure.`;
  return err(problem('in-quarantine', sentence, 'sure'));
}
