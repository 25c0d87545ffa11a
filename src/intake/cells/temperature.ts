/** Temperatures as keepers write them, "85 F" or "26 °C", read into degrees Celsius. */
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { celsius, type TempC } from '../../husbandry/units.ts';
import { quote } from '../quoting.ts';
import { readDecimal } from './number.ts';

export type TemperatureUnit = 'C' | 'F';

const COLDEST_C = 0;
const HOTTEST_C = 50;
const TEMPERATURE =
  /^[~≈]?\s*(-?)\s*([\d.,]+)\s*(?:-\s*([\d.,]+)\s*)?(?:°|º|˚|deg(?:rees)?\.?)?\s*(c|f|celsius|fahrenheit)?$/i;

/** Reads one temperature, or the middle of a range; a bare number takes `defaultUnit`. */
export function readTemperature(text: string, defaultUnit: TemperatureUnit | null): Result<TempC> {
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
  if (tempC >= COLDEST_C && tempC <= HOTTEST_C) return ok(tempC);
  return err(
    problem(
      'temperature-out-of-range',
      `${quote(text)} is not a likely temperature; it should be from ${COLDEST_C} to ${HOTTEST_C} °C.`,
      'temperature',
    ),
  );
}
