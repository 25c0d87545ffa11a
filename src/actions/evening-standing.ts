/** What a round sent says against what is written down of that evening already: what is new, the same, or contradicts. */
import { grouped } from '../husbandry/grouped.ts';
import type { EveningLine } from '../store/index.ts';

export type Said = 'offered' | 'not offered' | 'premoult' | 'moulted' | 'died';

/** One row as it was sent. */
export interface Saying {
  readonly animal: string;
  readonly outcome: Said;
  /** From the button that records the rest, not from a mark by hand. */
  readonly bulk: boolean;
  readonly bin?: string;
  readonly heads?: number;
}

/** A row that was not written; with what was offered, if something was. */
export interface Against {
  readonly animal: string;
  readonly said: Said;
  readonly bin?: string;
  readonly heads?: number;
}

export interface Standing<R extends Saying> {
  /** To be written. */
  readonly open: readonly R[];
  /** Written down by somebody else's act, nothing said against it. */
  readonly already: readonly string[];
  /** Marks by hand that the record contradicts; the record stands. */
  readonly against: readonly Against[];
}

type Verdict = 'open' | 'already' | 'against';

/**
 * Sets rows beside the lines of their evening. What an act from the same page wrote is not told of, and a row that
 * now says something else is this keeper's later word.
 */
export function standing<R extends Saying>(
  rows: readonly R[],
  lines: readonly EveningLine[],
  formId: string | undefined,
): Standing<R> {
  const fromHere = ({ formId: other }: EveningLine) =>
    formId !== undefined && pageOf(other) === pageOf(formId);
  const linesOf = grouped(lines, ({ animal }) => animal);
  const judged = rows.map((row) => {
    const written = linesOf.get(row.animal) ?? [];
    const own = written.every(fromHere);
    return { row, own, verdict: verdictOn(own ? { ...row, bulk: false } : row, written) };
  });
  const judgedAs = (verdict: Verdict) => judged.filter((each) => each.verdict === verdict);
  return {
    open: judgedAs('open').map(({ row }) => row),
    already: judgedAs('already')
      .filter(({ own }) => !own)
      .map(({ row }) => row.animal),
    against: judgedAs('against').map(({ row }) => againstOf(row)),
  };
}

const againstOf = ({ animal, outcome, bin, heads }: Saying): Against => ({
  animal,
  said: outcome,
  ...(bin === undefined || heads === undefined ? {} : { bin, heads }),
});

/** Several shelves sent from one page share all of their form's id before the colon. */
const pageOf = (formId: string | null): string | undefined => formId?.split(':')[0];

function verdictOn(row: Saying, lines: readonly EveningLine[]): Verdict {
  const has = (...kinds: readonly EveningLine['kind'][]) => lines.some(({ kind }) => kinds.includes(kind));
  if (row.outcome === 'died') return has('died') ? 'already' : 'open';
  if (!has('offered', 'skipped', 'premoult', 'moulted')) return 'open';
  if (row.bulk) return 'already';
  switch (row.outcome) {
    case 'offered':
      if (has('premoult', 'moulted')) return 'against';
      if (!has('offered')) return 'open';
      return lines.some(({ bin, heads }) => bin === row.bin && heads === row.heads) ? 'already' : 'against';
    case 'not offered':
      return has('offered') ? 'against' : 'already';
    case 'premoult':
    case 'moulted':
      if (has(row.outcome)) return 'already';
      return has('offered', 'moulted') ? 'against' : 'open';
  }
}
