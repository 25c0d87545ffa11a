/**
 * How many the box should hold: for one offer, what an item that is really eaten costs against the packs ordered, what
 * outgrows everybody and what dies, what the last pack's heads cost, and how warmth moves it all.
 */
import type { DayNumber } from '../calendar.ts';
import type { Cents } from '../orders/index.ts';
import { binClimate, climateAt } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import type { TempC } from '../units.ts';
import { type LaidOut, layOut } from './lay-out.ts';
import { flowsOf, type Living, livingOf } from './living.ts';
import { parcelCost } from './parcel-cost.ts';
import type { PlanParcel } from './problem.ts';
import type { Decisions } from './proposal.ts';
import { traced } from './traced.ts';

export interface BulkQuestion {
  /** Code of the offer. */
  readonly offer: string;
  readonly weeks: number;
}

/** One count of packs; heads are means over the weeks looked ahead. */
export interface BulkPoint {
  readonly packs: number;
  readonly heads: number;
  /** Goods and postage. */
  readonly cents: Cents;
  readonly eaten: number;
  readonly died: number;
  /** Alive at the end, and too large for everybody here. */
  readonly outgrown: number;
  readonly left: number;
  /** Price of a head that is eaten; null where none is. */
  readonly centsPerEaten: number | null;
  /** Price of each head more that is eaten thanks to the last pack; null where it feeds nobody. */
  readonly centsPerMoreEaten: number | null;
}

export interface BulkCurve {
  /** Warmer than the bins stand now by this. */
  readonly warmerC: TempC;
  /** Day and night in the bin. */
  readonly tempC: { readonly minC: TempC; readonly maxC: TempC };
  readonly points: readonly BulkPoint[];
  /** Packs at which a head that is eaten costs least: beyond, the next order feeds them cheaper. */
  readonly best: number;
}

export interface BulkAnswer {
  readonly revision: number;
  readonly day: DayNumber;
  readonly offer: string;
  readonly orderBy: DayNumber;
  readonly comes: DayNumber;
  readonly packHeads: number;
  /** As the bins stand now first, then cooler, then warmer. */
  readonly curves: readonly BulkCurve[];
  /** The cheapest per head eaten among the counts at each price. */
  readonly breaks: readonly {
    readonly fromPacks: number;
    readonly packCents: Cents;
    readonly best: BulkPoint | null;
  }[];
}

/** Null where the offer cannot come within the weeks, or nobody could eat of it. */
export function bulkOrder(snapshot: Snapshot, question: BulkQuestion): BulkAnswer | null {
  const by = snapshot.facts.policy.moveByC.value;
  const now = curveAt(snapshot, question, 0);
  const offer = snapshot.market?.offers.find(({ code }) => code === question.offer);
  if (!now || !offer) return null;
  const others = [-by, by].flatMap((degrees) => curveAt(snapshot, question, degrees)?.curve ?? []);
  const { orderBy, comes } = now;
  return {
    revision: snapshot.revision,
    day: snapshot.today,
    offer: offer.code,
    orderBy,
    comes,
    packHeads: offer.packHeads,
    curves: [now.curve, ...others],
    breaks: offer.prices.map(({ fromPacks, packCents }, b) => {
      const next = offer.prices[b + 1]?.fromPacks ?? Number.POSITIVE_INFINITY;
      const within = now.curve.points.filter(({ packs }) => packs >= fromPacks && packs < next);
      return { fromPacks, packCents, best: cheapestOf(within) };
    }),
  };
}

const cheapestOf = (points: readonly BulkPoint[]): BulkPoint | null =>
  points
    .filter(({ centsPerEaten }) => centsPerEaten !== null)
    .sort((a, b) => (a.centsPerEaten as number) - (b.centsPerEaten as number) || a.packs - b.packs)[0] ??
  null;

interface Curved {
  readonly curve: BulkCurve;
  readonly orderBy: DayNumber;
  readonly comes: DayNumber;
}

