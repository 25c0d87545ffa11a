/** What a pack is of, whatever the day it is sent: keys read 'order:OFFER@DATE'. */
import type { PlanPack } from './problem.ts';

export const offerOf = ({ key }: Pick<PlanPack, 'key'>): string => key.split('@')[0] ?? '';
