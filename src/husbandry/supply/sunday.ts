/** The Sunday check: the full answer to "will the feeders last?". */
import { correlation } from '../../maths/correlation.ts';
import { bandOfLog, logMoments } from '../../maths/log-normal.ts';
import { joinKeys, mix32 } from '../../maths/random.ts';
import type { Generosity } from '../appetite/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { bestAct } from './acts.ts';
import type { CoverAnswer, Verdict } from './answer.ts';
import { type CoverOptions, horizonOf, type Judged, judge } from './cover.ts';
import { drawBin } from './draws.ts';
import { spectrumOf } from './spectrum.ts';
import {
  binAnswers,
  byDay,
  groupAnswers,
  nothingMissed,
  shortfallOf,
  unfedOf,
  verdictOf,
} from './summary.ts';
import { headlineOf } from './wording.ts';

/** Answers for a snapshot; the same snapshot, seed and options give the same answer to the bit. */
export function sundayCheck(snapshot: Snapshot, options: CoverOptions = {}): CoverAnswer {
  const { policy } = snapshot.facts;
  const horizon = horizonOf(snapshot, options.days);
  const judged = judge(snapshot, options);
  const chance = nothingMissed(judged);
  const groups = groupAnswers(judged, policy);
  const bins = binAnswers(judged, snapshot);
  const verdict = roomVerdict(judged, snapshot);
  const larderEmpty = bins.every(({ headsNow }) => headsNow.mid === 0);
  const spoken = {
    verdict,
    today: snapshot.today,
    days: horizon.days,
    untilDelivery: horizon.untilDelivery !== null,
    groups,
    larderEmpty,
    unfedDangers: unfedOf(judged).dangers,
  };
  return {
    day: snapshot.today,
    horizonDays: horizon.days,
    untilDelivery: horizon.untilDelivery,
    seed: snapshot.seed,
    replicates: judged.tally.replicates,
    revision: snapshot.revision,
    verdict,
    headline: headlineOf(spoken),
    nothingMissed: chance,
    mealsDue: judged.tally.due.reduce((a, b) => a + b, 0) / judged.tally.replicates,
    given: givenOf(judged.roster.generosity),
    ...shortfallOf(judged),
    unfed: unfedOf(judged),
    groups,
    bins,
    act: isSettled(verdict) || options.seeksAct === false ? null : bestAct(snapshot, judged, options),
    look: binToLookAt(judged, snapshot),
    spectrum: spectrumOf(judged.tally, judged.menu, judged.stock),
  };
}

const givenOf = (generosity: Generosity): CoverAnswer['given'] => ({
  ...bandOfLog(logMoments(generosity)),
  meals: generosity.meals,
});

/** Nothing needs to be done. */
const isSettled = (verdict: Verdict): boolean => verdict === 'lasts' || verdict === 'empty';

/** Danger outranks everything: where it is likelier than a tight week allows, the room runs short. */
function roomVerdict(judged: Judged, { facts }: Snapshot): Verdict {
  if (judged.roster.animals === 0) return 'empty';
  const { dangersOf, replicates } = judged.tally;
  const safe = dangersOf.reduce((n, dangers) => n + Number(dangers === 0), 0) / replicates;
  if (safe < facts.policy.lastsFrom.value) return 'runs short';
  return verdictOf(nothingMissed(judged).chance, facts.policy);
}

/**
 * The bin whose count is most tied to how many meals are late or missed: the greatest correlation over replicates
 * between its count and those meals; null when no tie is clearly more than chance (1/sqrt(n) for n replicates).
 */
function binToLookAt(judged: Judged, snapshot: Snapshot): CoverAnswer['look'] {
  const { stock, tally } = judged;
  const wanted = speciesInVain(judged);
  const troubles = tally.lateOf.map((late, r) => late + (tally.missedOf[r] as number));
  const ties = stock.bins
    .filter(({ belief, heads, chain }) => belief.heads.cv > 0 && heads >= 1 && wanted.has(chain.species.code))
    .map((bin) => ({
      bin,
      tie: -correlation(
        troubles.map((_, r) => drawBin(bin, joinKeys(mix32(snapshot.seed), r)).countFactor),
        troubles,
      ),
    }))
    .sort((a, b) => b.tie - a.tie);
  const first = ties[0];
  const chance = snapshot.facts.policy.lookTieErrors.value / Math.sqrt(tally.replicates);
  if (!first || !(first.tie > chance)) return null;
  return {
    bin: first.bin.bin.code,
    sentence: `Count ${first.bin.bin.name}: how many it holds decides most.`,
  };
}

/** Species taken by a group that some day found too little. */
function speciesInVain({ menu, tally }: Judged): ReadonlySet<string> {
  const inVain = menu.groups.filter((_, g) => byDay(tally, tally.unmet, g).some((items) => items > 0));
  return new Set(inVain.flatMap(({ windows }) => [...windows.keys()]));
}
