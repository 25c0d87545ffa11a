/** Harvests prey of one size for feeding: out of a colony or bin into a holding bin, the breeders left. */
import { z } from 'zod';
import { withoutAdults } from '../husbandry/larder/index.ts';
import { inOrder, lot } from './lot-fields.ts';
import { action } from './perform.ts';
import { transfer, transferFields } from './transfer.ts';

export const harvest = action({
  verb: 'harvest',
  schema: z.strictObject({ ...lot.shape, ...transferFields }),
  pastDays: ['day'],
  body: async (scene, given) => {
    const size = inOrder(given);
    if (!size.ok) return size;
    const { heads, ...range } = size.value;
    return transfer(scene, {
      ...given,
      from: given.bin,
      day: given.day,
      heads,
      lengths: (chain, { keepAdults }) => (keepAdults ? withoutAdults(chain, range) : range),
      role: () => 'holding',
      did: 'Harvested',
    });
  },
});
