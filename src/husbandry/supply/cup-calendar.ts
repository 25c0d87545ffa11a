/** When the next cups are started, so that flies keep coming: week by week what is eaten less what the cups here give. */
import { grouped } from '../grouped.ts';
import { type Bin, cupGives } from '../larder/index.ts';
import { madeOnce } from '../made-once.ts';
import type { PreySpecies } from '../prey/index.ts';
import { climateAt } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { CoverAnswer } from './answer.ts';
import { type CupStart, cupStarts } from './cup-plan.ts';
import { fliesStanding } from './cups-standing.ts';

export interface CupCalendar {
  readonly species: string;
  /** Flies wanted in a week, as the coming days go: eaten from cups, and not found. */
  readonly weekly: number;
  readonly starts: readonly CupStart[];
}

type Coming = Pick<CoverAnswer, 'bins' | 'groups' | 'horizonDays'>;

/** For each fly kept in cups here. */
export const cupCalendars = (
  snapshot: Snapshot,
  coming: Coming,
  here: readonly CupsHere[] = cupsHere(snapshot),
): CupCalendar[] =>
  here.map(({ species, gives, standing }) => {
    const { today } = snapshot;
    const weekly = weeklyOf(species, coming);
    const flies = standing.map((given) => Math.max(0, weekly - given));
    return { species, weekly, starts: cupStarts({ today, from: today, flies }, gives) };
  });

export interface CupsHere {
  readonly species: string;
  readonly gives: NonNullable<ReturnType<typeof cupGives>>;
  /** Flies the cups that stand here give in each of the coming weeks. */
  readonly standing: readonly number[];
}

/** What takes long of the calendars: each cup followed for weeks. */
export const cupsHere = madeOnce((snapshot: Snapshot): readonly CupsHere[] => {
  const all = snapshot.bins.filter(({ role }) => role === 'cup');
  return [...grouped(all, ({ species }) => species)].flatMap(([code, cups]) => {
    const species = snapshot.facts.species.get(code);
    return species ? ofSpecies(snapshot, species, cups) : [];
  });
});

function ofSpecies(snapshot: Snapshot, species: PreySpecies, cups: readonly Bin[]): CupsHere[] {
  const { today, facts, rooms } = snapshot;
  const climate = climateAt(rooms, { room: (cups[0] as Bin).room, ownC: null });
  const gives = cupGives(species, { climate, policy: facts.policy });
  if (gives === null) return [];
  const standing = Array.from({ length: facts.policy.cupWeeks.value }, (_, week) =>
    fliesStanding(snapshot, { cups, species, day: today + week * DAYS_PER_WEEK }),
  );
  return [{ species: species.code, gives, standing }];
}

/** What the cups give to animals, and what those miss who take nothing else. */
function weeklyOf(species: string, { bins, groups, horizonDays }: Coming): number {
  const eaten = bins.filter((bin) => bin.species === species).reduce((sum, bin) => sum + bin.eaten, 0);
  const missed = groups
    .filter((group) => group.species.length === 1 && group.species[0] === species)
    .reduce((sum, { unmetByDay }) => sum + unmetByDay.reduce((a, b) => a + b, 0), 0);
  return ((eaten + missed) * DAYS_PER_WEEK) / horizonDays;
}
