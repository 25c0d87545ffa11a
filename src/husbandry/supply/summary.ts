/** From the counts of a judged run to the answer the keeper reads. */

import { bandOfLog } from '../../maths/log-normal.ts';
import { meanOf } from '../../maths/mean.ts';
import { BAND, sortedQuantile } from '../../maths/quantile.ts';
import type { DemandGroup } from '../appetite/index.ts';
import { type BinState, KEPT_MM, restsTo } from '../larder/index.ts';
import type { Policy } from '../policy.ts';
import type { Snapshot } from '../snapshot.ts';
import type {
  BinAnswer,
  BinLearned,
  Chance,
  CoverAnswer,
  GroupAnswer,
  Shortfall,
  Spread,
  Verdict,
} from './answer.ts';
import type { Judged } from './cover.ts';
import { groupSaid, groupsShown } from './group-said.ts';
import { headsKnown, type StockBin } from './stock-bin.ts';
import type { Tally } from './tally.ts';

/** A share of replicates and its standard error sqrt(p(1 - p)/n), with p drawn in from 0 and 1 by one replicate. */
function chanceOf(count: number, replicates: number): Chance {
  const p = (count + 1) / (replicates + 2);
  return { chance: count / replicates, standardError: Math.sqrt((p * (1 - p)) / replicates) };
}

export const verdictOf = (chance: number, policy: Policy): Verdict =>
  chance >= policy.lastsFrom.value ? 'lasts' : chance >= policy.tightFrom.value ? 'tight' : 'runs short';

/** 5, 50 and 95 % quantiles of a list. */
export function spreadOf(values: ArrayLike<number>): Spread {
  const sorted = Float64Array.from(values).sort();
  return {
    low: sortedQuantile(sorted, BAND.low),
    mid: sortedQuantile(sorted, BAND.mid),
    high: sortedQuantile(sorted, BAND.high),
  };
}

/** Late, missed and dangerous meals per replicate. */
export const shortfallOf = ({ tally }: Judged): Shortfall => ({
  lateMeals: meanOf(tally.lateOf),
  missedMeals: meanOf(tally.missedOf),
  dangers: meanOf(tally.dangersOf),
});

/** Meals missed and dangers per replicate that more prey would not mend. */
export const unfedOf = ({ tally }: Judged): CoverAnswer['unfed'] => ({
  missedMeals: meanOf(tally.unfedMissedOf),
  dangers: meanOf(tally.unfedDangersOf),
});

/** Chance that nobody misses a meal. */
export const nothingMissed = ({ tally }: Judged): Chance =>
  chanceOf(
    tally.missedOf.reduce((n, missed) => n + Number(missed === 0), 0),
    tally.replicates,
  );

/** The answer of every group that anybody is in today or joins within the horizon. */
export function groupAnswers(judged: Judged, policy: Policy): GroupAnswer[] {
  const { tally, menu } = judged;
  return groupsShown(menu, tally).map((g) => groupAnswer(judged, g, policy));
}

function groupAnswer(judged: Judged, g: number, policy: Policy): GroupAnswer {
  const { tally, menu, roster } = judged;
  const group = menu.groups[g] as DemandGroup;
  const n = tally.replicates;
  const chance = chanceOf(n - (tally.replicatesMissed[g] as number), n);
  const items = column(tally, tally.itemsOf, g);
  return {
    ...groupSaid(roster, group),
    verdict: verdictOf(chance.chance, policy),
    nothingMissed: chance,
    mealsDue: (tally.due[g] as number) / n,
    lateMeals: (tally.late[g] as number) / n,
    missedMeals: (tally.missed[g] as number) / n,
    dangers: (tally.dangers[g] as number) / n,
    itemsWanted: spreadOf(items),
    itemsWantedMean: items.reduce((a, b) => a + b, 0) / n,
    ...runOutOf(tally, g),
    touched: touchedIn(judged, group, policy),
    wantedByDay: byDay(tally, tally.wanted, g),
    unmetByDay: byDay(tally, tally.unmet, g),
    stockByDay: stockByDay(tally, g),
  };
}

