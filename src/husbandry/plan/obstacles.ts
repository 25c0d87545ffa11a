/** What stands in the way where a plan misses a target, or where a group finds nothing at all. */
import { dispatchesOf, noMarket } from '../orders/index.ts';
import type { Obstacle, Period, Wish } from './answer.ts';
import type { EatingClass } from './classes.ts';
import { isFull } from './fullness.ts';
import type { Bench } from './judge-plan.ts';
import type { LaidOut } from './lay-out.ts';
import { overPeriods } from './lived-in-fates.ts';
import { isSpent } from './meetable.ts';
import { periodFrom } from './periods.ts';
import type { PlanQuestion } from './question.ts';
import type { Tried } from './tried.ts';

/** The causes that can be told, the plainest first. */
export function obstaclesOf(bench: Bench, best: Tried, question: PlanQuestion): Obstacle[] {
  const { laid } = bench;
  const hungry = laid.eating.filter(({ fares }) => fares.length === 0);
  const found: Obstacle[] = [];
  if (laid.eating.length > 0 && (laid.snapshot.market?.offers.length ?? 0) === 0)
    found.push({
      kind: 'no offer',
      sentence:
        'Nobody sells anything that could come within these weeks: write down suppliers and what they offer.',
      groups: [],
    });
  else if (laid.eating.length > 0 && !canAnyCome(laid))
    found.push({
      kind: 'lead time',
      sentence:
        'Nothing that is ordered can be here within these weeks: the days on which it is sent, holidays or the weather keep it.',
      groups: [],
    });
  if (hungry.length > 0)
    found.push({
      kind: 'size gap',
      sentence: `Nothing here or on offer is the right size for ${namesOf(hungry, Number.POSITIVE_INFINITY)}.`,
      groups: keysOf(hungry),
    });
  return best.met ? found : [...found, ...missing(bench, best, question)];
}

/** Whether anybody who offers something can send it so that it comes within the periods. */
function canAnyCome({ snapshot, periods }: LaidOut): boolean {
  const { suppliers, offers, weather } = snapshot.market ?? noMarket;
  const { from, days } = periods[periods.length - 1] as Period;
  const range = { from: snapshot.today, to: from + days };
  return suppliers
    .filter(({ code }) => offers.some(({ supplier }) => supplier === code))
    .some((supplier) =>
      dispatchesOf(supplier, range, weather).some(({ comes }) => periodFrom(periods, comes) >= 0),
    );
}

function missing(
  { laid, before, replicates }: Bench,
  { problem, proposal, lived: { missed }, verdict }: Tried,
  { wishes }: PlanQuestion,
): Obstacle[] {
  const { fine, snapshot } = laid;
  const groups = fine.eating.length;
  const missedBy = (each: EatingClass): number =>
    overPeriods(missed, { e: fine.eating.indexOf(each), groups });
  const short = fine.eating
    .filter((each) => {
      const most = 1 - snapshot.facts.policy.planTargets.value[each.group.rule.urgency];
      return each.fares.length > 0 && missedBy(each) > most * sumOf(each.wanted);
    })
    .sort((a, b) => missedBy(b) - missedBy(a));
  const found: Obstacle[] = [];
  if (before && sumOf(before.missed) / replicates >= 1 / 2)
    found.push({
      kind: 'lead time',
      sentence: 'Some meals will be missed before any parcel ordered today can be here.',
      groups: [],
    });
  // The weeks lived through day by day are served: what is told is of those after them.
  const later = verdict.met ? 'Later on: ' : '';
  const barred = short.filter((each) =>
    wishes.some((wish) => wish.wish === 'forbid' && feeds(laid, wish, each)),
  );
  if (barred.length > 0)
    found.push({
      kind: 'forbidden',
      sentence: `${later}What is forbidden would feed ${namesOf(barred)}.`,
      groups: keysOf(barred),
    });
  if (short.length > 0 && isSpent(problem, proposal))
    found.push({
      kind: 'budget',
      sentence: `${later}What may be spent in a week does not feed ${namesOf(short)}.`,
      groups: keysOf(short),
    });
  const slack = laid.snapshot.facts.policy.planSlack.value;
  const full = problem.places.flatMap(({ room }, p) =>
    isFull(room, proposal.flows.left[p] ?? [], slack) ? [laid.fine.placeOf[p]] : [],
  );
  const cramped = short.filter(({ fares }) => fares.some(({ place }) => full.includes(place)));
  if (cramped.length > 0)
    found.push({
      kind: 'capacity',
      sentence: `${later}A bin is full, and ${namesOf(cramped)} will be short: more room would hold prey for them.`,
      groups: keysOf(cramped),
    });
  return found;
}

const sumOf = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);

/** Whether what a wish names is prey that somebody of a group takes, in a size it takes. */
const feeds = ({ snapshot }: LaidOut, { key }: Wish, { members }: EatingClass): boolean =>
  members.some(({ eating: { group } }) =>
    [...group.windows].some(
      ([species, { minMm, maxMm }]) =>
        key.startsWith(`start:${species}@`) ||
        (snapshot.market ?? noMarket).offers.some(
          (offer) =>
            key.startsWith(`order:${offer.code}@`) &&
            offer.species === species &&
            offer.fromMm <= maxMm &&
            offer.toMm >= minMm,
        ),
    ),
  );

const keysOf = (classes: readonly EatingClass[]): string[] =>
  classes.flatMap(({ members }) => members.map(({ eating }) => eating.group.key));

/** 'froglets and tarantula spiderlings', 'froglets, tarantula spiderlings and 3 more groups'; each name once, in this order. */
function namesOf(classes: readonly EatingClass[], most = 2): string {
  const names = [
    ...new Set(classes.flatMap(({ members }) => members.map(({ eating }) => eating.group.name))),
  ];
  const more = names.length - Math.min(most, names.length);
  const told =
    more > 0 ? [...names.slice(0, most), `${more} more ${more === 1 ? 'group' : 'groups'}`] : names;
  const last = told[told.length - 1] ?? '';
  return told.length < 2 ? last : `${told.slice(0, -1).join(', ')} and ${last}`;
}
