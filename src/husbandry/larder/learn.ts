/** One event gone through: what it teaches, and what the bin is after it. */

import type { BinEvent } from './bin.ts';
import { learnHeads } from './learn-heads.ts';
import { learnSizes } from './learn-sizes.ts';
import { adultsNow, cellWeights, type Mind, meanHeads } from './mind.ts';
import { afterReading } from './replay.ts';
import type { Life } from './state.ts';

/** Goes through one event. */
export function learnFrom(mind: Mind, event: BinEvent): void {
  const sizesSeen = !learnSizes(mind, event);
  learnHeads(mind, event);
  const heads = ON_HEADS.has(event.kind) ? meanHeads(mind, cellWeights(mind)) : null;
  const reading = { heads, sizesSeen };
  mind.readings.set(event, reading);
  mind.states = mind.states.map((state, i) => {
    const life = mind.lives[i] as Life;
    return afterReading(state, event, { life, policy: mind.policy, reading });
  });
  if (LOOKS.has(event.kind)) mind.adultsSeen = adultsNow(mind);
}

type EventKind = BinEvent['kind'];

/** Events that say how many there are, or after which the mix depends on it. */
const ON_HEADS: ReadonlySet<EventKind> = new Set<EventKind>([
  'counted',
  'looked',
  'weighed',
  'found dead',
  'died off',
  'delivered',
  'moved in',
]);

/** Looks at which adults would have been seen; who feeds or takes out the dead need not have looked for them. */
const LOOKS: ReadonlySet<EventKind> = new Set<EventKind>([
  'counted',
  'looked',
  'weighed',
  'size seen',
  'sexed',
]);
