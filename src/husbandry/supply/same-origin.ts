/** Whether two bins go back to one origin, as the keeper wrote it. */
import type { Bin } from '../larder/index.ts';

const plainly = ({ origin }: Pick<Bin, 'origin'>): string => (origin ?? '').trim().toLowerCase();

/** However it is spelled; of bins without one nothing is known. */
export const sameOrigin = (a: Bin, b: Bin): boolean => plainly(a) !== '' && plainly(a) === plainly(b);
