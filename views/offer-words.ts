/** What is done to prey before it is offered, in words. */
import type { PreyOffer } from '../src/husbandry/appetite/index.ts';

/** 'kill first', 'kill first, cut into 3', 'pre-killed: thaw first'; '' for prey that is offered alive. */
export function firstWords({
  killFirst,
  thawed,
  portions,
}: Pick<PreyOffer, 'killFirst' | 'thawed' | 'portions'>): string {
  if (thawed) return 'pre-killed: thaw first';
  if (portions > 1) return `kill first, cut into ${portions}`;
  return killFirst ? 'kill first' : '';
}
