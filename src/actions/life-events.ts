/** What happens in an animal's life, as rows and entries: shared by single marks and by the feeding round. */
import { ruleOf } from '../husbandry/animals/index.ts';
import { civilDate, type DayNumber } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { Mm } from '../husbandry/units.ts';
import { type AnimalRow, type EntryInput, lastSeenUnmoulted } from '../store/index.ts';
import { findKind } from './find.ts';
import { beforeItCame, beforeItHatched } from './lifetime.ts';
import type { Scene } from './perform.ts';

/** What an event writes: the animal's row afterwards, and lines of the journal. */
export interface LifeEvent {
  readonly row: AnimalRow;
  readonly entries: readonly EntryInput[];
}

export interface MoultGiven {
  readonly found: DayNumber;
  /** Last day seen unmoulted; by default the last day anything was written of the animal. */
  readonly earliest?: DayNumber | undefined;
  /** Measured after the moult; by default the kind's factor is used. */
  readonly gaugeMm?: Mm | undefined;
}

const TENTHS = 10;

/** A moult found: the animal grows by its kind's factor until it is measured, unless it was measured since. */
export async function moulted(scene: Scene, row: AnimalRow, given: MoultGiven): Promise<Result<LifeEvent>> {
  const early =
    beforeItCame(row, { day: given.found, field: 'found' }) ??
    beforeItHatched(row, { day: given.earliest, field: 'earliest' });
  if (early !== null) return err(early);
  const kind = findKind(scene.facts, row.kind);
  if (!kind.ok) return kind;
  const seen = await scene.tx.ask(lastSeenUnmoulted(row.code, given.found));
  const earliest = given.earliest ?? seen ?? given.found;
  if (earliest > given.found)
    return err(
      problem(
        'ends-swapped',
        `"${civilDate(earliest)}" is after the day the moult was found (${civilDate(given.found)}).`,
        'earliest',
      ),
    );
  const factor = ruleOf(kind.value, row).moult?.lengthFactor.value ?? 1;
  const grown = Math.round(row.gaugeMm * factor * TENTHS) / TENTHS;
  const entry = { ...measure(given.gaugeMm), earliest };
  return ok({
    row: resized(row, {
      gaugeMm: given.gaugeMm ?? grown,
      day: given.found,
      assumed: given.gaugeMm === undefined,
    }),
    entries: [{ day: given.found, kind: 'moulted', animal: row.code, details: entry }],
  });
}

const measure = (gaugeMm: Mm | undefined) => (gaugeMm === undefined ? {} : { gaugeMm });

interface Size {
  readonly gaugeMm: Mm;
  readonly day: DayNumber;
  readonly assumed: boolean;
}

/** The row at a new size, unless its size is known from a later day. */
export const resized = (row: AnimalRow, { gaugeMm, day, assumed }: Size): AnimalRow =>
  day < row.gaugeDay ? row : { ...row, gaugeMm, gaugeDay: day, gaugeAssumed: assumed };

/** Deaths: a group loses heads, and ends with its last. */
export function died(row: AnimalRow, heads: number, day: DayNumber): Result<LifeEvent> {
  if (heads > row.count)
    return err(problem('too-many', `"${heads}" is more than the ${row.count} in ${row.code}.`, 'heads'));
  const early = beforeItCame(row, { day, field: 'day' });
  if (early !== null) return err(early);
  const ended = { leftReason: 'died', leftDay: day } as const;
  return ok({
    row: heads === row.count ? { ...row, ...ended } : { ...row, count: row.count - heads },
    entries: [{ day, kind: 'died', animal: row.code, heads }],
  });
}
