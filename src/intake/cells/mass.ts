/** Masses as keepers write them, "12 g" or "450 mg", read into milligrams. */
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { MG_PER_GRAM, type Mg } from '../../husbandry/units.ts';
import { quote } from '../quoting.ts';
import { readDecimal } from './number.ts';

const GRAMS_PER_OUNCE = 28.349_523_125;
const MG_PER: Readonly<Record<string, Mg>> = {
  mg: 1,
  g: MG_PER_GRAM,
  gram: MG_PER_GRAM,
  grams: MG_PER_GRAM,
  kg: MG_PER_GRAM * MG_PER_GRAM,
  oz: GRAMS_PER_OUNCE * MG_PER_GRAM,
};
const MASS = /^([\d.,]+)\s*(\p{L}+)\.?$/u;

/** Reads one mass; the unit must be said. */
export function readMass(text: string): Result<Mg> {
  const [, number = '', unit = ''] = MASS.exec(text.trim().toLowerCase()) ?? [];
  const amount = readDecimal(number);
  const perUnit = Object.hasOwn(MG_PER, unit) ? MG_PER[unit] : undefined;
  if (amount !== null && perUnit !== undefined) return ok(amount * perUnit);
  return err(
    problem(
      'not-a-mass',
      `${quote(text)} is not a mass that can be read; write it as 12 g or 450 mg.`,
      'mass',
    ),
  );
}
