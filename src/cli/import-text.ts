/** What an import read and did, as lines: one a row, then the sum; and what must be answered before it can be written. */
import { counted, listed } from '../../views/format.ts';
import type { Problem } from '../husbandry/problems.ts';
import type { Ask, Reading, RowReading } from '../intake/index.ts';

export interface Brought {
  readonly reading: Reading<unknown>;
  readonly done: { readonly summary: string } | null;
}

export function importLines({ reading, done }: Brought, dryRun: boolean): readonly string[] {
  const { rows, tally, remarks } = reading;
  const sum = (['new', 'changed', 'same', 'asked', 'refused'] as const)
    .filter((verdict) => tally[verdict] > 0)
    .map((verdict) => `${tally[verdict]} ${verdict === 'asked' ? 'waiting' : verdict}`);
  return [
    ...rows.map(rowLine),
    ...(rows.length > 0 ? [''] : []),
    ...remarks,
    ...(rows.length > 0 ? [`${counted(rows.length, 'reading')}: ${listed(sum)}.`] : []),
    ...refusedLine(rows),
    ...(reading.ready ? [ending({ reading, done }, dryRun)] : []),
  ];
}

const rowLine = ({ row, verdict, written, notes }: RowReading<unknown>): string => {
  const begins = `row ${row}  ${verdict === 'asked' ? 'waits' : verdict}  ${written}`;
  return [begins.trimEnd(), ...notes.map(({ sentence }) => sentence)].join('  | ');
};

function refusedLine(rows: readonly RowReading<unknown>[]): readonly string[] {
  const refused = rows.filter(({ verdict }) => verdict === 'refused').map(({ row }) => `${row}`);
  return refused.length === 0
    ? []
    : [`Left out: ${refused.length === 1 ? 'row' : 'rows'} ${listed(refused)}.`];
}

function ending({ done }: Brought, dryRun: boolean): string {
  if (done !== null) return `${done.summary}.`;
  return dryRun ? 'Nothing was written: this was a dry run.' : 'Nothing was written: nothing is new.';
}

/** What stands in the way of writing, one sentence a line. */
export function troubleLines({ reading }: Brought): readonly string[] {
  if (reading.ready) return [];
  return [...reading.problems.map(problemLine), ...reading.asks.map(askLine), 'Nothing was written.'];
}

const problemLine = ({ code, sentence }: Problem): string =>
  code.startsWith('dates-') ? `${sentence} Say --dates dmy, --dates mdy or --dates ymd.` : sentence;

function askLine({ about, text, sentence, near }: Ask): string {
  if (about === 'unit') return `${sentence} Say --unit mm, --unit cm or --unit in.`;
  const codes = near.map(({ code }) => code);
  const example = codes[0] ?? (about === 'kind' ? 'code-of-a-kind' : 'code-of-a-prey');
  return `${sentence} Say --answer "${text}=${example}", or --answer "${text}=" to leave it out.`;
}