/** Values of one group over replicates. */
const column = (tally: Tally, values: ArrayLike<number>, g: number): number[] =>
  Array.from({ length: tally.replicates }, (_, r) => values[r * tally.groups + g] as number);

/** Means by day of one group. */
export const byDay = (tally: Tally, sums: Float64Array, g: number): number[] =>
  Array.from(sums.subarray(g * tally.days, (g + 1) * tally.days), (sum) => sum / tally.replicates);

function runOutOf(tally: Tally, g: number): Pick<GroupAnswer, 'runOut' | 'daysOfCover'> {
  const days = column(tally, tally.runOutOf, g);
  const short = days.filter((day) => day < tally.days);
  return {
    runOut: { chance: short.length / tally.replicates, day: short.length > 0 ? spreadOf(short) : null },
    daysOfCover: spreadOf(days),
  };
}

function touchedIn({ tally, roster }: Judged, group: DemandGroup, policy: Policy): GroupAnswer['touched'] {
  return group.animals
    .map((animal) => ({
      animal,
      chance: Math.min(1, (tally.missedByAnimal[roster.codes.indexOf(animal)] as number) / tally.replicates),
    }))
    .filter(({ chance }) => chance > 0)
    .sort((a, b) => b.chance - a.chance || (a.animal < b.animal ? -1 : 1))
    .slice(0, policy.touchedNamed.value);
}

function stockByDay(tally: Tally, g: number): Spread[] {
  return Array.from({ length: tally.days }, (_, day) =>
    spreadOf(
      Array.from(
        { length: tally.stockReplicates },
        (__, r) => tally.stockOf[(r * tally.groups + g) * tally.days + day] as number,
      ),
    ),
  );
}

/** The answer of every bin, means over replicates. */
export function binAnswers(judged: Judged, snapshot: Snapshot): BinAnswer[] {
  const { larder, stock, tally } = judged;
  return stock.bins.map((bin, b) => {
    const mean = (sums: Float64Array) => (sums[b] as number) / tally.replicates;
    const { eaten, died, arrived, hatched, left, outgrown } = larder.totals;
    return {
      code: bin.bin.code,
      name: bin.bin.name,
      species: bin.bin.species,
      headsNow: headsKnown(bin),
      lookedDaysAgo: bin.state.lookedOn === null ? null : snapshot.today - bin.state.lookedOn,
      restsUntil: restsTo(bin.bin, snapshot.today),
      eaten: mean(eaten),
      died: mean(died),
      arrived: mean(arrived),
      hatched: mean(hatched),
      left: mean(left),
      outgrown: mean(outgrown),
      lengthsNow: lengthsNow(judged, b),
      learned: learnedOf(bin, snapshot.facts.policy),
    };
  });
}

/** What its record has taught. */
export const learnedOf = (
  { belief: { speed, hazard, evidence, looks }, state: { layingLog } }: StockBin,
  policy: Policy,
): BinLearned => ({
  speed,
  hazard,
  laying: layingLog && layingOf(layingLog, policy),
  evidence,
  looks,
});

const layingOf = (
  log: NonNullable<BinState['layingLog']>,
  { layingLogSd, tooLittleShare }: Policy,
): BinLearned['laying'] => ({
  ...bandOfLog(log),
  tooLittle: Math.sqrt(log.variance) >= tooLittleShare.value * layingLogSd.value,
});

function lengthsNow({ stock }: Judged, b: number): Spread {
  const here = stock.cohorts.find((cohort) => cohort.bin === b && cohort.kind === 'here');
  const path = here?.nodes[Math.floor(here.nodes.length / 2)];
  const lengths = Array.from(path?.lengthMm.subarray(0, here?.slices) ?? []).filter(
    (mm) => mm > 0 && mm < KEPT_MM,
  );
  return lengths.length > 0 ? spreadOf(lengths) : { low: 0, mid: 0, high: 0 };
}
