/** What the record says is worth a look: prey refused again and again, a premoult that takes too long. */
import { type Animal, ruleOf } from '../animals/index.ts';
import type { DayNumber } from '../calendar.ts';
import type { Policy } from '../policy.ts';
import { meanOfDay } from '../prey/index.ts';
import { roomTemp } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import { spokenDay } from './wording.ts';

const TIMES = ['', 'once', 'twice', 'three times', 'four times', 'five times', 'six times'] as const;

/** Said of an animal that refused more often in a row than the policy lets pass; null otherwise. */
export function refusedAgain({ refusalsInRow: n }: Animal, { refusalsAsked }: Policy): string | null {
  if (n < refusalsAsked.value) return null;
  const times = TIMES[n] ?? `${n} times`;
  return `Refused ${times} in a row: premoult, or something wrong? Look at it; a vet if it is thin or weak.`;
}

/** Said of a premoult seen longer ago than is usual for its kind at its warmth; null when the record cannot tell. */
export function premoultTooLong(snapshot: Snapshot, animal: Animal): string | null {
  const { premoultSeen: seen } = animal;
  const most = longestPremoultDays(snapshot, animal);
  if (seen === null || most === null || snapshot.today - seen <= most) return null;
  return `Seen in premoult on ${spokenDay(seen)}, longer ago than the ${most} days its kind may take: look at it.`;
}

/**
 * Days from the start of premoult to the moult, with twice its spread:
 * (1 - start of the cycle's last phase) x mean cycle x Q10^((Tref - T)/10) x (1 + 2 CV).
 */
function longestPremoultDays({ facts, rooms }: Snapshot, animal: Animal): DayNumber | null {
  const kind = facts.kinds.get(animal.kind);
  const rule = kind && ruleOf(kind, animal);
  const lastPhase = rule?.acceptance.value.at(-1);
  if (!rule?.moult || lastPhase === undefined) return null;
  const { moultQ10, moultReferenceC, q10StepC } = facts.policy;
  const tempC = meanOfDay(roomTemp(rooms, animal.room));
  const slower = moultQ10.value ** ((moultReferenceC.value - tempC) / q10StepC.value);
  const days = (1 - lastPhase.from) * rule.moult.meanDays.value * slower;
  return Math.ceil(days * (1 + 2 * rule.moult.cv.value));
}
