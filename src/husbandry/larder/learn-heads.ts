/** What an event teaches of how many there are, and so of how fast they die. */

import { logSdOf } from '../../maths/log-normal.ts';
import { totalByRatio } from '../../maths/ratio-estimate.ts';
import type { BinEvent, Sample } from './bin.ts';
import {
  type CountReading,
  oddsOfDead,
  oddsOfReading,
  putIn,
  readCount,
  startAfresh,
  takeDead,
  takeOut,
} from './count-cells.ts';
import {
  cellWeights,
  headsRange,
  isUnexplained,
  type Look,
  type Mind,
  meanHeads,
  middleOf,
  noteSeen,
  signsNow,
} from './mind.ts';

/** Brings every cell to what the event says of the heads. */
export function learnHeads(mind: Mind, event: BinEvent): void {
  const { cells, policy } = mind;
  switch (event.kind) {
    case 'delivered':
      putIn(cells, event.lot.heads, policy.overCountCv.value);
      break;
    case 'moved in':
      putIn(cells, event.lot.heads, policy.countCv.value);
      break;
    case 'offered':
    case 'discarded':
    case 'culled':
    case 'moved out':
      takeOut(cells, event.heads);
      break;
    case 'counted':
    case 'looked':
    case 'weighed':
      readHeads(mind, event);
      break;
    case 'found dead':
      readDead(mind, event.heads);
      break;
    case 'died off':
      startAfresh(cells, event.left, policy.levelCv.value);
  }
}

function readDead(mind: Mind, heads: number): void {
  const { timesDead, dead } = mind.evidence;
  const odds = oddsOfDead(mind.cells, cellWeights(mind), heads);
  takeDead(mind.cells, heads, !isUnexplained(mind, odds));
  noteSeen(mind, { timesDead: timesDead + 1, dead: dead + heads });
}

const alike = ({ lives }: Mind, heads: number): Float64Array => new Float64Array(lives.length).fill(heads);

const fullHeads = ({ lives, states }: Mind): number =>
  middleOf(lives).bin.capacity ?? middleOf(states).fullest;

/** What a look says of the heads, by speed, and how far it may err. */
interface HeadsRead {
  readonly readings: Float64Array;
  readonly cv: number;
}

type LookEvent = Extract<BinEvent, { kind: Look['kind'] }>;

function headsRead(mind: Mind, event: LookEvent): HeadsRead {
  const { policy } = mind;
  switch (event.kind) {
    case 'counted':
      return { readings: alike(mind, event.heads), cv: policy.countCv.value };
    case 'looked': {
      const heads = fullHeads(mind) * policy.levelShares.value[event.level];
      return { readings: alike(mind, heads), cv: policy.levelCv.value };
    }
    case 'weighed':
      return event.sample ? bySample(mind, event.massMg, event.sample) : byMass(mind, event.massMg);
  }
}

/** By the ratio of a weighed sample, where the mass of one head need not be known. */
function bySample(mind: Mind, massMg: number, { heads, massMg: mass, cv }: Sample): HeadsRead {
  const estimate = totalByRatio(massMg, { heads, mass, cv: cv ?? middleOf(signsNow(mind))?.massCv ?? 0 });
  return {
    readings: alike(mind, estimate.total),
    cv: Math.hypot(estimate.cv, mind.policy.scaleCv.value),
  };
}

/** By the mean mass reckoned at each speed. */
const byMass = (mind: Mind, massMg: number): HeadsRead => ({
  readings: Float64Array.from(signsNow(mind), (sign) => (sign ? massMg / Math.exp(sign.lnMeanMg) : 0)),
  cv: mind.policy.weighCv.value,
});

/** A reading that no cell explains is believed, and teaches nothing but the count: something happened that was not written. */
function readHeads(mind: Mind, event: LookEvent): void {
  const { cells, evidence } = mind;
  const weights = cellWeights(mind);
  const { readings, cv } = headsRead(mind, event);
  const heads = middleOf(readings);
  mind.looks.push({ day: event.day, kind: event.kind, heads, expected: headsRange(mind, weights) });
  noteSeen(mind, { [LOOKS_AS[event.kind]]: evidence[LOOKS_AS[event.kind]] + 1 });
  const reading: CountReading = { readings, logSd: logSdOf(cv) };
  const known = meanHeads(mind, weights) > 0 && heads > 0;
  if (known && !isUnexplained(mind, oddsOfReading(cells, weights, reading))) readCount(cells, reading);
  else startAfresh(cells, heads, cv);
}

const LOOKS_AS = { counted: 'counts', looked: 'levels', weighed: 'weighings' } as const;
