/** One animal's record as its page tells it: offers with what became of them, moults, sizes; month by month. */
import { parts } from '../../../views/format.ts';
import type { HistoryLine } from '../../../views/partials/history.tsx';
import type { RecordPage } from '../../../views/partials/record-months.tsx';
import type { LifeRecord } from '../../actions/index.ts';
import type { Outcome } from '../../husbandry/animals/index.ts';
import type { ActAbout, EntryLine } from '../../store/index.ts';
import { historyLines, type Telling } from './history.ts';

const OUTCOMES: readonly EntryLine['kind'][] = ['taken', 'part-taken', 'refused'];

const WORDS: Readonly<Record<Outcome, string>> = {
  offered: 'not said yet',
  taken: 'taken',
  'taken (assumed)': 'taken, as nobody said otherwise',
  'part-taken': 'taken in part',
  refused: 'refused',
};

interface Recorded {
  readonly acts: readonly ActAbout[];
  readonly meals: LifeRecord['meals'];
}

/** Newest day first. An evening's offer and its morning are one line; what was undone stays as it was told. */
export function recordLines({ acts, meals }: Recorded, telling: Telling): readonly HistoryLine[] {
  const outcomes = new Map(meals.map(({ act, outcome }) => [act, outcome]));
  return acts
    .flatMap((act) => lineOf(act, outcomes.get(act.act), telling))
    .toSorted((a, b) => b.day - a.day || Number(b.id) - Number(a.id));
}

function lineOf(act: ActAbout, outcome: Outcome | undefined, telling: Telling): readonly HistoryLine[] {
  const [whole] = historyLines([act], telling);
  if (whole === undefined || act.undone) return whole === undefined ? [] : [whole];
  const lines = whole.canUndo ? act.lines : act.lines.filter(({ kind }) => !OUTCOMES.includes(kind));
  if (lines.length === 0 && act.lines.length > 0) return [];
  const [line = whole] = historyLines([{ ...act, lines }], telling);
  const offered = lines.some(({ kind, bin }) => kind === 'offered' && bin !== null);
  if (!offered || outcome === undefined) return [line];
  return [{ ...line, sentence: line.sentence.replace(/\.$/, `: ${WORDS[outcome]}.`) }];
}

/** A page ends with the month in which it has so many lines. */
const LINES_A_PAGE = 40;

type Months = RecordPage['months'];

/** The months of one page of the record, with the addresses of its neighbours. */
export function recordPage(lines: readonly HistoryLine[], asked: number, path: string): RecordPage {
  const pages = pagesOf(lines);
  const at = Math.min(Math.max(1, asked), Math.max(1, pages.length));
  const address = (page: number): string => `${path}?page=${page}#history`;
  return {
    months: pages[at - 1] ?? [],
    newer: at > 1 ? address(at - 1) : null,
    older: at < pages.length ? address(at + 1) : null,
  };
}

function pagesOf(lines: readonly HistoryLine[]): readonly Months[] {
  const pages: Months[] = [];
  let page: Months = [];
  for (const month of monthsOf(lines)) {
    page = [...page, month];
    if (page.reduce((sum, { lines: some }) => sum + some.length, 0) < LINES_A_PAGE) continue;
    pages.push(page);
    page = [];
  }
  return page.length > 0 ? [...pages, page] : pages;
}

function monthsOf(lines: readonly HistoryLine[]): Months {
  const titles = [...new Set(lines.map(({ day }) => monthOf(day)))];
  return titles.map((title) => ({ title, lines: lines.filter(({ day }) => monthOf(day) === title) }));
}

function monthOf(day: number): string {
  const { month, year } = parts(day);
  return `${month} ${year}`;
}
