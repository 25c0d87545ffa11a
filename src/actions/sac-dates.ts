/** What acts on a sac share: its record, finding it, and days that must be in order. */
import { civilDate, type DayNumber, type DayRange } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { SacRecord } from '../husbandry/snapshot.ts';
import type { PlannedChangeRow, Tx } from '../store/index.ts';
import { findRow } from './find.ts';

/** A sac of which nothing is known yet. */
export const noSacDates: SacRecord = {
  laid: null,
  pulled: null,
  hatched: null,
  counted: false,
  settled: null,
  ended: null,
  shareKept: 1,
  motherFasts: null,
};

/** A stretch of days whose first comes first, or a Problem. */
export function forwards({ from, to }: DayRange, field = 'from'): Result<null> {
  if (from <= to) return ok(null);
  const said = `"${civilDate(from)} to ${civilDate(to)}" runs backwards; the earlier day comes first.`;
  return err(problem('ends-swapped', said, field));
}

export interface OpenSac {
  readonly row: PlannedChangeRow;
  readonly sac: SacRecord;
  /** 'sac of A3', for summaries. */
  readonly words: string;
}

/** A sac that is still expected to bring young. */
export async function findOpenSac(tx: Tx, code: string): Promise<Result<OpenSac>> {
  const found = await findRow(tx, 'planned_change', code);
  if (!found.ok) return found;
  const { kind, cancelled, animal, count } = found.value;
  const sac = found.value.sac ?? noSacDates;
  if (kind !== 'sac' || cancelled)
    return err(problem('not-a-sac', `"${code}" is not a sac that is expected.`, 'change'));
  if (sac.ended !== null)
    return err(problem('sac-ended', `This sac came to nothing on ${civilDate(sac.ended.day)}.`, 'change'));
  if (sac.settled !== null)
    return err(
      problem('sac-settled', `The young of this sac were first fed on ${civilDate(sac.settled)}.`, 'change'),
    );
  return ok({ row: found.value, sac, words: animal === null ? `sac of ${count}` : `sac of ${animal}` });
}

/** Whether a day comes before the sac was laid, as a Problem beside the field of the day. */
export function notBeforeLaid({ laid }: SacRecord, day: DayNumber, field = 'day'): Result<null> {
  if (laid === null || day >= laid.from) return ok(null);
  const said = `"${civilDate(day)}" is before the sac was laid (${civilDate(laid.from)}); give a later day.`;
  return err(problem('before-laid', said, field));
}

/** The mother's fast ended by a day: what came before it stays. */
export const fastEnded = (fasts: DayRange | null, day: DayNumber): DayRange | null =>
  fasts === null || fasts.from >= day ? null : { from: fasts.from, to: Math.min(fasts.to, day - 1) };
