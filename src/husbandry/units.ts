/** Units of the core: millimetres, milligrams, degrees Celsius, days. Others exist only at the edges. */

export type Mm = number;
export type Mg = number;
export type TempC = number;

export const MM_PER_INCH = 25.4;
export const MM_PER_CM = 10;
export const MG_PER_GRAM = 1000;
export const GRAMS_PER_KG = 1000;
export const PERCENT = 100;
/** Hundredths of a currency in one of it. */
export const CENTS_PER_UNIT = 100;
export const DAYS_PER_WEEK = 7;
export const DAYS_PER_YEAR = 365.25;
export const HOURS_PER_DAY = 24;
export const MINUTES_PER_HOUR = 60;
/** Exponent from length to volume and so, at one shape, to mass. */
export const LENGTH_TO_MASS = 3;

/** A share from 0 to 1 in percent, to a tenth. */
export const inPercent = (share: number): number => Math.round(share * PERCENT * TENTHS) / TENTHS;

const TENTHS = 10;

/** Degrees Fahrenheit to degrees Celsius. */
export const celsius = (fahrenheit: number): TempC =>
  (fahrenheit - FAHRENHEIT_AT_FREEZING) / FAHRENHEIT_PER_CELSIUS;

const FAHRENHEIT_PER_CELSIUS = 1.8;
const FAHRENHEIT_AT_FREEZING = 32;
