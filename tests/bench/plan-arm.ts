/** The program as somebody who buys: the keeper's log turned into a snapshot, and the week's lines of its plan into orders. */
import { kindsByCode } from '../../src/facts/kinds/index.ts';
import { policy } from '../../src/facts/policy.ts';
import { speciesByCode } from '../../src/facts/prey/index.ts';
import { type Animal, type Kind, NOTHING_ON_RECORD } from '../../src/husbandry/animals/index.ts';
import { servedOnRecord } from '../../src/husbandry/appetite/index.ts';
import type { Bin, BinEvent, ExpectedDelivery } from '../../src/husbandry/larder/index.ts';
import type { PlanAnswer, PlanLine, PlanQuestion } from '../../src/husbandry/plan/index.ts';
import type { Facts, Snapshot } from '../../src/husbandry/snapshot.ts';
import { FIRST_DAY, marketOf, slug } from './plan-market.ts';
import type {
  AnimalNote,
  Buyer,
  Log,
  Order,
  ParcelNote,
  Rest,
  TubEvent,
  TubNote,
} from './plan-worlds/log.ts';
import { BREEDS } from './plan-worlds/prey.ts';
import * as sellers from './plan-worlds/sellers.ts';

export type Planner = (snapshot: Snapshot, question: PlanQuestion) => Promise<PlanAnswer>;

const facts: Facts = { kinds: kindsByCode, species: speciesByCode, policy };

const WEEK = 7;

/** Plans every Sunday and does what has to be done before the next. */
export const planning =
  (planner: Planner, asked: Pick<PlanQuestion, 'weeks' | 'effort'>): Buyer =>
  async (log) => {
    const answer = await planner(snapshotOf(log), {
      ...asked,
      wishes: [],
      supposed: [],
      explained: false,
    });
    return stepsOf(answer.lines, log);
  };

function stepsOf(lines: readonly PlanLine[], log: Log): Awaited<ReturnType<Buyer>> {
  const before = FIRST_DAY + log.day + WEEK;
  const dayOf = (day: number): number => Math.max(log.day, day - FIRST_DAY);
  const orders: Order[] = [];
  const harvests = [];
  const rests: Rest[] = [];
  const tubOf = (bin: string) => log.tubs.find(({ code }) => slug(code) === bin)?.code ?? bin;
  for (const line of lines) {
    if (line.what === 'order' && line.actBy < before)
      orders.push({ day: dayOf(line.actBy), offer: OFFER_CODES.indexOf(line.offer), packs: line.packs });
    if (line.what === 'harvest' && line.day < before) {
      const { bin, heads, fromMm, toMm } = line;
      harvests.push({ day: dayOf(line.day), tub: tubOf(bin), heads, fromMm, toMm });
    }
    if (line.what === 'rest') rests.push({ tub: tubOf(line.bin), until: dayOf(line.until) });
  }
  return { orders, harvests, rests };
}

const OFFER_CODES = sellers.OFFERS.map(({ code }) => slug(code));

/** What the program is told: the log, the market, the room as the keeper set it; nothing else of the world. */
export function snapshotOf(log: Log): Snapshot {
  return {
    today: FIRST_DAY + log.day,
    revision: log.day,
    seed: 1,
    animals: log.animals.map(animalOf),
    bins: [...log.tubs.map(binOf), ...log.parcels.map(binFor)],
    deliveries: log.parcels.map(deliveryOf),
    changes: [],
    rooms: [{ code: 'room', name: 'Room', dayTempC: 27, nightTempC: 25 }],
    calendar: { feedingWeekdays: Array.from({ length: WEEK }, () => true), absences: [] },
    deliveryWeekdays: Array.from({ length: WEEK }, () => true),
    leadTimeDays: 3,
    market: marketOf(log),
    facts,
  };
}

const civil = (day: number | null): number | null => (day === null ? null : FIRST_DAY + day);

const animalOf = (note: AnimalNote): Animal => ({
  ...bodyOf(note),
  ...NOTHING_ON_RECORD,
  lastOffered: civil(note.lastOffered),
  lastOutcome: note.lastOutcome,
  lastTaken: civil(note.lastTaken),
  lastMoult: note.moulted && {
    earliest: FIRST_DAY + note.moulted.earliest,
    found: FIRST_DAY + note.moulted.found,
  },
  intervalsOnRecord: note.intervals,
  offersOnRecord: note.offers,
  takenOnRecord: note.taken,
  refusalsInRow: note.refusalsInRow,
  givenOnRecord: givenOnRecord(note),
});

const bodyOf = ({ code, kind, gaugeMm }: AnimalNote) => ({
  code,
  name: code,
  kind,
  count: 1,
  sex: 'unsexed' as const,
  matured: false,
  gaugeMm,
  gaugeAssumed: false,
  room: 'room',
  shelf: 'A',
  stageOverride: null,
});

function givenOnRecord(note: AnimalNote): Animal['givenOnRecord'] {
  const kind = facts.kinds.get(note.kind) as Kind;
  return servedOnRecord(kind, bodyOf(note), { given: note.given, facts });
}

const binOf = ({ code, species, colonyRoom, events }: TubNote): Bin => ({
  code: slug(code),
  name: code,
  species,
  role: colonyRoom === null ? 'holding' : 'colony',
  room: 'room',
  capacity: colonyRoom,
  keepAdults: colonyRoom !== null,
  events: events.map(eventOf),
});

function eventOf(event: TubEvent): BinEvent {
  const day = FIRST_DAY + event.day;
  switch (event.what) {
    case 'came': {
      const { heads, dead, fromMm, toMm } = event;
      return { kind: 'delivered', day, lot: { heads: heads - dead, fromMm, toMm }, dead };
    }
    case 'moved in':
      return { kind: 'moved in', day, lot: { heads: event.heads, fromMm: event.fromMm, toMm: event.toMm } };
    case 'counted':
      return { kind: 'counted', day, heads: event.heads, fromMm: null, toMm: null, grown: event.grown };
    case 'looks':
      return { kind: 'size seen', day, fromMm: event.fromMm, toMm: event.toMm };
    case 'fed':
      return { kind: 'offered', day, heads: event.heads, fromMm: event.fromMm, toMm: event.toMm };
    case 'harvested':
      return { kind: 'moved out', day, heads: event.heads, fromMm: event.fromMm, toMm: event.toMm };
    case 'died off':
      return { kind: 'died off', day, left: event.left };
  }
}

const offerOf = (offer: number): sellers.Offer => sellers.OFFERS[offer] as sellers.Offer;

/** The empty bin a parcel will go into. */
const binFor = ({ code, offer }: ParcelNote): Bin => ({
  code: slug(code),
  name: code,
  species: BREEDS[offerOf(offer).form].species,
  role: 'holding',
  room: 'room',
  capacity: null,
  keepAdults: false,
  events: [],
});

const deliveryOf = ({ code, offer, heads, due }: ParcelNote): ExpectedDelivery => ({
  code: slug(code),
  species: BREEDS[offerOf(offer).form].species,
  bin: slug(code),
  lot: { heads, fromMm: offerOf(offer).fromMm, toMm: offerOf(offer).toMm },
  day: FIRST_DAY + due,
});
