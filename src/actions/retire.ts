/** Takes breeders past their best out of a colony: grown animals, to be fed. */
import { z } from 'zod';
import { adultSize } from '../husbandry/larder/index.ts';
import { heads } from './fields.ts';
import { action } from './perform.ts';
import { transfer, transferFields } from './transfer.ts';

export const retire = action({
  verb: 'retire',
  schema: z.strictObject({ heads, ...transferFields }),
  pastDays: ['day'],
  body: (scene, given) =>
    transfer(scene, {
      ...given,
      from: given.bin,
      day: given.day,
      lengths: adultSize,
      role: () => 'holding',
      did: 'Retired',
    }),
});
