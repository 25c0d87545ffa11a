/** Two people may edit one record: the second is told, and nothing is overwritten unseen. */
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { anyChangedSince, changedSince, type Noun, type Tx } from '../store/index.ts';

export interface Edited {
  readonly noun: Noun;
  readonly code: string;
  /** What it is called, where that is not its code. */
  readonly called?: string;
  /** Revision of the page the edit was made on; without it nothing is checked. */
  readonly asOf: number | undefined;
}

export async function unlessChanged(
  tx: Tx,
  { noun, code, called = code, asOf }: Edited,
): Promise<Result<null>> {
  const newer = asOf === undefined ? null : await tx.ask(changedSince(noun, code, asOf));
  return newer === null
    ? ok(null)
    : err(
        problem(
          'changed-meanwhile',
          `${called} was changed while you wrote ("${newer.summary}"). Look at what it says now, then save again.`,
        ),
      );
}

export interface EditedTogether extends Omit<Edited, 'code'> {
  readonly codes: readonly string[];
}

/** The same for many records at once; the first that was changed is named. */
export async function unlessAnyChanged(tx: Tx, { noun, codes, asOf }: EditedTogether): Promise<Result<null>> {
  const newer = asOf === undefined ? null : await tx.ask(anyChangedSince(noun, codes, asOf));
  return newer === null
    ? ok(null)
    : err(
        problem(
          'changed-meanwhile',
          `${newer.code} was changed while you chose ("${newer.summary}"). Look at the list again.`,
        ),
      );
}
