/** A plan put into the room: what it buys and starts as deliveries that are expected, so that the daily engine can live it through. */
import type { DayNumber } from '../calendar.ts';
import type { Bin, ExpectedDelivery, Sender } from '../larder/index.ts';
import type { Offer } from '../orders/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { LaidOut } from './lay-out.ts';
import type { ParcelOf } from './parcels.ts';
import type { Place } from './place-of.ts';
import type { Decisions } from './proposal.ts';
import { restEnds } from './rests.ts';

/** Deliveries made already, so that the engine knows those of another plan again. */
export type Made = Map<string, ExpectedDelivery>;

/** The room with all that a plan decides. */
export function withPlan({ snapshot, ...laid }: LaidOut, decided: Decisions, made: Made): Snapshot {
  const bought = laid.problem.parcels.flatMap(({ packs }, i) =>
    packs.flatMap(({ key, place }, j) => {
      const count = decided.packs[i]?.[j] ?? 0;
      if (count <= 0) return [];
      const of = laid.parcels[i] as ParcelOf;
      const offer = of.offers.find(({ code }) => key.startsWith(`order:${code}@`)) as Offer;
      const into = laid.places[place] as Place;
      return [once(made, `${key} ${count}`, () => deliveryOf({ key, of, offer, into, packs: count }))];
    }),
  );
  const flies = laid.starts.flatMap((start, i) => {
    const cups = decided.cups[i] ?? 0;
    const key = laid.problem.starts[i]?.key as string;
    return cups > 0 ? hatching(made, { laid, key, start, cups, today: snapshot.today }) : [];
  });
  const fresh = laid.places
    .filter(({ bins, into }) => bins.length === 0 && into === null)
    .map(({ bin }): Bin => bin);
  return {
    ...snapshot,
    bins: [...snapshot.bins, ...fresh],
    deliveries: [...snapshot.deliveries, ...bought, ...flies],
    leftAlone: new Map([...leftAloneBy(laid, decided), ...(snapshot.leftAlone ?? [])]),
  };
}

/** Until when each bin is left alone, where that is not as the keeper has it. */
const leftAloneBy = (
  { problem, periods, places }: Pick<LaidOut, 'problem' | 'periods' | 'places'>,
  { rests }: Decisions,
): readonly (readonly [string, DayNumber])[] =>
  problem.rests.flatMap(({ place, own }, i) => {
    const count = rests[i] as number;
    const bin = places[place]?.bin.code;
    return count > own && bin !== undefined ? [[bin, restEnds(periods, count)] as const] : [];
  });

function once(made: Made, name: string, make: () => ExpectedDelivery): ExpectedDelivery {
  const known = made.get(name);
  if (known) return known;
  const delivery = make();
  made.set(name, delivery);
  return delivery;
}

interface Delivering {
  readonly key: string;
  readonly of: ParcelOf;
  readonly offer: Offer;
  readonly into: Place;
  readonly packs: number;
}

function deliveryOf({ key, of, offer, into, packs }: Delivering): ExpectedDelivery {
  return {
    code: key,
    species: offer.species,
    bin: into.into ?? into.bin.code,
    lot: { heads: packs * offer.packHeads, fromMm: offer.fromMm, toMm: offer.toMm },
    day: of.comes,
    sender: of.sender,
  };
}

interface Hatching {
  readonly laid: Pick<LaidOut, 'places'>;
  readonly key: string;
  readonly start: LaidOut['starts'][number];
  readonly cups: number;
  readonly today: number;
}

const NOTHING_UNKNOWN: Sender = { lossShare: 0, overCountShare: 0, lateChance: 0 };

/** Flies of cups that are not started yet, as they come out: twice a week. */
function hatching(made: Made, { laid, key, start, cups, today }: Hatching): ExpectedDelivery[] {
  const place = laid.places[start.place] as Place;
  const mm = place.chain.species.adultLengthMm.value;
  const span = Math.floor(DAYS_PER_WEEK / 2);
  const spells = Math.ceil(start.flies.length / span);
  return Array.from({ length: spells }, (_, i) => i * span).flatMap((since) => {
    const flies = start.flies.subarray(since, since + span).reduce((a, b) => a + b, 0) * cups;
    const day = start.day + since;
    if (flies < 1 || day <= today) return [];
    const name = `${key}+${since} ${cups}`;
    return [
      once(made, name, () => ({
        code: name,
        species: start.species,
        bin: place.bin.code,
        lot: { heads: flies, fromMm: mm, toMm: mm },
        day,
        sender: NOTHING_UNKNOWN,
      })),
    ];
  });
}
