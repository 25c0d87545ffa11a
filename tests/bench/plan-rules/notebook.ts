/** A careful keeper's notebook: from the same log as anybody else's, how much of each size is wanted, here and coming. */
import { KINDS, type Kind, type Stage } from '../plan-worlds/kinds.ts';
import type { AnimalNote, Log } from '../plan-worlds/log.ts';
import { OFFERS, type Offer } from '../plan-worlds/sellers.ts';

/** One size the keeper buys: the offer it is bought by, and what is known of it. */
export interface Size {
  readonly offer: number;
  readonly middleMm: number;
  /** Heads wanted a day, and the share of them for fragile animals. */
  readonly daily: number;
  readonly fragile: number;
  readonly here: number;
  readonly coming: number;
}

const ENOUGH_INTERVALS = 4;
const SMALLEST_WORTH = 1 / 3;
const ALL_KINDS: readonly Kind[] = Object.values(KINDS);

const offerAt = (offer: number): Offer => OFFERS[offer] as Offer;
export const middleOf = (offer: number): number => (offerAt(offer).fromMm + offerAt(offer).toMm) / 2;

/** The sizes of a keeper who buys by these offers. */
export function sizesOf(log: Log, menu: readonly number[]): Size[] {
  const sizes = menu.map((offer) => ({
    offer,
    middleMm: middleOf(offer),
    daily: 0,
    fragile: 0,
    here: 0,
    coming: 0,
  }));
  for (const animal of log.animals) addDemand(sizes, animal);
  for (const { book, looksMm, colonyRoom } of log.tubs)
    if (colonyRoom === null) nearest(sizes, looksMm).here += book;
    else for (const [mm, heads] of spread(book)) nearest(sizes, mm).here += heads;
  for (const { offer, heads } of log.parcels) nearest(sizes, middleOf(offer)).coming += heads;
  return sizes.map((size) => ({ ...size, fragile: size.daily > 0 ? size.fragile / size.daily : 0 }));
}

interface Open {
  readonly offer: number;
  readonly middleMm: number;
  daily: number;
  fragile: number;
  here: number;
  coming: number;
}

/** A colony holds all sizes; a fifth of its heads may be fed off in a week or two. */
const spread = (book: number): (readonly [number, number])[] => [8, 13, 20, 28].map((mm) => [mm, book / 20]);

const away = (a: number, b: number): number => Math.abs(Math.log(a / b));

const nearest = (sizes: readonly Open[], mm: number): Open =>
  sizes.reduce((best, size) => (away(size.middleMm, mm) < away(best.middleMm, mm) ? size : best));

/** An animal is fed from the size nearest to its ideal among those it may eat. */
function addDemand(sizes: readonly Open[], animal: AnimalNote): void {
  const kind = ALL_KINDS.find(({ code }) => code === animal.kind) as Kind;
  const stage = stageBy(kind, animal.gaugeMm);
  const bodyMm = animal.gaugeMm * kind.bodyPerGauge;
  const [least, ideal, , most] = stage.window.map((share) => share * bodyMm) as [
    number,
    number,
    number,
    number,
  ];
  const fits = sizes.filter(
    ({ offer, middleMm }) =>
      middleMm >= least && middleMm <= most && stage.eats.includes(offerAt(offer).form),
  );
  if (fits.length === 0) return;
  const size = nearest(fits, ideal);
  const worth = Math.max(SMALLEST_WORTH, (size.middleMm / ideal) ** 3);
  const items = Math.max(1, (stage.items[0] + stage.items[1]) / 2 / worth);
  const daily = items / intervalOf(stage, animal);
  size.daily += daily;
  if (stage.urgency === 'fragile') size.fragile += daily;
}

function stageBy({ stages, grownMm }: Kind, gaugeMm: number): Stage {
  const reached = stages.filter(({ from }) => from <= gaugeMm / grownMm);
  return reached[reached.length - 1] as Stage;
}

const intervalOf = (stage: Stage, { intervals }: AnimalNote): number =>
  intervals.length >= ENOUGH_INTERVALS
    ? intervals.reduce((sum, days) => sum + days, 0) / intervals.length
    : (stage.interval[0] + stage.interval[1]) / 2;
