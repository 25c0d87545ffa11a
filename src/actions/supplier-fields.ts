/** The fields of a supplier as they are entered, and the row they become. */
import { z } from 'zod';
import { supplierTrouble } from '../husbandry/orders/index.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type SupplierRow, settings, type Tx } from '../store/index.ts';
import {
  civilDay,
  figureOrNone,
  figureWithin,
  flag,
  longText,
  oneOf,
  sevenDays,
  someText,
  timeOfDay,
} from './fields.ts';
import { allCentsIn, money, moneyOrNone } from './money-fields.ts';
import { said } from './said.ts';

const MOST_TRANSIT_DAYS = 30;
const MOST_CUT_OFF_DAYS = 30;
const MOST_HOLD_DAYS = 60;
const MOST_CLAIM_HOURS = 240;
const COLDEST_OUTSIDE_C = -50;
const HOTTEST_OUTSIDE_C = 50;
const MOST_SHARE = 0.9;

const days = (most: number, example: number) => ({
  code: 'number-out-of-range',
  least: 0,
  most,
  wanted: `a whole number of days from 0 to ${most}, such as ${example}`,
  whole: true,
});
const shareOf = (what: string) =>
  figureOrNone({
    code: 'share-out-of-range',
    least: 0,
    most: MOST_SHARE,
    wanted: `a share of heads ${what} from 0 to ${MOST_SHARE}, such as 0.05`,
  });

/** Degrees outside, where it may freeze. */
const outside = {
  code: 'temperature-out-of-range',
  least: COLDEST_OUTSIDE_C,
  most: HOTTEST_OUTSIDE_C,
  wanted: `a temperature outside from ${COLDEST_OUTSIDE_C} to ${HOTTEST_OUTSIDE_C} degrees Celsius, such as -5`,
};
export const outsideC = figureWithin(outside);

export const transitDays = figureWithin(days(MOST_TRANSIT_DAYS, 2));
export const cutOffDays = figureWithin(days(MOST_CUT_OFF_DAYS, 1));
export const holdDays = figureOrNone(days(MOST_HOLD_DAYS, 7));
export const claimHours = figureOrNone({
  code: 'number-out-of-range',
  least: 0,
  most: MOST_CLAIM_HOURS,
  wanted: `a whole number of hours from 0 to ${MOST_CLAIM_HOURS}, such as 24`,
  whole: true,
});
/** Days on which nothing is sent. */
export const holiday = z.strictObject({ from: civilDay, to: civilDay });
const kind = oneOf(['parcel', 'shop']);

const fields = {
  name: someText,
  kind,
  transitDays,
  dispatchWeekdays: sevenDays,
  cutOffDays,
  cutOffTime: timeOfDay,
  holidays: z.array(holiday),
  postageFlat: money,
  postagePerKg: money,
  postageFreeFrom: moneyOrNone,
  minimum: money,
  lossShare: shareOf('lost'),
  overCountShare: shareOf('sent over'),
  coldBelowC: figureOrNone(outside),
  heatAboveC: figureOrNone(outside),
  holdDays,
  claimHours,
  notes: longText,
};

/** What may be said of a supplier that is here; what is left unsaid stays. */
export const supplierChanges = z.strictObject(fields).partial();
type Changes = z.output<typeof supplierChanges>;

export const newSupplier = z.strictObject({
  ...supplierChanges.shape,
  name: someText,
  dispatchWeekdays: sevenDays,
  kind: kind.default('parcel'),
  demo: flag.default(false),
});

/** A supplier nothing is said of yet: sends on the day of the order, for nothing. */
export const supplierAtFirst: Omit<SupplierRow, 'code' | 'name' | 'dispatchWeekdays' | 'kind' | 'demo'> = {
  transitDays: 0,
  cutOffDays: 0,
  cutOffTime: null,
  holidays: [],
  postage: { flatCents: 0, perKgCents: 0, freeFromCents: null },
  minimumCents: 0,
  lossShare: null,
  overCountShare: null,
  coldBelowC: null,
  heatAboveC: null,
  holdDays: null,
  claimHours: null,
  notes: '',
  closed: false,
};

/** The row with what was said, or a Problem with the first thing wrong. */
export async function supplierWith(tx: Tx, was: SupplierRow, given: Changes): Promise<Result<SupplierRow>> {
  const { postageFlat, postagePerKg, postageFreeFrom, minimum, ...plain } = given;
  const { purse } = await tx.ask(settings);
  const sums = allCentsIn(purse.currency, { postageFlat, postagePerKg, postageFreeFrom, minimum });
  if (!sums.ok) return sums;
  const { postageFlat: flatCents, postagePerKg: perKgCents, postageFreeFrom: freeFromCents } = sums.value;
  const postage = { ...was.postage, ...said({ flatCents, perKgCents, freeFromCents }) };
  const row = { ...was, ...said({ ...plain, minimumCents: sums.value.minimum }), postage };
  const trouble = supplierTrouble(row);
  return trouble === null ? ok(row) : err(trouble);
}
