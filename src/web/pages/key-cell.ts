/** One cell of a sheet keyed in: a few signs for what one animal got and what became of it. */
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { MealOutcome } from '../../store/index.ts';

export type KeyMark = 'premoult' | 'moulted' | 'died';

/** Nothing said counts as it stands on the sheet. */
export interface Cell {
  readonly mark?: KeyMark;
  /** Heads as typed; '0' when it was not fed. */
  readonly heads?: string;
  /** Code of the bin. */
  readonly bin?: string;
  /** What became of it, where that is known already. */
  readonly became?: MealOutcome;
}

/** What the cell is beside. */
export interface Beside {
  /** Something was proposed on the sheet. */
  readonly proposed: boolean;
  /** Codes of the bins in use. */
  readonly bins: readonly string[];
}

const MARKS: Readonly<Record<string, KeyMark>> = { p: 'premoult', m: 'moulted', d: 'died' };
const BECAME: Readonly<Record<string, MealOutcome>> = { t: 'taken', s: 'part-taken', r: 'refused' };
const CELL = /^(?<heads>\d{1,6})?\s*(?<bin>[a-z]+\d+)?\s*(?<became>[tsr])?$/i;

export function readCell(typed: string, beside: Beside): Result<Cell> {
  const text = typed.trim().toLowerCase();
  const mark = MARKS[text];
  if (mark !== undefined) return ok({ mark });
  const found = CELL.exec(text)?.groups;
  if (found === undefined) return err(notUnderstood(typed));
  const { heads, bin, became } = found;
  const known = beside.bins.find((code) => code.toLowerCase() === bin);
  if (bin !== undefined && known === undefined) return err(noSuchBin(bin, beside.bins));
  const missing = whatIsMissing(typed.trim(), { ...found, ...beside });
  if (missing !== null) return err(problem('not-understood', missing));
  return ok({
    ...(heads === undefined ? {} : { heads: String(Number(heads)) }),
    ...(known === undefined ? {} : { bin: known }),
    ...(became === undefined ? {} : { became: BECAME[became]! }),
  });
}

const notUnderstood = (typed: string) =>
  problem(
    'not-understood',
    `"${typed.trim()}" is not understood: write 0, a number, p, m or d, or a number and a bin such as 4 B2.`,
  );

const noSuchBin = (bin: string, bins: readonly string[]) =>
  problem(
    'unknown-bin',
    `"${bin.toUpperCase()}" is not a bin in use${bins.length === 0 ? '' : `; there are ${bins.join(', ')}`}.`,
  );

interface Parts {
  readonly heads?: string | undefined;
  readonly bin?: string | undefined;
  readonly became?: string | undefined;
  readonly proposed: boolean;
}

/** What must be said besides, as a sentence; null when all is said. */
function whatIsMissing(text: string, { heads, bin, became, proposed }: Parts): string | null {
  const none = heads !== undefined && Number(heads) === 0;
  if (none && (bin !== undefined || became !== undefined))
    return `"${text}" says that nothing was offered, and more: write 0 alone.`;
  if (text === '' || none || proposed) return null;
  if (heads === undefined) return `"${text}" does not say how many it got: nothing was proposed for it.`;
  return bin === undefined ? `"${text}" does not say from which bin: write it after the number.` : null;
}
