/** What stands in the way where a plan misses a target, or where a group finds nothing at all. */
import type { DemandGroup } from '../appetite/index.ts';
import { dispatchesOf, noMarket, type Offer } from '../orders/index.ts';
import { listed } from '../words.ts';
import type { Obstacle, Period, Wish } from './answer.ts';
import type { EatingClass } from './classes.ts';
import { isFull } from './fullness.ts';
import type { Bench } from './judge-plan.ts';
import type { LaidOut } from './lay-out.ts';
import { overPeriods } from './lived-in-fates.ts';
import { isSpent } from './meetable.ts';
import { periodFrom } from './periods.ts';
import type { Place } from './place-of.ts';
import type { PlanQuestion } from './question.ts';
import type { Weighed } from './tried.ts';

/** The causes that can be told, the plainest first. */
export function obstaclesOf(bench: Bench, best: Weighed, question: PlanQuestion): Obstacle[] {
  const { laid } = bench;
  const hungry = laid.eating
    .filter(({ fares }) => fares.length === 0)
    .flatMap(({ members }) => members.map(({ eating }) => eating.group));
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
      groups: hungry.map(({ key }) => key),
    });
  const { before, replicates } = bench;
  if (before && sumOf(before.missed) / replicates >= 1 / 2)
    found.push({
      kind: 'lead time',
      sentence: 'Some meals will be missed before any parcel ordered today can be here.',
      groups: [],
    });
  return best.metInAll ? found : [...found, ...missing(bench, best, question)];
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

/** Why more is missed than is asked for, as far as it can be told; else that it is a matter of price. */
function missing(bench: Bench, best: Weighed, { wishes }: PlanQuestion): Obstacle[] {
  const { laid } = bench;
  const { problem, proposal } = best;
  const short = shortGroups(bench, best);
  const groups = short.map(({ group }) => group);
  const barred = groups.filter((each) =>
    wishes.some((wish) => wish.wish === 'forbid' && feeds(laid, wish, each)),
  );
  const spent = isSpent(problem, proposal) ? groups : [];
  const full = fullPlaces(laid, best);
  const eats = ({ fares }: ShortGroup, p: number) =>
    fares.some(({ place }) => place === laid.fine.placeOf[p]);
  const cramped = short.filter((each) => full.some((p) => eats(each, p)));
  const bins = full
    .filter((p) => cramped.some((each) => eats(each, p)))
    .flatMap((p) => (laid.places[p] as Place).bins.map(({ bin }) => bin.name));
  const told = [
    obstacle('forbidden', barred, (names) => `What is forbidden would feed ${names}.`),
    obstacle('budget', spent, (names) => `What may be spent in a week does not feed ${names}.`),
    obstacle(
      'capacity',
      cramped.map(({ group }) => group),
      (names) => `${listed(bins)} ${bins.length > 1 ? 'are' : 'is'} full: more room may help ${names}.`,
    ),
  ].flat();
  if (!canAnyCome(laid)) return told;
  const named = new Set(told.flatMap((each) => each.groups));
  const rest = groups.filter(({ key }) => !named.has(key));
  return [
    ...told,
    ...obstacle(
      'price',
      rest.filter((each) => isSold(laid, each)),
      (names) =>
        `More prey for ${names} would cost more than a missed meal of theirs is worth by your numbers.`,
    ),
    ...obstacle(
      'size gap',
      rest.filter((each) => !isSold(laid, each)),
      (names) => `Nobody sells anything of the right size for ${names}.`,
    ),
  ];
}

const obstacle = (
  kind: Obstacle['kind'],
  groups: readonly DemandGroup[],
  sentence: (names: string) => string,
): Obstacle[] =>
  groups.length > 0
    ? [{ kind, sentence: sentence(namesOf(groups)), groups: groups.map(({ key }) => key) }]
    : [];

/** Places that are full in some period. */
const fullPlaces = ({ places, snapshot }: LaidOut, { problem, proposal }: Weighed): number[] =>
  [...places.keys()].filter((p) =>
    isFull(
      problem.places[p]?.room ?? null,
      proposal.flows.left[p] ?? [],
      snapshot.facts.policy.planSlack.value,
    ),
  );

interface ShortGroup {
  readonly group: DemandGroup;
  readonly fares: EatingClass['fares'];
}

/**
 * Groups that miss more than their urgency may, the most missed first: both in the fates, by items, and day by day, by
 * meals of those that can be helped, or of which no meal came due any more.
 * Where the two name nobody together, those of either.
 */
function shortGroups({ laid, before, replicates }: Bench, { lived, all }: Weighed): ShortGroup[] {
  const { fine, snapshot } = laid;
  const { menu, tally } = all.judged;
  const targets = snapshot.facts.policy.planTargets.value;
  /** Share of its meals a group misses day by day; null where none is counted. */
  const shareMissed = ({ key }: DemandGroup): number | null => {
    const g = menu.groups.findIndex((group) => group.key === key);
    const missed = ((tally.missed[g] ?? 0) - (before?.missed[g] ?? 0)) / replicates;
    const due = ((tally.due[g] ?? 0) - (before?.due[g] ?? 0)) / replicates;
    return due > 0 ? missed / due : null;
  };
  const misses = (group: DemandGroup, ifNone: number): boolean =>
    (shareMissed(group) ?? ifNone) > 1 - targets[group.rule.urgency];
  const byItems = fine.eating
    .map((each, e) => {
      const over = { e, groups: fine.eating.length };
      return { ...each, missed: overPeriods(lived.missed, over), all: overPeriods(lived.wanted, over) };
    })
    .filter(({ fares }) => fares.length > 0)
    .sort((a, b) => b.missed - a.missed);
  const inFates = (isShort: boolean) =>
    byItems
      .filter((each) => !isShort || each.missed > (1 - targets[each.group.rule.urgency]) * each.all)
      .flatMap(({ members, fares }) => members.map(({ eating: { group } }) => ({ group, fares })));
  const lists = [
    inFates(true).filter(({ group }) => misses(group, 1)),
    inFates(false).filter(({ group }) => misses(group, 0)),
    inFates(true),
  ];
  return lists.find((list) => list.length > 0) ?? [];
}

const sumOf = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);

/** Whether what a wish names is prey that a group takes, in a size it takes. */
const feeds = (laid: LaidOut, { key }: Wish, group: DemandGroup): boolean =>
  [...group.windows.keys()].some((species) => key.startsWith(`start:${species}@`)) ||
  offersFor(laid, group).some(({ code }) => key.startsWith(`order:${code}@`));

const isSold = (laid: LaidOut, group: DemandGroup): boolean => offersFor(laid, group).length > 0;

/** Offers of prey that a group takes, in a size it takes. */
const offersFor = ({ snapshot }: LaidOut, { windows }: DemandGroup): Offer[] =>
  (snapshot.market ?? noMarket).offers.filter(({ species, fromMm, toMm }) => {
    const window = windows.get(species);
    return window !== undefined && fromMm <= window.maxMm && toMm >= window.minMm;
  });

/** 'froglets and tarantula spiderlings', 'froglets, tarantula spiderlings and 3 more groups'; each name once, in this order. */
function namesOf(groups: readonly DemandGroup[], most = 2): string {
  const names = [...new Set(groups.map(({ name }) => name))];
  const more = names.length - Math.min(most, names.length);
  return listed(
    more > 0 ? [...names.slice(0, most), `${more} more ${more === 1 ? 'group' : 'groups'}`] : names,
  );
}
