/** What was typed into the form of an offer: its size, from the trade or in lengths, and prices row by row. */
import { type LengthUnit, lengthText } from '../../../views/format.ts';
import type { Offer } from '../../husbandry/orders/index.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { type Problem, problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Mm } from '../../husbandry/units.ts';
import { lengthsChosen, sizeOptions } from './choices.ts';
import { readMm } from './typed.ts';

const MOST_ROWS = 12;
/** Rows after the first, whose price holds from one pack. */
export const MORE_ROWS = Array.from({ length: MOST_ROWS - 1 }, (_, at) => at + 2);

type Typed = Readonly<Record<string, string>>;

interface SizeTyped {
  readonly size: string;
  readonly called: string;
  readonly from: string;
  readonly to: string;
}
type Size = Pick<Offer, 'size' | 'fromMm' | 'toMm'>;

interface Reading {
  readonly species: PreySpecies;
  readonly unit: LengthUnit;
  /** What stands now; a length left as it was shown is not rounded. */
  readonly was: Offer | null;
}

/** Lengths as typed, else those of the size chosen. */
export function sizeTyped(given: SizeTyped, reading: Reading): Result<Size> {
  const { size, called } = given;
  const { species, was } = reading;
  const chosen = size === '' ? ok(null) : lengthsChosen(size, species, 'size');
  if (!chosen.ok) return chosen;
  const fromMm = endTyped(given.from, {
    ...reading,
    field: 'from',
    own: chosen.value?.fromMm,
    stands: was?.fromMm,
  });
  if (!fromMm.ok) return fromMm;
  const toMm = endTyped(given.to, { ...reading, field: 'to', own: chosen.value?.toMm, stands: was?.toMm });
  if (!toMm.ok) return toMm;
  return ok({
    size: called === '' ? nameOf(size, species) : called,
    fromMm: fromMm.value,
    toMm: toMm.value,
  });
}

interface End extends Pick<Reading, 'unit'> {
  readonly field: 'from' | 'to';
  /** Of the size chosen. */
  readonly own: Mm | undefined;
  readonly stands: Mm | undefined;
}

/** One end of the lengths. */
function endTyped(typed: string, { unit, field, own, stands }: End): Result<Mm> {
  if (typed === '')
    return own === undefined
      ? err(problem('no-size', 'Choose a size above, or say how long they are.', 'size'))
      : ok(own);
  if (stands !== undefined && typed === lengthText(stands, unit)) return ok(stands);
  const mm = readMm(unit)(typed);
  return mm.ok ? mm : err({ ...mm.problem, field });
}

const nameOf = (size: string, species: PreySpecies): string =>
  sizeOptions(species).find(({ value }) => value === size)?.label ?? '';

/** The trade size whose lengths an offer has, as an option; '' where it has its own. */
export function sizeChosen({ fromMm, toMm }: Offer, species: PreySpecies): string {
  const at = species.sizeClasses.value.findIndex((each) => each.fromMm === fromMm && each.toMm === toMm);
  return sizeOptions(species)[at]?.value ?? '';
}

interface PriceRow {
  readonly row: number;
  readonly fromPacks: string;
  readonly pack: string;
}

/** The rows that say something; one that says half of it is a Problem beside the other half. */
export function pricesTyped(given: Typed): Result<readonly PriceRow[]> {
  const first = given.price ?? '';
  const rows: PriceRow[] = first === '' ? [] : [{ row: 1, fromPacks: '1', pack: first }];
  for (const row of MORE_ROWS) {
    const { [`from${row}`]: fromPacks = '', [`price${row}`]: pack = '' } = given;
    if (fromPacks === '' && pack === '') continue;
    if (first === '') return err(problem('no-price', 'Say first what a single pack costs.', 'price'));
    if (pack === '')
      return err(problem('no-price', `Say what a pack costs from ${fromPacks} packs on.`, `price${row}`));
    if (fromPacks === '')
      return err(problem('no-break', `Say from how many packs on a pack costs ${pack}.`, `from${row}`));
    rows.push({ row, fromPacks, pack });
  }
  return ok(rows);
}

/** A problem of the act beside the field it was typed in. */
export function besideRow(found: Problem, rows: readonly PriceRow[]): Problem {
  const [, at, part] = /^prices\.(\d+)\.(fromPacks|pack)$/.exec(found.field ?? '') ?? [];
  if (at === undefined) return { ...found, field: FIELDS[found.field ?? ''] ?? found.field ?? '' };
  const row = rows[Number(at)]?.row ?? 1;
  return { ...found, field: row === 1 ? 'price' : `${part === 'pack' ? 'price' : 'from'}${row}` };
}
const FIELDS: Readonly<Record<string, string>> = { prices: 'price', fromMm: 'from', toMm: 'to' };
