/** What to start today for a group that goes short, and when it yields: a cup, an order, what is left of the colony. */
import type { DemandGroup } from '../appetite/index.ts';
import type { DayNumber } from '../calendar.ts';
import { type Bin, cupGives, headsWithin, type Life, nextDay } from '../larder/index.ts';
import type { PreySpecies } from '../prey/index.ts';
import { binClimate, climateAt } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_YEAR } from '../units.ts';
import { orderInTimeFor } from './delivery-days.ts';
import { binNow } from './holding.ts';
import { nearestClass } from './trade-class.ts';

export type StartNow =
  /** A cup gives its first flies on `yields`, and most in the week from `best`. */
  | {
      readonly kind: 'cup';
      readonly species: string;
      readonly yields: DayNumber;
      readonly best: DayNumber;
      readonly weekly: number;
    }
  /** A parcel ordered by `orderBy` comes on `yields`. */
  | {
      readonly kind: 'order';
      readonly species: string;
      readonly size: string;
      readonly orderBy: DayNumber;
      readonly yields: DayNumber;
    }
  /** What is left of the bin, left alone, holds a week's meals again on `yields`; null: not within a year. */
  | { readonly kind: 'leave to breed'; readonly bin: string; readonly yields: DayNumber | null };

interface Need {
  readonly group: DemandGroup;
  readonly bin: Bin;
  /** Items it wants in a week. */
  readonly weekly: number;
}

/** The soonest first; of those that are bought, the prey kept here or else the nearest to the ideal. */
export function startNow(snapshot: Snapshot, need: Need): StartNow[] {
  const taken = [...snapshot.facts.species.values()].filter(({ code }) => need.group.windows.has(code));
  const starts = [
    ...taken.flatMap((species) => newCup(snapshot, species, need)),
    ...newOrder(snapshot, taken, need),
    ...leftToBreed(snapshot, need),
  ];
  const day = (start: StartNow) => start.yields ?? Number.POSITIVE_INFINITY;
  return starts.sort((a, b) => day(a) - day(b) || (a.kind < b.kind ? -1 : 1));
}

/** Only of flies long enough for the group. */
function newCup(snapshot: Snapshot, species: PreySpecies, { group, bin }: Need): StartNow[] {
  const window = group.windows.get(species.code);
  const flyMm = species.adultLengthMm.value;
  if (!window || flyMm < window.minMm || flyMm > window.maxMm) return [];
  const climate = climateAt(snapshot.rooms, { room: bin.room, ownC: null });
  const gives = cupGives(species, { climate, policy: snapshot.facts.policy });
  if (gives === null) return [];
  const { today } = snapshot;
  return [
    {
      kind: 'cup',
      species: species.code,
      yields: today + gives.firstDay,
      best: today + gives.bestDay,
      weekly: gives.bestWeek,
    },
  ];
}

function newOrder(snapshot: Snapshot, taken: readonly PreySpecies[], { group }: Need): StartNow[] {
  const comes = orderInTimeFor(snapshot, snapshot.today);
  if (comes === null) return [];
  const sold = taken.flatMap((species) => {
    const window = group.windows.get(species.code);
    const size = window && species.cup === null ? nearestClass(species, window) : undefined;
    return window && size
      ? [{ species, size, off: Math.abs(Math.log((size.fromMm + size.toMm) / 2 / window.idealMm)) }]
      : [];
  });
  const away = (code: string) => Number(!snapshot.bins.some(({ species }) => species === code));
  const [best] = sold.sort(
    (a, b) =>
      away(a.species.code) - away(b.species.code) ||
      a.off - b.off ||
      (a.species.code < b.species.code ? -1 : 1),
  );
  if (!best) return [];
  const { orderBy, comes: yields } = comes;
  return [{ kind: 'order', species: best.species.code, size: best.size.name, orderBy, yields }];
}

/** Only where something is left that breeds, and not already as much as is wanted. */
function leftToBreed(snapshot: Snapshot, { group, bin, weekly }: Need): StartNow[] {
  const window = group.windows.get(bin.species);
  if (!window || bin.role !== 'colony') return [];
  const { today } = snapshot;
  const { chain, belief, state: now } = binNow(snapshot, bin);
  const speed = Math.exp(belief.speedLog.mean);
  const life: Life = { chain, bin, climate: binClimate(snapshot, bin), speed };
  let state = now;
  if (state.heads.every((heads) => heads <= 0)) return [];
  const range = { fromMm: window.minMm, toMm: window.maxMm };
  for (let day = 0; day < DAYS_PER_YEAR; day++) {
    if (headsWithin(chain, state.heads, range) >= weekly)
      return day === 0 ? [] : [{ kind: 'leave to breed', bin: bin.code, yields: today + day }];
    state = nextDay(life, state, today + day).state;
  }
  return [{ kind: 'leave to breed', bin: bin.code, yields: null }];
}
