/** How lengths are written, in millimetres or inches. */
import { MM_PER_INCH, type Mm } from '../../src/husbandry/units.ts';

export type LengthUnit = 'mm' | 'in';

const SIXTEENTHS = 16;

/** Inches to the sixteenth, as keepers write them: '3/4', '1 1/2'. */
export function inches(mm: Mm): string {
  const sixteenths = Math.max(1, Math.round((mm / MM_PER_INCH) * SIXTEENTHS));
  const whole = Math.floor(sixteenths / SIXTEENTHS);
  let top = sixteenths % SIXTEENTHS;
  let bottom = SIXTEENTHS;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return `${whole}`;
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

const DECIMALS_BELOW_MM = 5;

/** A number of millimetres: a decimal only below 5 mm. */
const millimetres = (mm: Mm): string => `${mm < DECIMALS_BELOW_MM ? Math.round(mm * 2) / 2 : Math.round(mm)}`;

const bareLength = (mm: Mm, unit: LengthUnit): string => (unit === 'mm' ? millimetres(mm) : inches(mm));

/** '12 mm' or '1/2 in'. */
export const lengthText = (mm: Mm, unit: LengthUnit): string => `${bareLength(mm, unit)} ${unit}`;

/** '2–4 mm'; one length when both ends are written alike. */
export function lengthRange(fromMm: Mm, toMm: Mm, unit: LengthUnit): string {
  const [from, to] = [bareLength(fromMm, unit), bareLength(toMm, unit)];
  return from === to ? `${from} ${unit}` : `${from}–${to} ${unit}`;
}
