/** Inputs drawn for the acts about suppliers and what they offer: most are good, some are not. */
import type * as actions from '../../../src/actions/index.ts';
import type { Present } from './present.ts';

type Given<N extends keyof typeof actions> = Parameters<(typeof actions)[N]>[1];

const EVERY_DAY = Array<boolean>(7).fill(true);

export const marketActs = {
  addSupplier: ({ dice, past }: Present): Given<'addSupplier'> => ({
    name: `Seller ${dice.whole(1, 9)}`,
    kind: dice.often(0.3) ? 'shop' : 'parcel',
    dispatchWeekdays: dice.often(0.95) ? EVERY_DAY : EVERY_DAY.map(() => false),
    minimum: dice.whole(0, 20),
    ...(dice.often(0.3) ? { holidays: [{ from: past(), to: past() }] } : {}),
    demo: dice.often(0.3),
  }),
  editSupplier: ({ dice, supplier, ahead }: Present): Given<'editSupplier'> => ({
    supplier: supplier(),
    ...(dice.often(0.5) ? { postageFlat: dice.pick(['4.90', '5,50', '€6', '£7']) ?? '4' } : {}),
    ...(dice.often(0.4) ? { addHoliday: { from: ahead(), to: ahead() } } : {}),
  }),
  closeSupplier: ({ supplier }: Present): Given<'closeSupplier'> => ({ supplier: supplier() }),
  addOffer: ({ dice, supplier }: Present): Given<'addOffer'> => ({
    supplier: supplier(),
    species: dice.often(0.95) ? 'acheta-domesticus' : 'no-such-prey',
    fromMm: 9,
    toMm: dice.often(0.95) ? 12 : 80,
    packHeads: 100,
    prices: [
      { fromPacks: 1, pack: '5.00' },
      { fromPacks: dice.whole(1, 6), pack: '4.50' },
    ],
    demo: dice.often(0.3),
  }),
  editOffer: ({ dice, offer }: Present): Given<'editOffer'> => ({
    offer: offer(),
    packHeads: dice.whole(0, 12),
    ...(dice.often(0.3) ? { prices: [{ fromPacks: 1, pack: dice.whole(0, 9) }] } : {}),
  }),
  closeOffer: ({ offer }: Present): Given<'closeOffer'> => ({ offer: offer() }),
};
