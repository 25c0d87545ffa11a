/** Temperatures as keepers write them, "85 F" or "26 °C", read into degrees Celsius. */
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { celsius, type TempC } from '../../husbandry/units.ts';
import { quote } from '../quoting.ts';
import { readDecimal } from './number.ts';

export type TemperatureUnit = 'C' | 'F';

/** Where it is measured, and what it can be there. */
interface Place {
  readonly coldestC: TempC;
  readonly hottestC: TempC;
}
const INDOORS: Place = { coldestC: 0, hottestC: 50 };
export const OUTDOORS: Place = { coldestC: -50, hottestC: 50 };
const TEMPERATURE =
  /^[~≈]?\s*(-?)\s*([\d.,]+)\s*(?:-\s*([\d.,]+)\s*)?(?:°|º|˚|deg(?:rees)?\.?)?\s*(c|f|celsius|fahrenheit)?$/i;

/** Reads one temperature, or the middle of a range; a bare number takes `defaultUnit`. */
export function readTemperature(
  text: string,
  defaultUnit: TemperatureUnit | null,
  { coldestC, hottestC }: Place = INDOORS,
): Result<TempC> {
  const [, minus, first = '', second = first, named] =
    TEMPERATURE.exec(text.trim().replace(/[–—−]/g, '-')) ?? [];
  const from = readDecimal(first);
  const to = readDecimal(second);
  const unit = named?.charAt(0).toUpperCase() ?? defaultUnit;
  if (from === null || to === null || unit === null)
    return err(
      problem(
        'not-a-temperature',
        `${quote(text)} is not a temperature; write it as 26 C or 79 F.`,
        'temperature',
      ),
    );
  const written = ((from + to) / 2) * (minus === '-' ? -1 : 1);
  const tempC = unit === 'F' ? celsius(written) : written;
  if (tempC >= coldestC && tempC <= hottestC) return ok(tempC);
  return err(
    problem(
      'temperature-out-of-range',
      `${quote(text)} is not a likely temperature; it should be from ${coldestC} to ${hottestC} °C.`,
      'temperature',
    ),
  );
}
