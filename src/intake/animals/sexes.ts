/** Heads and sexes of one row from its sex, count and stage cells and from a count written beside the kind. */
import { problem } from '../../husbandry/problems.ts';
import { isBlank } from '../cells/blank.ts';
import { readCount } from '../cells/count.ts';
import { readSex, type SexPart, type SexRead } from '../cells/sex.ts';
import type { StageRead } from '../cells/stage.ts';
import { quote } from '../quoting.ts';
import { type Note, said, trouble } from '../reading.ts';

interface HeadsRead {
  readonly parts: readonly SexPart[];
  /** Whether the row says how many; blank cells do not change a record. */
  readonly countGiven: boolean;
  /** The row says there are none. */
  readonly none: boolean;
}

const SEX_IN_COUNT = /^\d+[.:]\d+[.:]\d+$|^\d+[.:]\d{1,2}$/;
const MOST_ALIKE = 100_000;

const sum = (parts: readonly SexPart[]): number => parts.reduce((heads, { count }) => heads + count, 0);

function sexesWritten(text: string, notes: Note[]): SexRead | null {
  if (isBlank(text)) return null;
  const read = readSex(text);
  if (read?.doubted) notes.push(said('sex-doubted', `Sex ${quote(text)} is in doubt: read as unsexed.`));
  if (!read)
    notes.push(
      trouble(
        problem(
          'not-a-sex',
          `${quote(text)} is not a sex; write male, female, unsexed, or 1.0, 0.1, 0.0.1.`,
          'sex',
        ),
      ),
    );
  return read;
}

function countWritten(text: string, notes: Note[]): number | null {
  if (isBlank(text)) return null;
  const read = readCount(text);
  if (read.ok && read.value.said) notes.push(said('count-range', read.value.said));
  if (read.ok && read.value.heads <= MOST_ALIKE) return read.value.heads;
  const tooMany = problem(
    'count-out-of-range',
    `${quote(text)} is too many for one row; at most ${MOST_ALIKE} can be read.`,
    'count',
  );
  notes.push(trouble(read.ok ? tooMany : read.problem));
  return null;
}

interface HeadCells {
  readonly sex: string;
  readonly count: string;
  readonly stage: StageRead | null;
  /** Counts by sex written beside the kind, such as "0.1 B. hamorii". */
  readonly besideKind: string;
}

export function readHeads({ sex, count, stage, besideKind }: HeadCells, notes: Note[]): HeadsRead {
  const inCount = SEX_IN_COUNT.test(count);
  const written =
    sexesWritten(sex, notes) ??
    (inCount ? readSex(count) : null) ??
    (besideKind ? readSex(besideKind) : null);
  const heads = inCount ? null : countWritten(count, notes);
  if (heads === 0) return { parts: [], countGiven: true, none: true };
  const parts = written?.parts ?? [{ sex: stage?.sex ?? 'unsexed', count: 1 }];
  const countGiven = heads !== null || written?.counted === true;
  const [only, second] = parts;
  if (only && !second && sum(parts) === 1)
    return { parts: [{ ...only, count: heads ?? 1 }], countGiven, none: false };
  if (heads !== null && heads !== sum(parts))
    notes.push(
      trouble(
        problem(
          'count-not-sexes',
          `Count ${quote(count)} is not the ${sum(parts)} of ${quote(sex || besideKind)}; the latter was taken.`,
          'count',
        ),
      ),
    );
  if (second) {
    const words = parts.map((part) => `${part.count} ${part.sex}`).join(', ');
    notes.push(said('row-split', `The row is split by sex: ${words}.`));
  }
  return { parts, countGiven, none: false };
}
