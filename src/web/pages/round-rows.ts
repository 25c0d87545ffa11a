/** What each row of a round's sheet comes to: as it was shown, or as its marks say. */

import type { recordEvening } from '../../actions/index.ts';
import { eaterOf, ruleOf } from '../../husbandry/animals/index.ts';
import type { PreyOffer } from '../../husbandry/appetite/index.ts';
import { windowFor } from '../../husbandry/prey/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { eveningNow } from './evening-now.ts';
import type { House } from './house.ts';
import { lengthsIn } from './lengths-in.ts';
import type { ShownOffer } from './shown-offer.ts';

/** Marks, and under `offer:`, `heads:` and `bin:<animal>` what was shown, how many, and what it got instead. */
export interface Sheet extends Readonly<Record<string, unknown>> {
  readonly day: string;
  readonly shelf?: string;
  readonly animal: readonly string[];
  readonly notFed: readonly string[];
  readonly premoult: readonly string[];
  readonly moulted: readonly string[];
  readonly died: readonly string[];
}
export type Row = Parameters<typeof recordEvening>[1]['rows'][number];

type Asks = Pick<House, 'answering'>;

/** One row an animal. Where the sheet does not say what was shown, the evening is worked out, and who is not due is left out. */
export async function rowsOf(house: Asks, snapshot: Snapshot, sheet: Sheet): Promise<Result<readonly Row[]>> {
  const animals = [...new Set(sheet.animal)];
  const untold = animals.filter((animal) => sheet[`offer:${animal}`] === undefined);
  const workedOut =
    untold.length === 0 ? new Map<string, ShownOffer | null>() : await proposed(house, snapshot);
  const rows: Row[] = [];
  for (const animal of animals) {
    const told = sheet[`offer:${animal}`] as ShownOffer | null | undefined;
    const row = await rowOf(
      { house, snapshot, sheet },
      { animal, shown: told ?? workedOut.get(animal) ?? null },
    );
    if (!row.ok) return row;
    if (told !== undefined || workedOut.has(animal) || row.value.bulk !== true) rows.push(row.value);
  }
  return ok(rows);
}

async function proposed(house: Asks, snapshot: Snapshot): Promise<ReadonlyMap<string, ShownOffer | null>> {
  const { servings } = await eveningNow(house, snapshot);
  return new Map(servings.map(({ animal, offer }) => [animal, offer === null ? null : given(offer)]));
}

const given = ({ bin, heads, fromMm, toMm, killFirst, thawed, portions }: PreyOffer): ShownOffer => ({
  bin,
  heads,
  fromMm,
  toMm,
  preKilled: killFirst || thawed === true,
  portions,
});

interface Fed {
  readonly animal: string;
  readonly shown: ShownOffer | null;
}

interface Round {
  readonly house: Asks;
  readonly snapshot: Snapshot;
  readonly sheet: Sheet;
}

async function rowOf({ house, snapshot, sheet }: Round, { animal, shown }: Fed): Promise<Result<Row>> {
  const seen = (['died', 'moulted', 'premoult'] as const).find((mark) => sheet[mark].includes(animal));
  if (seen !== undefined) return ok({ animal, outcome: seen, bulk: false });
  const other = sheet[`bin:${animal}`] as ShownOffer | { readonly bin: string } | undefined;
  const heads = sheet[`heads:${animal}`] as string | undefined;
  const otherwise = heads !== undefined || other !== undefined;
  const nothing = heads === '0' || (shown === null && !otherwise);
  if (nothing || (sheet.notFed.includes(animal) && (shown !== null || !otherwise)))
    return ok({ animal, outcome: 'not offered', bulk: shown === null && !otherwise });
  const got = other !== undefined && 'fromMm' in other ? other : shown;
  if (got !== null && (other === undefined || other.bin === got.bin))
    return ok({ animal, outcome: 'offered', ...got, heads: heads ?? got.heads, bulk: !otherwise });
  return fromBin(house, snapshot, { animal, bin: other?.bin, heads: heads ?? shown?.heads });
}

interface Instead {
  readonly animal: string;
  readonly bin: string | undefined;
  readonly heads: string | number | undefined;
}

/** Prey of a bin named alone: as long as it is there now, up to the longest this animal takes. */
async function fromBin(
  house: Asks,
  snapshot: Snapshot,
  { animal, bin, heads }: Instead,
): Promise<Result<Row>> {
  const name = snapshot.animals.find(({ code }) => code === animal)?.name || animal;
  if (bin === undefined)
    return err(problem('needed', `Say from which bin ${name} was fed.`, `bin:${animal}`));
  if (heads === undefined) return err(problem('needed', `Say how many ${name} got.`, `heads:${animal}`));
  const longestMm = longestFor(snapshot, animal, bin);
  const lengths = await lengthsIn(house, snapshot, { bin, field: `bin:${animal}`, longestMm });
  if (!lengths.ok) return lengths;
  return ok({ animal, outcome: 'offered', bin, heads, ...lengths.value, bulk: false });
}

function longestFor({ animals, bins, facts }: Snapshot, code: string, binCode: string): number {
  const animal = animals.find((each) => each.code === code);
  const kind = facts.kinds.get(animal?.kind ?? '');
  const species = facts.species.get(bins.find((each) => each.code === binCode)?.species ?? '');
  if (animal === undefined || kind === undefined || species === undefined) return Number.POSITIVE_INFINITY;
  const window = windowFor(ruleOf(kind, animal), eaterOf(kind, animal), species);
  return window?.maxMm ?? Number.POSITIVE_INFINITY;
}
