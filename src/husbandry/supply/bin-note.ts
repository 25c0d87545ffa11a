/** What is noted of a larder of one bin: week by week heads by length, day by day the length of the middle one. */
import { DAYS_PER_WEEK, type Mm } from '../units.ts';
import type { Larder } from './larder.ts';

export interface BinNote {
  /** Weeks noted, today's first. */
  readonly weeks: number;
  readonly days: number;
  readonly replicates: number;
  readonly bands: number;
  readonly edgesMm: Float64Array;
  /** Heads at [replicate * weeks + week]. */
  readonly heads: Float64Array;
  /** Length of the middle head at [replicate * days + day]; 0 where nobody is. */
  readonly medianMm: Float64Array;
  /** Sums over replicates at [week * bands + band]; what is shorter than the ruler in its first band. */
  readonly byBand: Float64Array;
  /** Sums over replicates of heads longer than the ruler, by week. */
  readonly beyond: Float64Array;
}

type Layout = Pick<BinNote, 'weeks' | 'days' | 'replicates' | 'edgesMm'>;

export function binNote({ weeks, days, replicates, edgesMm }: Layout): BinNote {
  const bands = edgesMm.length - 1;
  return {
    ...{ weeks, days, replicates, bands, edgesMm },
    heads: new Float64Array(replicates * weeks),
    medianMm: new Float64Array(replicates * days),
    byBand: new Float64Array(weeks * bands),
    beyond: new Float64Array(weeks),
  };
}

/** Notes the middle length of a day. */
export function noteMiddle(note: BinNote, larder: Larder, { replicate, day }: On): void {
  const here = slicesHere(larder, day);
  note.medianMm[replicate * note.days + day] = medianOf(here);
}

interface On {
  readonly replicate: number;
  readonly day: number;
}

/** Adds the larder's state on the first day of a week; heads that are not to be fed yet are left out. */
export function noteWeek(note: BinNote, larder: Larder, { replicate, day }: On): void {
  const week = day / DAYS_PER_WEEK;
  const { weeks, bands, edgesMm, heads, byBand, beyond } = note;
  for (const [mm, n] of slicesHere(larder, day)) {
    heads[replicate * weeks + week] = (heads[replicate * weeks + week] as number) + n;
    if (mm > (edgesMm[bands] as number)) beyond[week] = (beyond[week] as number) + n;
    else {
      const cell = week * bands + bandOf(edgesMm, mm);
      byBand[cell] = (byBand[cell] as number) + n;
    }
  }
}

/** Length and heads of every slice that has come, and is to be fed or was. */
function slicesHere({ stock, arrivesOn, lengthMm, heads }: Larder, day: number): [Mm, number][] {
  const here: [Mm, number][] = [];
  stock.cohorts.forEach(({ firstSlice, slices }, c) => {
    if (day < (arrivesOn[c] as number)) return;
    for (let q = firstSlice; q < firstSlice + slices; q++)
      if ((lengthMm[q] as number) > 0) here.push([lengthMm[q] as number, heads[q] as number]);
  });
  return here;
}

function medianOf(here: readonly [Mm, number][]): Mm {
  const heads = here.reduce((sum, [, n]) => sum + n, 0);
  if (heads <= 0) return 0;
  let below = 0;
  for (const [mm, n] of [...here].sort(([a], [b]) => a - b)) {
    below += n;
    if (2 * below >= heads) return mm;
  }
  return 0;
}

/** The band a length lies in; the first for what is shorter. */
function bandOf(edgesMm: Float64Array, mm: Mm): number {
  let band = 0;
  while (band < edgesMm.length - 2 && mm >= (edgesMm[band + 1] as number)) band++;
  return band;
}

interface Between {
  readonly week: number;
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

/** Mean heads between two lengths in a week; a band that is cut counts by its part. */
export function headsBetween(note: BinNote, { week, fromMm, toMm }: Between): number {
  const { edgesMm, bands, byBand, beyond, replicates } = note;
  let sum = toMm > (edgesMm[bands] as number) ? (beyond[week] as number) : 0;
  for (let band = 0; band < bands; band++) {
    const [low, high] = [band === 0 ? 0 : (edgesMm[band] as number), edgesMm[band + 1] as number];
    const part = Math.max(0, Math.min(high, toMm) - Math.max(low, fromMm)) / (high - low);
    sum += (byBand[week * bands + band] as number) * part;
  }
  return sum / replicates;
}
