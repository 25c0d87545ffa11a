/** What the keeper of a world has written down by a Sunday. */
import { type Animals, bodyOf, kindOf, NEVER, REMEMBERED, stageOf } from './animal-places.ts';
import { helpingsOf } from './helpings.ts';
import type { House } from './house.ts';
import type { Tub } from './larder.ts';
import type { AnimalNote, Log, TubNote } from './log.ts';
import { BREEDS } from './prey.ts';
import type { Room } from './rooms.ts';
import { OFFERS, type Offer } from './sellers.ts';

/** What the keeper has written down by this Sunday. */
export function logOf({ room, animals, larder, post, day }: House): Log {
  return {
    day,
    animals: Array.from({ length: animals.count }, (_, i) => noteOf(room, animals, i)),
    tubs: larder.tubs.filter((tub) => tub !== null).map(tubNote),
    parcels: post.parcels.flatMap(({ packs, due, seller, sent }) =>
      [...packs].map(([offer, n]) => ({
        code: `p${seller}-${sent}-${offer}`,
        offer,
        heads: n * (OFFERS[offer] as Offer).packHeads,
        due,
      })),
    ),
    arrivals: [...post.arrivals],
  };
}

const tubNote = ({ code, form, colonyRoom, events, book, looksMm }: Tub): TubNote => ({
  code,
  form,
  species: BREEDS[form].species,
  colonyRoom,
  events,
  book,
  looksMm,
});

function noteOf(room: Room, animals: Animals, i: number): AnimalNote {
  const known = animals.known[i] as number;
  const remembered = Math.min(known, REMEMBERED);
  const dayOrNull = (day: number) => (day === NEVER ? null : day);
  return {
    code: `a${i}-${animals.turn[i]}`,
    kind: kindOf(room, animals, i).code,
    gaugeMm: animals.measuredMm[i] as number,
    lastOffered: dayOrNull(animals.offeredOn[i] as number),
    lastOutcome: (animals.refusals[i] as number) > 0 ? 'refused' : 'taken',
    lastTaken: dayOrNull(animals.takenOn[i] as number),
    moulted:
      animals.foundOn[i] === NEVER
        ? null
        : { earliest: animals.earliestOn[i] as number, found: animals.foundOn[i] as number },
    intervals: Array.from(
      { length: remembered },
      (_, n) => animals.intervals[i * REMEMBERED + ((known - remembered + n) % REMEMBERED)] as number,
    ),
    offers: animals.offers[i] as number,
    taken: animals.takes[i] as number,
    refusalsInRow: animals.refusals[i] as number,
    given: helpingsOf(animals, i),
  };
}

export const longestEaten = ({ room, animals }: House): number =>
  Array.from(
    { length: animals.count },
    (_, i) => stageOf(room, animals, i).window[3] * bodyOf(room, animals, i),
  ).reduce((most, mm) => Math.max(most, mm), 0);
