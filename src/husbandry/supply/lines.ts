/** Separate lines of a species that is bred here: two that share nothing insure each other. */
import { grouped } from '../grouped.ts';
import type { Bin, CupLook } from '../larder/index.ts';
import type { Policy } from '../policy.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { cupStartedOn } from './cups-standing.ts';
import { sameOrigin } from './same-origin.ts';

export interface Lines {
  readonly species: string;
  /** Colonies, or cups that still give. */
  readonly bins: readonly string[];
  /** Sets of them that share neither room nor origin with another. */
  readonly apart: number;
  /** Chance that all are lost within these days. */
  readonly days: number;
  readonly allLost: number;
  /** The same with one more line that shares nothing with the others. */
  readonly withOneMore: number;
}

/** Each species that is bred in the larder, in the order of its bins. */
export function linesOf({ bins, facts, today }: Snapshot): Lines[] {
  const bred = bins.filter(
    (bin) => bin.role === 'colony' || (bin.role === 'cup' && isStanding(bin, { facts, today })),
  );
  const days = facts.policy.binWeeks.value * DAYS_PER_WEEK;
  return [...grouped(bred, ({ species }) => species)].map(([species, lines]) => {
    const sets = setsOf(lines);
    const chances = sets.map((set) => allLostWithin(facts.policy, { lines: set.length, days }));
    const allLost = chances.reduce((product, chance) => product * chance, 1);
    return {
      species,
      bins: lines.map(({ code }) => code),
      apart: sets.length,
      days,
      allLost,
      withOneMore: allLost * allLostWithin(facts.policy, { lines: 1, days }),
    };
  });
}

/** Neither given up since it was started nor past its age. */
function isStanding(cup: Bin, { facts, today }: Pick<Snapshot, 'facts' | 'today'>): boolean {
  const started = cupStartedOn(cup);
  const over = cup.events.some(
    (event) => event.kind === 'cup looked' && isOver(event) && event.day >= started,
  );
  const life = facts.species.get(cup.species)?.cup?.discardAfterDays.value ?? 0;
  return !over && today - started < life;
}

const isOver = ({ look }: { look: CupLook }): boolean =>
  look === 'crashed' || look === 'finished' || look === 'mites';

/** Lines that share a room or an origin, directly or through others, go together. */
function setsOf(lines: readonly Bin[]): Bin[][] {
  return lines.reduce<Bin[][]>((sets, line) => {
    const touching = sets.filter((set) => set.some((other) => shares(line, other)));
    return [...sets.filter((set) => !touching.includes(set)), [line, ...touching.flat()]];
  }, []);
}

const shares = (a: Bin, b: Bin): boolean => a.room === b.room || sameOrigin(a, b);

/**
 * P = 1 - (1 - bp)(1 - ((1 - b)p)^m): m lines of one set are all lost by a common cause or each by its own, p the
 * chance that one is lost within the days, b the share of common causes (beta-factor model of reliability engineering,
 * as in IEC 61508-6, annex D).
 */
export function allLostWithin(policy: Policy, { lines, days }: { lines: number; days: number }): number {
  const lost = 1 - (1 - policy.dieOffPerDay.value) ** days;
  const share = policy.lineSharedShare.value;
  return 1 - (1 - share * lost) * (1 - ((1 - share) * lost) ** lines);
}
