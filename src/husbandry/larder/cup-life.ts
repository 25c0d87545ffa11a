/** What a fly cup gives, day by day, at a place's temperature. */
import type { DayNumber } from '../calendar.ts';
import type { Policy } from '../policy.ts';
import type { PreySpecies } from '../prey/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { Bin } from './bin.ts';
import { chainOf } from './chain.ts';
import type { Climate } from './climate.ts';
import { pathsOf } from './path.ts';
import { binOn } from './replay.ts';
import type { Life } from './state.ts';

/** Days since the start, and flies that come out of one cup on each. */
export interface CupGives {
  readonly flies: Float64Array;
  /** First day with a fly. */
  readonly firstDay: number;
  /** First day of the seven that give most, and what they give. */
  readonly bestDay: number;
  readonly bestWeek: number;
}

interface Place {
  readonly climate: Climate;
  readonly policy: Policy;
}

/** A new cup of a species; null where it is not raised in cups or gives nothing at this temperature. */
export function cupGives(species: PreySpecies, place: Place): CupGives | null {
  if (species.cup === null) return null;
  const started: Bin = {
    code: 'new cup',
    name: 'new cup',
    species: species.code,
    role: 'cup',
    room: '',
    capacity: null,
    keepAdults: false,
    events: [{ kind: 'cup looked', look: 'started', day: 0 }],
  };
  const flies = fliesFrom(started, species, { ...place, today: 0, days: species.cup.discardAfterDays.value });
  const firstDay = flies.findIndex((n) => n >= 1);
  if (firstDay < 0) return null;
  const weeks = Array.from(flies, (_, day) => weekFrom(flies, day));
  const bestWeek = Math.max(...weeks);
  return { flies, firstDay, bestDay: weeks.indexOf(bestWeek), bestWeek };
}

/** Flies that come out of a cup on each day from today on; none today. */
export function fliesFrom(
  cup: Bin,
  species: PreySpecies,
  { climate, policy, today, days }: Place & { today: DayNumber; days: number },
): Float64Array {
  const chain = chainOf(species);
  const life: Life = { chain, bin: cup, climate, speed: 1 };
  const state = binOn(cup, today, { chain, policy, climate });
  const flies = new Float64Array(days);
  for (const { arrives, heads } of pathsOf(state, { life, today, days, slices: 1 }).slice(1))
    flies[arrives] = heads;
  return flies;
}

/** Flies of the seven days from one on. */
export const weekFrom = (flies: Float64Array, day: number): number =>
  flies.subarray(Math.max(0, day), Math.max(0, day + DAYS_PER_WEEK)).reduce((sum, n) => sum + n, 0);
