/** The round's page: who eats on an evening, what is written down of it, and what it used. */

import type { Context, Hono } from 'hono';
import { TonightPage, type TonightProps } from '../../../views/pages/tonight.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { askOnce, loadSnapshot } from '../../actions/index.ts';
import type { Evening } from '../../husbandry/appetite/index.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { nextMealOf } from '../../husbandry/supply/index.ts';
import { type EveningLine, eveningLines, offersOf, openEvening, type Store } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { eveningNow } from './evening-now.ts';
import type { House } from './house.ts';
import { cautionsFor, moultlessIn, placeOf } from './meals.ts';
import { valuesIn } from './posted.ts';
import { recordRound } from './round.ts';
import { eveningAsked } from './round-day.ts';
import { chosenBins, preferredBins } from './round-shelves.ts';
import { toldOf } from './round-told.ts';
import { page, statusOf, visit, withWords } from './visit.ts';

export function tonightRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.tonight, (c) => showTonight(house, c));
  app.post(paths.tonight, (c) => recordRound(house, c, (refused) => showTonight(house, c, refused)));
  app.post(paths.tonightPreview, async (c) =>
    showTonight(house, c, { form: 'round', values: await valuesIn(c), problems: {} }),
  );
}

/** What is wrong with no row that is shown is said above all of them. */
function above(problems: Refused['problems'], { servings }: Evening): Refused['problems'] {
  const shown = new Set(servings.map(({ animal }) => animal));
  const ofRow = ([field]: [string, string]) => shown.has(field.split(':')[1] ?? '');
  const others = Object.entries(problems).filter((each) => !ofRow(each));
  const said = [...new Set(others.map(([, sentence]) => sentence))].join(' ');
  const ofRows = Object.fromEntries(Object.entries(problems).filter(ofRow));
  return said === '' ? ofRows : { ...ofRows, '': said };
}

async function showTonight(house: House, c: Context, typed: Refused | null = null): Promise<Response> {
  const now = house.context.clock();
  const asked = eveningAsked(typed?.values.day ?? c.req.query('day'), { ...house.context, today: now.today });
  const day = asked.ok ? asked.value : now.today;
  const here = await visit(house, c, { day });
  const lines = await house.context.store.ask(eveningLines(day));
  const chosen = chosenBins(typed?.values ?? c.req.query());
  const prefer = preferredBins(here.snapshot, chosen);
  const evening = openRound(here.snapshot, lines, await eveningNow(house, here.snapshot, prefer));
  const wrong = asked.ok ? {} : { day: asked.problem.sentence };
  const problems = above({ ...typed?.problems, ...wrong }, evening);
  const inForm = typed !== null && evening.servings.length > 0;
  const props: TonightProps = {
    ...here,
    ...(await writtenOf(house, { day, lines })),
    shell: withWords({ ...here.shell, today: now.today }, inForm ? [] : Object.values(problems)),
    forms: { ...here.forms, refused: typed === null ? null : { ...typed, problems } },
    evening,
    chosen,
    cautions: cautionsOf(here.snapshot, evening),
    moultless: moultlessIn(here.snapshot),
    anybody: here.snapshot.animals.length > 0,
    nextDay: evening.servings.length > 0 ? null : nextDayOf(here.snapshot),
    told: toldOf(here, { query: c.req.query(), lines, moment: now.moment }),
  };
  return page(c, TonightPage(props), statusOf(Object.keys(problems).length > 0));
}

const isMeal = ({ kind }: EveningLine): boolean => kind === 'offered' || kind === 'skipped';

/** The evening without those of whose meal something is written already, each at its place. */
function openRound(snapshot: Snapshot, lines: readonly EveningLine[], evening: Evening): Evening {
  const done = new Set(lines.filter(isMeal).map(({ animal }) => animal));
  const places = new Map(snapshot.animals.map((animal) => [animal.code, placeOf(animal, snapshot)]));
  const placed = <T extends { readonly animal: string }>(rows: readonly T[]) =>
    rows
      .filter(({ animal }) => !done.has(animal))
      .map((row) => ({ ...row, shelf: places.get(row.animal) ?? '' }));
  return { ...evening, servings: placed(evening.servings), withheld: placed(evening.withheld) };
}

/** What to mind with those who eat. */
function cautionsOf(snapshot: Snapshot, { servings }: Evening): TonightProps['cautions'] {
  const eating = new Set(servings.map(({ animal }) => animal));
  const fed = snapshot.animals.filter(({ code }) => eating.has(code));
  return new Map(fed.map((animal) => [animal.code, cautionsFor(animal, snapshot)]));
}

/** Meals of an evening before nobody has told of. */
async function waitingSince(store: Store, upTo: DayNumber): Promise<number> {
  const evening = await store.ask(openEvening(upTo));
  if (evening === null) return 0;
  return (await store.ask(offersOf(evening))).filter(({ outcome }) => outcome === null).length;
}

interface Written {
  readonly day: DayNumber;
  readonly lines: readonly EveningLine[];
}

/** What is written down: of this evening, and of the one before that waits for a word. */
async function writtenOf(
  { context, answering }: House,
  { day, lines }: Written,
): Promise<Pick<TonightProps, 'waiting' | 'used' | 'written' | 'earliest'>> {
  const { today } = context.clock();
  const byBin = new Map<string, number>();
  for (const { bin, heads } of lines)
    if (bin !== null && heads !== null) byBin.set(bin, (byBin.get(bin) ?? 0) + heads);
  const fed = { options: { day, byBin }, answering };
  return {
    waiting: await waitingSince(context.store, today - 1),
    used: byBin.size === 0 ? [] : await askOnce('used', { ...fed, snapshot: await loadSnapshot(context) }),
    written: new Set(lines.filter(isMeal).map(({ animal }) => animal)).size,
    earliest: today - context.facts.policy.roundBackDays.value,
  };
}

const DAYS_AHEAD = 14;

/** The first evening anybody is due, within two weeks. */
function nextDayOf(snapshot: Snapshot): DayNumber | null {
  const ahead = snapshot.animals
    .map((animal) => nextMealOf(snapshot, animal).evening)
    .filter((day) => day !== null && day > snapshot.today && day <= snapshot.today + DAYS_AHEAD);
  return ahead.length === 0 ? null : Math.min(...(ahead as number[]));
}
