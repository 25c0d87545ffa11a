/** The history: all that was done, newest first, looked through by animal, bin, kind of act and words. */
import type { Context, Hono } from 'hono';
import type { Names } from '../../../views/names.ts';
import { HistoryPage, type HistorySought } from '../../../views/pages/history.tsx';
import { paths } from '../../../views/paths.ts';
import { type Sought, stepsDone } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { DAYS_KEPT_CLOSE } from './last-step.ts';
import { namesOnRecord } from './names.ts';
import { stepLines } from './step-lines.ts';
import { GROUP_OPTIONS, OF_MANY, verbsOf } from './verb-groups.ts';
import { page, visit } from './visit.ts';

const A_PAGE = 50;
const LONGEST_WORDS = 200;
const MOST_PAGES = 10_000;

export function historyRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.history, (c) => showHistory(house, c));
}

async function showHistory(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { store, facts } = house.context;
  const names = await namesOnRecord(store, facts);
  const sought = soughtIn(c);
  const at = pageIn(c);
  const shown = { howMany: A_PAGE + 1, from: at * A_PAGE };
  const steps = await store.ask(stepsDone(asked(sought, names), shown));
  const props = {
    ...here,
    sought,
    at,
    more: steps.length > A_PAGE,
    lines: await stepLines(house, names, steps.slice(0, A_PAGE)),
    batch: await lastBatch(house, names, { sought, at }),
    animals: options(names.animals),
    bins: options(names.bins),
    groups: GROUP_OPTIONS,
  };
  return page(c, HistoryPage(props));
}

const soughtIn = (c: Context): HistorySought => ({
  animal: c.req.query('animal') ?? '',
  bin: c.req.query('bin') ?? '',
  group: c.req.query('group') ?? '',
  words: (c.req.query('q') ?? '').slice(0, LONGEST_WORDS).trim(),
});

/** The page asked for, from 0; what is none is the first. */
function pageIn(c: Context): number {
  const at = Number(c.req.query('page') ?? 0);
  return Number.isInteger(at) && at >= 0 && at <= MOST_PAGES ? at : 0;
}

const asked = ({ animal, bin, group, words }: HistorySought, names: Names): Sought => ({
  ...(animal === '' ? {} : { animal }),
  ...(bin === '' ? {} : { bin }),
  ...verbsOf(group),
  words: words
    .split(/\s+/)
    .filter((word) => word !== '')
    .map((text) => ({ text, codes: codesNamed(names, text) })),
});

/** Codes of all whose name has the word in it. */
const codesNamed = ({ animals, bins, rooms }: Names, word: string): readonly string[] =>
  [...animals, ...bins, ...rooms]
    .filter(([, name]) => name.toLowerCase().includes(word.toLowerCase()))
    .map(([code]) => code);

const byName = new Intl.Collator('en', { numeric: true });
const options = (names: ReadonlyMap<string, string>) =>
  [...names]
    .map(([value, label]) => ({ value, label: label === value ? label : `${label} (${value})` }))
    .sort((a, b) => byName.compare(a.label, b.label));

interface Looking {
  readonly sought: HistorySought;
  readonly at: number;
}

/** The last act that wrote of many at once, kept on top for a month; only where nothing else is looked for. */
async function lastBatch(house: House, names: Names, { sought, at }: Looking) {
  if (at > 0 || Object.values(sought).some((said) => said !== '')) return null;
  const steps = await house.context.store.ask(stepsDone({ verbs: OF_MANY }, { howMany: 1, from: 0 }));
  const [line] = await stepLines(house, names, steps);
  const { today } = house.context.clock();
  return line === undefined || line.undone || line.day < today - DAYS_KEPT_CLOSE ? null : line;
}
