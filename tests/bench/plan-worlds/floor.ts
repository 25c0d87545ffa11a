/**
 * A bound below what meals can cost: every item at the best price of its kind, sent over as generously as can be, grown to
 * the longest that fits without a death; no postage; a colony's prey for nothing. Nobody can buy so; it is loose.
 */
import type { Stage } from './kinds.ts';
import { BAND_MM, BREEDS, bandOf } from './prey.ts';
import type { Room } from './rooms.ts';
import { OFFERS, type Offer, packCents, SELLERS, type Seller } from './sellers.ts';

const MANY_PACKS = 1000;
/** Heads sent over beyond a seller's usual, at most. */
const OVER_BY_CHANCE = 0.15;

const known = new Map<Stage, Float64Array>();

/** Least cents an item of the ideal size can cost an animal. */
export function floorOf(stage: Stage, bodyMm: number, { colonies }: Room): number {
  if (colonies.some(({ form }) => stage.eats.includes(form))) return 0;
  const floors = known.get(stage) ?? new Float64Array(BAND_MM.length).fill(Number.NaN);
  known.set(stage, floors);
  const band = bandOf(bodyMm);
  if (Number.isNaN(floors[band])) floors[band] = floorAt(stage, BAND_MM[band] as number);
  return floors[band] as number;
}

function floorAt(stage: Stage, bodyMm: number): number {
  const longest = stage.window[3] * bodyMm;
  const costs = OFFERS.filter(({ form, fromMm }) => stage.eats.includes(form) && fromMm <= longest).map(
    (offer) => {
      const mm = Math.min(longest, longestOf(offer));
      return headFloor(offer) / Math.max(1, (mm / (stage.window[1] * bodyMm)) ** 3);
    },
  );
  return costs.length > 0 ? Math.min(...costs) : 0;
}

function longestOf({ form }: Offer): number {
  const { lengths } = BREEDS[form];
  return (lengths[lengths.length - 1] as readonly [number, number])[1];
}

const headFloor = (offer: Offer): number =>
  packCents(offer, MANY_PACKS) /
  (offer.packHeads * (1 + (SELLERS[offer.seller] as Seller).overShare + OVER_BY_CHANCE));
