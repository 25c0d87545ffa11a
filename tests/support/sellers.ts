/** Those who sell prey in tests: a parcel on most days of the week, and a shop; written as one act. */
import { ok } from '../../src/husbandry/result.ts';
import { addAct, type OfferRow, type Store, type SupplierRow } from '../../src/store/index.ts';
import { MOMENT, TODAY } from './room-clock.ts';
import { good } from './store-at.ts';

export const parcel: SupplierRow = {
  code: 'S1',
  name: 'Hill Farm Feeders',
  kind: 'parcel',
  transitDays: 2,
  dispatchWeekdays: [true, true, true, true, true, true, false],
  cutOffDays: 1,
  cutOffTime: '14:00',
  holidays: [],
  postage: { flatCents: 590, perKgCents: 0, freeFromCents: 5000 },
  minimumCents: 500,
  lossShare: null,
  overCountShare: null,
  coldBelowC: null,
  heatAboveC: null,
  holdDays: null,
  claimHours: 24,
  notes: '',
  closed: false,
  demo: false,
};

/** The same, every day of the week. */
export const sendsDaily: SupplierRow = {
  ...parcel,
  dispatchWeekdays: parcel.dispatchWeekdays.map(() => true),
};

export const crickets: OfferRow = {
  code: 'F1',
  supplier: 'S1',
  species: 'acheta-domesticus',
  size: 'small',
  fromMm: 4,
  toMm: 6,
  packHeads: 100,
  prices: [
    { fromPacks: 1, packCents: 600 },
    { fromPacks: 3, packCents: 500 },
  ],
  mostPacks: 10,
  closed: false,
  demo: false,
};

/** Written as an act, so that it can be undone like any. */
export async function sellsPrey(
  store: Store,
  supplier: readonly SupplierRow[] = [parcel],
  offer: readonly OfferRow[] = [crickets],
): Promise<void> {
  const mark = { formId: null, verb: 'add-sellers', moment: MOMENT, day: TODAY };
  const body = { summary: 'Added sellers', puts: { supplier, offer } };
  good(await store.write(async (tx) => ok(await addAct(tx, mark, body))));
}
