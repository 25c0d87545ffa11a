/** What a look at a cup says of it. */

import type { DayNumber } from '../calendar.ts';
import type { BinEvent, CupLook } from './bin.ts';
import { firstAdult, totalHeads } from './lot.ts';
import { youngDays } from './rates.ts';
import { type BinState, type Life, nextDay } from './state.ts';

/** A cup is known by what can be seen of it; with no start on record its age is taken from its look. */
export function cupSeen(
  state: BinState,
  event: Extract<BinEvent, { kind: 'cup looked' }>,
  life: Life,
): BinState {
  const look: CupLook = event.look;
  if (look === 'finished' || look === 'crashed' || look === 'mites') {
    return { ...state, heads: new Float64Array(life.chain.size), doubtCv: 0, lookedOn: event.day, medium: 0 };
  }
  if (look === 'started') return startedCup(state, event.day, life);
  const known = state.startedOn !== null || totalHeads(state.heads) > 0;
  if (!known) return agedCup(state, event, life);
  if (look === 'slow')
    return { ...state, heads: state.heads.map((n) => n / 2), medium: state.medium / 2, lookedOn: event.day };
  return { ...state, lookedOn: event.day };
}

function startedCup(state: BinState, day: DayNumber, life: Life): BinState {
  const cup = life.chain.species.cup;
  const heads = new Float64Array(life.chain.size);
  heads[firstAdult(life.chain)] = cup?.starters.value ?? 0;
  const medium = cup?.yieldPerCup.value ?? 0;
  return { ...state, heads, lookedOn: day, medium, startedOn: day };
}

/** A cup met with larvae is half way to its first flies; one that produces has just got there. */
function agedCup(state: BinState, event: Extract<BinEvent, { kind: 'cup looked' }>, life: Life): BinState {
  const toAdult = life.chain.species.stages.reduce(
    (sum, stage) => sum + youngDays(life.chain.species, stage, keepingOf(life, event.day)),
    0,
  );
  if (!Number.isFinite(toAdult)) return startedCup(state, event.day, life);
  const age = Math.round(event.look === 'larvae' ? toAdult / 2 : toAdult + 1);
  let aged = startedCup(state, event.day - age, life);
  for (let day = event.day - age; day < event.day; day++) aged = nextDay(life, aged, day).state;
  return { ...aged, lookedOn: event.day };
}

const keepingOf = (life: Life, day: DayNumber) => ({
  temp: life.climate.on(day),
  weekMeanC: life.climate.weekMeanOn(day),
  speed: life.speed,
  holdingLossPerDay: 0,
  laying: 0,
});
