/** The bin in use that prey which comes in is best put into. */
import type { DayNumber } from '../calendar.ts';
import type { Mm } from '../units.ts';
import type { Bin, Lot } from './bin.ts';
import { isApart, rests } from './keeping-times.ts';

/** A bin with the mean length of what is in it or on its way to it; null where that is nothing. */
export interface Filled {
  readonly bin: Bin;
  readonly meanMm: Mm | null;
}

interface Coming extends Pick<Lot, 'fromMm' | 'toMm'> {
  readonly species: string;
}

/** Prey more than so many times as long as other prey is kept by itself. */
const TOO_LONG = 2;

/**
 * Of the holding bins of its species that are neither kept apart nor left alone the one whose prey is nearest in size
 * (by ratio), else an empty one; null where only a new one would do.
 */
export function fittingBin(bins: readonly Filled[], coming: Coming, today: DayNumber): Bin | null {
  const open = bins.filter(
    ({ bin }) =>
      bin.role === 'holding' && bin.species === coming.species && !isApart(bin, today) && !rests(bin, today),
  );
  const comingMm = (coming.fromMm + coming.toMm) / 2;
  const alike = open
    .flatMap(({ bin, meanMm }) => (meanMm === null ? [] : [{ bin, apart: apartBy(meanMm, comingMm) }]))
    .filter(({ apart }) => apart <= Math.log(TOO_LONG))
    .sort((a, b) => a.apart - b.apart);
  return (alike[0] ?? open.find(({ meanMm }) => meanMm === null))?.bin ?? null;
}

/** The log of how many times as long one is as the other. */
const apartBy = (oneMm: Mm, otherMm: Mm): number => Math.abs(Math.log(oneMm / otherMm));
