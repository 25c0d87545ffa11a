/** What the cups that stand here still give. */
import type { DayNumber } from '../calendar.ts';
import { type Bin, fliesFrom, weekFrom } from '../larder/index.ts';
import type { PreySpecies } from '../prey/index.ts';
import { binClimate } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';

interface Standing {
  readonly cups: readonly Bin[];
  readonly species: PreySpecies;
  readonly day: DayNumber;
}

/** Flies that come out of the cups there are, in the week from a day on. */
export function fliesStanding(snapshot: Snapshot, { cups, species, day }: Standing): number {
  const { today, facts } = snapshot;
  const days = day - today + DAYS_PER_WEEK;
  return cups
    .filter((cup) => cupStartedOn(cup) + (species.cup?.discardAfterDays.value ?? 0) > day)
    .reduce((sum, cup) => {
      const place = { climate: binClimate(snapshot, cup), policy: facts.policy };
      return sum + weekFrom(fliesFrom(cup, species, { ...place, today, days }), day - today);
    }, 0);
}

/** The day a cup was last started, else the first on record. */
export function cupStartedOn({ events }: Bin): DayNumber {
  const started = events.findLast((event) => event.kind === 'cup looked' && event.look === 'started');
  return (started ?? events[0])?.day ?? Number.NEGATIVE_INFINITY;
}
