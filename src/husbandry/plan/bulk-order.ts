/**
 * How many the box should hold: for one offer, what an item that is really eaten costs against the packs ordered, what
 * outgrows everybody and what dies, what the last pack's heads cost, and how warmth moves it all.
 */
import { binClimate, climateAt } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import type { TempC } from '../units.ts';
import type { BulkAnswer, BulkCurve, BulkPoint, BulkQuestion } from './bulk-answer.ts';
import { type Line, lineOf, pointsOf, weeksOf } from './bulk-point.ts';
import { layOut } from './lay-out.ts';

/** Null where the offer cannot come within the weeks or cannot be sent alone, or where nobody could eat of it. */
export function bulkOrder(snapshot: Snapshot, question: BulkQuestion): BulkAnswer | null {
  const by = snapshot.facts.policy.moveByC.value;
  const now = curveAt(snapshot, question, 0);
  const offer = snapshot.market?.offers.find(({ code }) => code === question.offer);
  const of = now?.line.laid.parcels[now.line.i];
  if (!now || !offer || !of) return null;
  const others = [-by, by].flatMap((degrees) => curveAt(snapshot, question, degrees)?.curve ?? []);
  const { orderBy, sent, comes } = of;
  return {
    revision: snapshot.revision,
    day: snapshot.today,
    offer: offer.code,
    orderBy,
    sent,
    comes,
    packHeads: offer.packHeads,
    curves: [now.curve, ...others],
    breaks: offer.prices.map(({ fromPacks, packCents }, b) => {
      const next = offer.prices[b + 1]?.fromPacks ?? Number.POSITIVE_INFINITY;
      const within = now.curve.points.filter(({ packs }) => packs >= fromPacks && packs < next);
      return { fromPacks, packCents, best: cheapestOf(within) };
    }),
    weeks: weeksOf(now.line, now.curve.best),
  };
}

const cheapestOf = (points: readonly BulkPoint[]): BulkPoint | null =>
  points
    .filter(({ centsPerEaten }) => centsPerEaten !== null)
    .sort((a, b) => (a.centsPerEaten as number) - (b.centsPerEaten as number) || a.packs - b.packs)[0] ??
  null;

interface Curved {
  readonly curve: BulkCurve;
  readonly line: Line;
}

function curveAt(snapshot: Snapshot, { offer, weeks }: BulkQuestion, warmerC: TempC): Curved | null {
  const room = warmed(snapshot, offer, warmerC);
  const laid = layOut(room, { weeks, wishes: [], supposed: [] });
  const line = lineOf(laid, offer);
  if (!line) return null;
  const points = pointsOf(line);
  const best = cheapestOf(points);
  if (!best) return null;
  const climate = laid.places[line.pack.place]?.climate;
  const tempC = climate?.on(snapshot.today) ?? { minC: 0, maxC: 0 };
  return { curve: { warmerC, tempC, points, best: best.packs }, line };
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
