/** The act that helps most, of all a keeper could take. */
import type { Snapshot } from '../snapshot.ts';
import type { Act } from './answer.ts';
import type { Candidate } from './candidate.ts';
import { candidatesOf } from './candidates.ts';
import { type CoverOptions, type Judged, judge, type Kept } from './cover.ts';
import { nothingLaid } from './laid.ts';
import { nothingMissed, shortfallOf } from './summary.ts';

/**
 * The act with the greatest fall in danger, then in missed, then in late meals, on the same random numbers; null when
 * none helps. All are tried in a part of the replicates; the leaders are judged in full.
 */
export function bestAct(snapshot: Snapshot, judged: Judged, options: CoverOptions): Act | null {
  const { actReplicates, actGroups } = snapshot.facts.policy;
  const kept: Kept = { roster: judged.roster, laid: nothingLaid() };
  const tries = candidatesOf(snapshot, judged, { ...options, kept, notesStock: false });
  const some = Math.min(actReplicates.value, judged.tally.replicates);
  const ranked = tries
    .map((candidate) => ({ candidate, after: judgedAs(candidate, some) }))
    .sort((a, b) => better(a.after, b.after));
  const before = stateOf(judged);
  const leaders = ranked
    .slice(0, actGroups.value)
    .map(({ candidate }) => ({ candidate, after: judgedAs(candidate, judged.tally.replicates) }));
  const best = leaders.sort((a, b) => better(a.after, b.after))[0];
  if (!best || better(best.after, before) >= 0) return null;
  const { kind, sentence, bin, species, animals } = best.candidate;
  return { kind, sentence, bin, species, animals, before, after: best.after };
}

type ActState = Act['before'];

const stateOf = (judged: Judged): ActState => ({
  ...shortfallOf(judged),
  nothingMissed: nothingMissed(judged).chance,
});

const judgedAs = ({ snapshot, options }: Candidate, replicates: number): ActState =>
  stateOf(judge(snapshot, { ...options, replicates }));

/** Negative when the first is better: fewer dangers, then fewer missed, then fewer late meals. */
export const better = (a: ActState, b: ActState): number =>
  a.dangers - b.dangers || a.missedMeals - b.missedMeals || a.lateMeals - b.lateMeals;
