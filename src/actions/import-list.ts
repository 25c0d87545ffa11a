/** What both imports share: read, show, and write as one act only what is new or changed. */
import { ok, type Result } from '../husbandry/result.ts';
import type { IntakeOptions, Reading } from '../intake/index.ts';
import type { Context } from './context.ts';
import { firstRoom } from './first-room.ts';
import { importRows } from './import-rows.ts';
import type { Done } from './perform.ts';

export interface ListGiven {
  /** The file as it came. */
  readonly bytes: Uint8Array;
  readonly options?: Omit<IntakeOptions, 'today'>;
  /** Reads and says what would happen, writing nothing. */
  readonly dryRun?: boolean;
  readonly formId?: string;
}

export interface Imported<E> {
  readonly reading: Reading<E>;
  /** What was written; null when nothing was: a dry run, an open question, or nothing new. */
  readonly done: Done | null;
}

type Rows = Parameters<typeof importRows>[1];

/** Writes a reading that is ready; `rowsFrom` says what its rows are to the store. */
export async function writeReading<E>(
  context: Context,
  { dryRun = false, formId }: ListGiven,
  { reading, rowsFrom }: { readonly reading: Reading<E>; readonly rowsFrom: (reading: Reading<E>) => Rows },
): Promise<Result<Imported<E>>> {
  const nothing = reading.tally.new + reading.tally.changed === 0;
  if (dryRun || !reading.ready || nothing) return ok({ reading, done: null });
  const room = await firstRoom(context);
  if (!room.ok) return room;
  const done = await importRows(context, { ...rowsFrom(reading), formId });
  return done.ok ? ok({ reading, done: done.value }) : done;
}
