/** Records prey taken out of a bin and not fed: dead, culled or given away. */
import { loss, recordLoss } from './losses.ts';
import { action } from './perform.ts';

export const discard = action({
  verb: 'discard',
  schema: loss,
  pastDays: ['day'],
  body: (scene, given) =>
    recordLoss(scene, given, { kind: 'discarded', summary: `Discarded ${given.heads} from ${given.bin}` }),
});
