/** Why each line of a plan is there: whom it feeds, and what happens without it, on the same draws. */
import { type Estimate, estimate, exactly, sumOf } from '../../maths/estimate.ts';
import type { DayNumber } from '../calendar.ts';
import type { Cents } from '../orders/index.ts';
import type { PlanLine, Reason } from './answer.ts';
import type { EatingClass } from './classes.ts';
import { takenOf } from './harvests.ts';
import { type Bench, judgePlan, type Verdict } from './judge-plan.ts';
import type { LaidOut } from './lay-out.ts';
import { livedInFates } from './lived-in-fates.ts';
import type { Telling } from './make-plan.ts';
import { decisionsCost } from './parcel-cost.ts';
import { centsPerEaten } from './price-eaten.ts';
import { type Decisions, withoutLine } from './proposal.ts';
import { restReason } from './rest-reason.ts';
import { type Source, traced } from './traced.ts';
import type { Tried } from './tried.ts';
import { finely } from './with-ready.ts';

interface Explaining {
  readonly bench: Bench;
  readonly best: Tried;
  readonly onProgress: Telling;
}

/** The lines with their reasons; culls need none. */
export function explained(lines: readonly PlanLine[], explaining: Explaining): PlanLine[] {
  const leftAlone = new Map<string, Reason['without']>();
  return lines.map((line, i) => {
    explaining.onProgress({ step: 'explaining', share: (1 + i / lines.length) / 2, cents: null });
    switch (line.what) {
      case 'cull':
        return line;
      case 'harvest':
        return { ...line, reason: harvestReason(line, explaining, leftAlone) };
      case 'rest':
        return { ...line, reason: restReason(line, explaining.bench.laid, explaining.best) };
      default:
        return { ...line, reason: reasonOf(line, explaining) };
    }
  });
}

type Bought = Extract<PlanLine, { what: 'order' | 'start' }>;

function reasonOf(line: Bought, { bench, best }: Explaining): Reason {
  const { problem, proposal } = best;
  const source = sourceOf(line, best);
  const trace = traced(problem, proposal.flows, source);
  const rest = withoutLine(problem, proposal, line.key);
  const { laid, days } = bench;
  const held = laid.snapshot.today + days;
  const isHeld = startsEating(line) < held;
  const soon = isHeld ? comparison(best.verdict, judgePlan(bench, rest)) : nothing;
  const later = missedMealsFrom(isHeld ? held : laid.snapshot.today, bench, { best, rest });
  const without = { ...soon, missedMeals: sumOf(soon.missedMeals, later) };
  const saved = decisionsCost(problem, proposal) - decisionsCost(problem, rest);
  return told(
    bench.laid.periods,
    { eating: bench.laid.eating, heads: trace.heads, begins: startsEating(line) },
    {
      without: { ...without, cents: exactly(-saved) },
      cents: centsPerEaten(line, { problem, proposal, place: source.place, trace }),
    },
  );
}

const nothing = { missedMeals: exactly(0), dangers: exactly(0) };

/** First day on which what a line brings can be eaten. */
const startsEating = (line: Bought): DayNumber => (line.what === 'order' ? line.comes : line.yieldsFrom);

/** Meals missed more without a line in the periods from a day on, fate by fate; of dangers they say nothing. */
function missedMealsFrom(
  day: DayNumber,
  bench: Bench,
  { best, rest }: { best: Tried; rest: Decisions },
): Estimate {
  const { eating } = bench.laid.fine;
  const { periods } = bench.laid;
  const first = periods.findIndex(({ from }) => from >= day);
  if (first < 0) return exactly(0);
  const { missedIn, fates } = livedInFates(bench, finely(bench.laid, best.problem, best.level), rest);
  const more = new Float64Array(fates);
  missedIn.forEach((items, at) => {
    const fate = Math.floor(at / (periods.length * eating.length));
    if (at - fate * periods.length * eating.length < first * eating.length) return;
    const { mealItems, headsEach } = eating[at % eating.length] as EatingClass;
    more[fate] =
      (more[fate] as number) + (items - (best.lived.missedIn[at] as number)) / (mealItems * headsEach);
  });
  return estimate(more);
}

