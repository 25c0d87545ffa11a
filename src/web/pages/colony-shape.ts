/** The fields of a colony start, and what of its question each of them says. */
import { z } from 'zod';
import type { LengthUnit } from '../../../views/format.ts';
import { sizeField } from '../../../views/pages/colony-fields.ts';
import { civilDay, figureOrNone, heads, headsOrNone, oneOf } from '../../actions/fields.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { ColonyQuestion, Starters } from '../../husbandry/colony/index.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { ok, type Result } from '../../husbandry/result.ts';
import { lengthsChosen } from './choices.ts';
import { anyText, maybe, maybeTemperature, needed, space } from './typed.ts';

const DEAREST = 1_000_000;
const price = figureOrNone({
  code: 'price-out-of-range',
  least: 0,
  most: DEAREST,
  wanted: 'a price, such as 0.25',
});
const LONGEST_CURRENCY = 8;

const shapeFor = (unit: LengthUnit) => ({
  species: needed,
  room: needed,
  day: maybeTemperature(unit),
  night: maybeTemperature(unit),
  begin: oneOf(['adults', 'young']),
  females: maybe(headsOrNone),
  males: maybe(headsOrNone),
  young: maybe(headsOrNone),
  size: anyText,
  space,
  capacity: maybe(heads),
  head: price,
  starters: price,
  week: price,
  currency: anyText.pipe(
    z.string().max(LONGEST_CURRENCY, { error: `Write at most ${LONGEST_CURRENCY} letters, such as EUR.` }),
  ),
  ready: maybe(civilDay),
  wait: anyText,
});

/** Fields that were read; heads and days are still text. */
export type ColonyFields = z.output<z.ZodObject<ReturnType<typeof shapeFor>>> &
  Readonly<Record<string, string | undefined>>;

const sizesShape = ({ sizeClasses }: PreySpecies) =>
  Object.fromEntries(sizeClasses.value.map(({ name }) => [sizeField(name), maybe(headsOrNone)]));

/** Every field of the form; each trade size of the prey has its own. */
export const colonyShape = (unit: LengthUnit, species: PreySpecies) => ({
  ...shapeFor(unit),
  ...sizesShape(species),
});

export const wantedIn = (given: ColonyFields, { sizeClasses }: PreySpecies): ColonyQuestion['wanted'] =>
  sizeClasses.value
    .map(({ name, fromMm, toMm }) => ({ heads: Number(given[sizeField(name)] ?? 0), fromMm, toMm }))
    .filter(({ heads }) => heads > 0);

export function startersIn(given: ColonyFields, species: PreySpecies): Result<Starters> {
  if (given.begin === 'adults')
    return ok({ kind: 'adults', females: Number(given.females ?? 0), males: Number(given.males ?? 0) });
  const lengths = lengthsChosen(given.size, species, 'size');
  return lengths.ok ? ok({ kind: 'young', heads: Number(given.young ?? 0), ...lengths.value }) : lengths;
}

export function binIn({ space: size, capacity }: ColonyFields): ColonyQuestion['binSize'] {
  const many = capacity === undefined ? null : Number(capacity);
  return size === null && many === null ? null : { capacity: many, space: size };
}

/** Null without the price of a head: there is nothing to compare with. */
export const pricesIn = ({ head, starters, week }: ColonyFields): ColonyQuestion['prices'] =>
  head === null ? null : { perHead: head, starters: starters ?? 0, perWeek: week ?? 0 };

/** The day from which the whole harvest is wanted; null where any will do. */
export const readyIn = ({ ready }: ColonyFields): DayNumber | null =>
  ready === undefined ? null : civilDay.parse(ready);
