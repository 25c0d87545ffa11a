/**
 * How many the box should hold: for one offer, what an item that is really eaten costs against the packs ordered, what
 * outgrows everybody and what dies, what the last pack's heads cost, and how warmth moves it all.
 */
import { dispatchesOf, noMarket, type Offer } from '../orders/index.ts';
import { binClimate, climateAt } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import type { TempC } from '../units.ts';
import type { Period } from './answer.ts';
import type { BulkAnswer, BulkCurve, BulkNone, BulkPoint, BulkQuestion } from './bulk-answer.ts';
import { endOf, type Line, lineOf, pointsOf, weeksOf } from './bulk-point.ts';
import { layOut } from './lay-out.ts';
import { periodFrom, periodsOf } from './periods.ts';

export function bulkOrder(snapshot: Snapshot, question: BulkQuestion): BulkAnswer | BulkNone {
  const by = snapshot.facts.policy.moveByC.value;
  const offer = snapshot.market?.offers.find(({ code }) => code === question.offer);
  if (!offer) return 'unknown';
  const { line, curve } = curveAt(snapshot, { offer, question, warmerC: 0 });
  const of = line?.laid.parcels[line.i];
  if (!line || !of) return canCome(snapshot, offer, question) ? 'nobody eats' : 'cannot come';
  if (!curve) return 'under minimum';
  const others = [-by, by].flatMap(
    (degrees) => curveAt(snapshot, { offer, question, warmerC: degrees }).curve ?? [],
  );
  const { orderBy, sent, comes } = of;
  return {
    revision: snapshot.revision,
    day: snapshot.today,
    offer: offer.code,
    orderBy,
    sent,
    comes,
    packHeads: offer.packHeads,
    curves: [curve, ...others],
    breaks: offer.prices.map(({ fromPacks, packCents }, b) => {
      const next = offer.prices[b + 1]?.fromPacks ?? Number.POSITIVE_INFINITY;
      const within = curve.points.filter(({ packs }) => packs >= fromPacks && packs < next);
      return { fromPacks, packCents, best: cheapestOf(within) };
    }),
    weeks: weeksOf(line, curve.best),
  };
}

const cheapestOf = (points: readonly BulkPoint[]): BulkPoint | null =>
  points
    .filter(({ centsPerEaten }) => centsPerEaten !== null)
    .sort((a, b) => (a.centsPerEaten as number) - (b.centsPerEaten as number) || a.packs - b.packs)[0] ??
  null;

/** Whether a parcel of its supplier comes within the weeks. */
function canCome(
  { market = noMarket, today }: Snapshot,
  { supplier }: Offer,
  { weeks }: BulkQuestion,
): boolean {
  const sender = market.suppliers.find(({ code }) => code === supplier);
  const periods = periodsOf({ today, weeks, market });
  const { from, days } = periods[periods.length - 1] as Period;
  const sent = sender ? dispatchesOf(sender, { from: today, to: from + days }, market.weather) : [];
  return sent.some(({ comes }) => periodFrom(periods, comes) >= 0);
}

interface Curved {
  /** Null where no parcel has it for anybody; its curve is null where none is large enough to be sent. */
  readonly line: Line | null;
  readonly curve: BulkCurve | null;
}

interface Curving {
  readonly offer: Offer;
  readonly question: BulkQuestion;
  readonly warmerC: TempC;
}

function curveAt(snapshot: Snapshot, { offer, question, warmerC }: Curving): Curved {
  const room = warmed(snapshot, offer.code, warmerC);
  const laid = layOut(room, { weeks: question.weeks, wishes: [], supposed: [] });
  const line = lineOf(laid, offer.code);
  const points = line ? pointsOf(line) : [];
  const best = cheapestOf(points);
  if (!line || !best) return { line, curve: null };
  const climate = laid.places[line.pack.place]?.climate;
  const tempC = climate?.on(snapshot.today) ?? { minC: 0, maxC: 0 };
  const end = endOf(line, offer, points.at(-1)?.packs ?? 0);
  return { line, curve: { warmerC, tempC, points, best: best.packs, end } };
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
