/** How large a bin is, as keepers write it: "40 l", "30 dm2", "500 g" of medium. */
import type { Space } from '../../husbandry/larder/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { quote } from '../quoting.ts';
import { readDecimal } from './number.ts';

const LITRES_PER_GALLON = 3.785_411_784;
const LITRES_PER_QUART = LITRES_PER_GALLON / 4;
const DM2_PER_SQUARE_FOOT = 9.290_304;

const units = (by: Space['by'], sizes: Readonly<Record<string, number>>) =>
  Object.entries(sizes).map(([unit, each]) => [unit, { by, each }] as const);

const UNITS: ReadonlyMap<string, { readonly by: Space['by']; readonly each: number }> = new Map([
  ...units('volume', { l: 1, litre: 1, litres: 1, liter: 1, liters: 1, ml: 0.001 }),
  ...units('volume', {
    gal: LITRES_PER_GALLON,
    qt: LITRES_PER_QUART,
    quart: LITRES_PER_QUART,
    quarts: LITRES_PER_QUART,
  }),
  ...units('area', { dm2: 1, cm2: 0.01, m2: 100, sqft: DM2_PER_SQUARE_FOOT, ft2: DM2_PER_SQUARE_FOOT }),
  ...units('medium', { g: 1, gram: 1, grams: 1, kg: 1000 }),
]);
const SPACE = /^([\d.,]+)\s*([a-z]+2?)\.?$/;

/** Reads one size: litres, square decimetres of surface or grams of medium; the unit must be said. */
export function readSpace(text: string): Result<Space> {
  const plain = text.trim().toLowerCase().replace('²', '2').replace('sq ft', 'sqft');
  const [, number = '', unit = ''] = SPACE.exec(plain) ?? [];
  const amount = readDecimal(number);
  const known = UNITS.get(unit);
  if (amount !== null && amount > 0 && known) return ok({ by: known.by, units: amount * known.each });
  return err(
    problem(
      'not-a-space',
      `${quote(text)} is not a size that can be read; write it as 40 l, 30 dm2 or 500 g of medium.`,
      'space',
    ),
  );
}
