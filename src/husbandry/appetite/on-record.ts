/** What an animal's record says at the start of a forecast: its last meal, its wait, its moult cycle, its appetite. */

import { logSdOf } from '../../maths/log-normal.ts';
import { normalCdf } from '../../maths/normal.ts';
import type { Animal } from '../animals/index.ts';
import { NEVER } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { cycleStretch } from './moult-pace.ts';
import type { Row } from './rows.ts';

/** Premoult counts only when seen after the last moult. */
export const premoultDay = ({ premoultSeen, lastMoult }: Animal): number | null =>
  premoultSeen !== null && (lastMoult === null || premoultSeen >= lastMoult.found) ? premoultSeen : null;

/** An offer nobody has spoken of yet counts as the last meal. */
export const lastMeal = ({ lastOffered, lastOutcome, lastTaken }: Animal): number | null =>
  lastOutcome === 'offered' ? lastOffered : lastTaken;

/** The safe gap counts from here: an animal that refused or is hardening is not short of prey. */
export function lastTended({ animal, steps }: Row, today: number): number {
  const wait = Math.ceil(steps[0]?.rule.waitAfterMoultDays.value ?? 0);
  const offered = animal.lastOffered === null ? NEVER : animal.lastOffered - today;
  const hard = animal.lastMoult === null ? NEVER : animal.lastMoult.found + wait - today;
  return Math.max(offered, Math.min(hard, 0), fastOver(animal, today) ?? NEVER);
}

/** Day from today on which a fast that has begun is over; null when it does not fast. */
const fastOver = ({ fasts = null }: Animal, today: number): number | null =>
  fasts !== null && fasts.from <= today && today <= fasts.to ? fasts.to + 1 - today : null;

/** After a refusal the retry wait; after an offer today, tomorrow; not while it fasts. */
export function notBefore(row: Row, today: number): number {
  return Math.max(againAfter(row, today), fastOver(row.animal, today) ?? NEVER);
}

function againAfter({ animal, steps }: Row, today: number): number {
  if (animal.lastOffered === null) return NEVER;
  const offered = animal.lastOffered - today;
  if (animal.lastOutcome === 'refused') return offered + (steps[0]?.rule.retryDays.value ?? 1);
  return offered + 1;
}

/**
 * Mean of the log of the moult cycle [days]: ln(mean x Q10^((Tref - T)/10)) - s^2/2, a log-normal with that mean and
 * CV; metabolic Q10 of invertebrates about 2 (source with the value).
 */
export function cycleLogMean({ steps, tempC }: Row, step: number, { facts }: Snapshot): number {
  const moult = steps[step]?.rule.moult;
  if (!moult) return Number.NaN;
  return (
    Math.log(moult.meanDays.value * cycleStretch(tempC, facts.policy)) - logSdOf(moult.cv.value) ** 2 / 2
  );
}

export function cyclePassed(row: Row, snapshot: Snapshot): number {
  const found = row.animal.lastMoult?.found;
  const moult = row.steps[0]?.rule.moult;
  if (found === undefined || !moult) return 0;
  const age = Math.max(1, snapshot.today - found);
  return normalCdf((Math.log(age) - cycleLogMean(row, 0, snapshot)) / logSdOf(moult.cv.value));
}

/** Acceptance on record over the kind's, each weighed by its offers; 1 without a record. */
export function appetiteOf({ animal }: Row, { facts }: Snapshot): number {
  const prior = facts.policy.acceptancePriorWeight.value;
  return (animal.takenOnRecord + prior) / (animal.offersOnRecord + prior);
}
