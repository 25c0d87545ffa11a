/** Who sells prey in tests of orders: a sender of parcels from Monday to Saturday, with small crickets. */
import { ok } from '../../src/husbandry/result.ts';
import { addAct, type OfferRow, type Store, type SupplierRow } from '../../src/store/index.ts';
import { offerWith, supplierWith } from './market.ts';
import { MOMENT, TODAY } from './room-clock.ts';
import { good } from './store-at.ts';

/** Ordered a day before, two days on its way; postage 5.90, free from 50; at least 5. */
export const parcel: SupplierRow = {
  ...supplierWith({
    name: 'Hill Farm Feeders',
    transitDays: 2,
    dispatchWeekdays: [true, true, true, true, true, true, false],
    cutOffDays: 1,
    cutOffTime: '14:00',
    postage: { flatCents: 590, perKgCents: 0, freeFromCents: 5000 },
    minimumCents: 1000,
  }),
  claimHours: 24,
  notes: '',
  closed: false,
  demo: false,
};

/** 100 for 6.00, for 5.00 from three packs on. */
export const crickets: OfferRow = {
  ...offerWith({
    size: 'small',
    fromMm: 4,
    toMm: 6,
    prices: [
      { fromPacks: 1, packCents: 600 },
      { fromPacks: 3, packCents: 500 },
    ],
    mostPacks: 10,
  }),
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
