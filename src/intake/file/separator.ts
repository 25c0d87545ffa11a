/** Finds the separator of a file from its content. */
import { cutRecords, isBlankRecord, SEPARATORS, type Separator, type SheetRecord } from './records.ts';

/** How many cells of one row are known headings. */
export type HeadingScore = (cells: readonly string[]) => number;

const SAMPLE_CHARACTERS = 60_000;
const SAMPLE_RECORDS = 40;
const DECLARED = /^sep=(.)\n/i;
/** One more known heading outweighs any evenness of the rows. */
const HEADING_WEIGHT = 100;

function sampleOf(text: string): string {
  if (text.length <= SAMPLE_CHARACTERS) return text;
  return text.slice(0, text.lastIndexOf('\n', SAMPLE_CHARACTERS) + 1 || SAMPLE_CHARACTERS);
}

/** Share of rows with the most frequent number of cells, 0 when that is one cell. */
function evenness(records: readonly SheetRecord[]): number {
  const tally = new Map<number, number>();
  for (const { cells } of records) tally.set(cells.length, (tally.get(cells.length) ?? 0) + 1);
  const [width, rows] = [...tally].reduce((best, next) => (next[1] > best[1] ? next : best), [1, 0]);
  return width > 1 ? rows / records.length : 0;
}

function scoreOf(sample: string, separator: Separator, known: HeadingScore): number {
  const records = cutRecords(sample, separator)
    .records.filter((record) => !isBlankRecord(record))
    .slice(0, SAMPLE_RECORDS);
  const headings = Math.max(0, ...records.map(({ cells }) => known(cells)));
  return headings * HEADING_WEIGHT + evenness(records);
}

/** Separator and the text below a 'sep=;' line, which spreadsheets neither show nor count. */
export function findSeparator(
  text: string,
  known: HeadingScore,
): { readonly separator: Separator; readonly body: string } {
  const declared = DECLARED.exec(text);
  const named = SEPARATORS.find((separator) => separator === declared?.[1]);
  if (declared && named) return { separator: named, body: text.slice(declared[0].length) };
  const sample = sampleOf(text);
  const scored = SEPARATORS.map((separator) => ({ separator, score: scoreOf(sample, separator, known) }));
  const best = scored.reduce((first, next) => (next.score > first.score ? next : first));
  return { separator: best.separator, body: text };
}