/** What the line brings. */
function sourceOf(line: Bought, { problem, proposal }: Tried): Source {
  const none = (nodes: number) => Array.from({ length: problem.periods }, () => new Float64Array(nodes));
  for (const [i, parcel] of problem.parcels.entries()) {
    const j = parcel.packs.findIndex(({ key }) => key === line.key);
    const pack = parcel.packs[j];
    if (!pack) continue;
    const comes = none(pack.brings.length);
    comes[parcel.period] = pack.brings.map((heads) => heads * (proposal.packs[i]?.[j] ?? 0));
    return { place: pack.place, comes };
  }
  const i = problem.starts.findIndex(({ key }) => key === line.key);
  const start = problem.starts[i];
  const comes = start?.brings.map((heads) => heads.map((n) => n * (proposal.cups[i] ?? 0))) ?? [];
  return { place: start?.place ?? 0, comes };
}

function comparison(plan: Verdict, without: Verdict): Omit<Reason['without'], 'cents'> {
  const difference = (a: Float64Array, b: Float64Array) =>
    estimate(a.map((value, r) => value - (b[r] as number)));
  const [after, before] = [without.judged.tally, plan.judged.tally];
  return {
    missedMeals: difference(after.missedOf, before.missedOf),
    dangers: difference(after.dangersOf, before.dangersOf),
  };
}

interface Telled {
  readonly without: Reason['without'];
  readonly cents: Cents | null;
}

/** Heads by class and period. */
interface Eaten {
  readonly eating: readonly EatingClass[];
  readonly heads: readonly ArrayLike<number>[];
  /** First day on which any can be eaten. */
  readonly begins: DayNumber;
}

function told(
  periods: LaidOut['periods'],
  { eating, heads, begins }: Eaten,
  { without, cents }: Telled,
): Reason {
  const feeds = eating.flatMap(({ members }, e) => {
    const eaten = Array.from(heads[e] as ArrayLike<number>);
    const all = eaten.reduce((a, b) => a + b, 0);
    const first = eaten.findIndex((n) => n > 0);
    const last = eaten.findLastIndex((n) => n > 0);
    if (all < 1 / 2) return [];
    const [from, to] = [periods[first], periods[last]];
    return members.flatMap(({ eating: { group }, share }) =>
      share * all < 1 / 2 || !from || !to
        ? []
        : [
            {
              group: group.key,
              name: group.name,
              heads: share * all,
              from: Math.max(begins, from.from),
              to: to.from + to.days - 1,
            },
          ],
    );
  });
  return {
    feeds: feeds.sort((a, b) => b.heads - a.heads),
    without,
    makesLittleDifference: without.missedMeals.low <= 0 && without.dangers.low <= 0,
    centsPerEaten: cents,
    grows: null,
  };
}

type Harvest = Extract<PlanLine, { what: 'harvest' }>;

/** Harvests of one colony are judged together: what if nothing were taken from it. */
function harvestReason(
  line: Harvest,
  { bench, best }: Explaining,
  leftAlone: Map<string, Reason['without']>,
): Reason {
  const { laid } = bench;
  const p = laid.places.findIndex(({ bins }) => bins.some(({ bin }) => bin.code === line.bin));
  const t = laid.periods.findIndex(({ from }) => from === line.day);
  const known = leftAlone.get(line.bin) ?? {
    ...comparison(best.verdict, judgePlan(leavingAlone(bench, line.bin), best.proposal)),
    cents: exactly(0),
  };
  leftAlone.set(line.bin, known);
  const heads = takenOf(laid, best.lived, { p, t, size: line }).map((taken) =>
    laid.periods.map((_, at) => (at === t ? taken.heads : 0)),
  );
  return told(
    laid.periods,
    { eating: laid.fine.eating, heads, begins: line.day },
    { without: known, cents: null },
  );
}

function leavingAlone(bench: Bench, code: string): Bench {
  const { laid } = bench;
  const snapshot = { ...laid.snapshot, leftAlone: new Map([[code, Number.POSITIVE_INFINITY]]) };
  return { ...bench, laid: { ...laid, snapshot } };
}
