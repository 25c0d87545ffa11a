/** Records the dead taken out of a bin. */
import { loss, recordLoss } from './losses.ts';
import { action } from './perform.ts';

export const foundDead = action({
  verb: 'found-dead',
  schema: loss,
  pastDays: ['day'],
  body: (scene, given) =>
    recordLoss(scene, given, {
      kind: 'found dead',
      summary: `Took ${given.heads} dead out of ${given.bin}`,
    }),
});