function curveAt(snapshot: Snapshot, { offer, weeks }: BulkQuestion, warmerC: TempC): Curved | null {
  const room = warmed(snapshot, offer, warmerC);
  const laid = layOut(room, { weeks, wishes: [], supposed: [] });
  const i = laid.problem.parcels.findIndex(({ packs }) =>
    packs.some(({ key }) => key.startsWith(`order:${offer}@`)),
  );
  const parcel = laid.problem.parcels[i];
  const of = laid.parcels[i];
  if (!parcel || !of) return null;
  const j = parcel.packs.findIndex(({ key }) => key.startsWith(`order:${offer}@`));
  const place = laid.places[parcel.packs[j]?.place as number];
  const points = pointsOf(laid, { parcel, i, j });
  return {
    curve: {
      warmerC,
      tempC: place?.climate.on(snapshot.today) ?? { minC: 0, maxC: 0 },
      points,
      best: cheapestOf(points)?.packs ?? 0,
    },
    orderBy: of.orderBy,
    comes: of.comes,
  };
}

/** The bins its prey goes to, some degrees warmer; where there are none yet, one in the first room. */
function warmed(snapshot: Snapshot, code: string, warmerC: TempC): Snapshot {
  const species = snapshot.market?.offers.find((offer) => offer.code === code)?.species;
  if (warmerC === 0 || species === undefined) return snapshot;
  const into = snapshot.bins.filter((bin) => bin.species === species && bin.role === 'holding');
  const own = ({ minC, maxC }: { minC: TempC; maxC: TempC }) => ({
    dayC: maxC + warmerC,
    nightC: minC + warmerC,
  });
  if (into.length > 0) {
    const bins = snapshot.bins.map((bin) =>
      into.includes(bin) ? { ...bin, ownC: own(binClimate(snapshot, bin).on(snapshot.today)) } : bin,
    );
    return { ...snapshot, bins };
  }
  const room = snapshot.rooms[0]?.code ?? '';
  const ownC = own(climateAt(snapshot.rooms, { room, ownC: null }).on(snapshot.today));
  const fresh = { code: '~bulk', name: 'new bin', species, role: 'holding' as const, room, ownC };
  return {
    ...snapshot,
    bins: [...snapshot.bins, { ...fresh, capacity: null, keepAdults: false, events: [] }],
  };
}

interface Line {
  readonly parcel: PlanParcel;
  readonly i: number;
  readonly j: number;
}

/** Every count of packs from 1 to the most that could be of use. */
function pointsOf(laid: LaidOut, line: Line): BulkPoint[] {
  const living = livingOf(laid.problem);
  let before = { cents: 0, eaten: 0 };
  return Array.from({ length: Math.floor(line.parcel.packs[line.j]?.most ?? 0) }, (_, k) => {
    const point = pointAt(living, laid, { ...line, count: k + 1 });
    const more = point.eaten - before.eaten;
    const centsPerMoreEaten = more > LEAST_EATEN ? (point.cents - before.cents) / more : null;
    before = point;
    return { ...point, centsPerMoreEaten };
  });
}

/** Fewer heads than this are none. */
const LEAST_EATEN = Math.sqrt(Number.EPSILON);

/** With so many packs and no other order: what becomes of them. */
function pointAt(
  living: Living,
  laid: LaidOut,
  { parcel, i, j, count }: Line & { readonly count: number },
): Omit<BulkPoint, 'centsPerMoreEaten'> {
  const { problem } = laid;
  const decided: Decisions = {
    packs: problem.parcels.map(({ packs }, at) => packs.map((_, k) => (at === i && k === j ? count : 0))),
    cups: problem.starts.map(() => 0),
  };
  const row = decided.packs[i] as number[];
  const { goods, postage } = parcelCost(parcel, row);
  const pack = parcel.packs[j] as PlanParcel['packs'][number];
  const comes = laid.periods.map((_, t) =>
    t === parcel.period ? pack.brings.map((heads) => heads * count) : new Float64Array(pack.brings.length),
  );
  const { eatenHeads, leftHeads } = traced(problem, flowsOf(living, decided), { place: pack.place, comes });
  const edible = new Set(
    problem.eaters.flatMap(({ fare }) =>
      fare.flatMap(({ place, node }) => (place === pack.place ? [node] : [])),
    ),
  );
  const sum = (isCounted: (node: number) => boolean) =>
    leftHeads.reduce((all, heads, node) => (isCounted(node) ? all + heads : all), 0);
  const heads = pack.brings.reduce((a, b) => a + b, 0) * count;
  const left = sum((node) => edible.has(node));
  const outgrown = sum((node) => !edible.has(node));
  return {
    packs: count,
    heads,
    cents: goods + postage,
    eaten: eatenHeads,
    died: Math.max(0, heads - eatenHeads - left - outgrown),
    outgrown,
    left,
    centsPerEaten: eatenHeads > 0 ? (goods + postage) / eatenHeads : null,
  };
}
