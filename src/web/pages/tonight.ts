/** The round's page: who eats on an evening, what is written down of it, and what it used. */
import type { Context, Hono } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { Shell } from '../../../views/layout.tsx';
import { TonightPage, type TonightProps } from '../../../views/pages/tonight.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { loadSnapshot } from '../../actions/index.ts';
import type { Animal } from '../../husbandry/animals/index.ts';
import type { Evening } from '../../husbandry/appetite/index.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { eveningOf, nextMealOf, usedBins } from '../../husbandry/supply/index.ts';
import { type EveningLine, eveningLines, offersOf, openEvening, type Store } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { nearsMoult, placeOf } from './meals.ts';
import { valuesIn } from './posted.ts';
import { recordRound } from './round.ts';
import { eveningAsked } from './round-day.ts';
import { chosenBins, preferredBins } from './round-shelves.ts';
import { toldOf } from './round-told.ts';
import { page, visit } from './visit.ts';

export function tonightRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.tonight, (c) => showTonight(house, c));
  app.post(paths.tonight, (c) =>
    recordRound(house, c, (refused) => showTonight(house, c, { ...refused, problems: above(refused) })),
  );
  app.post(paths.tonightPreview, async (c) =>
    showTonight(house, c, { form: 'round', values: await valuesIn(c), problems: {} }),
  );
}

/** The evening has no field of its own in the form: what is wrong with it is said above. */
function above({ problems: { day, ...others } }: Refused): Refused['problems'] {
  return day === undefined ? others : { ...others, '': day };
}

async function showTonight(house: House, c: Context, typed: Refused | null = null): Promise<Response> {
  const { store, clock, facts } = house.context;
  const now = clock();
  const asked = eveningAsked(typed?.values.day ?? c.req.query('day'), { today: now.today, facts });
  const day = asked.ok ? asked.value : now.today;
  const here = await visit(house, c, { refused: typed, day });
  const lines = await store.ask(eveningLines(day));
  const prefer = preferredBins(here.snapshot, chosenBins(typed?.values ?? c.req.query()));
  const evening = openRound(here.snapshot, lines, eveningOf(here.snapshot, { prefer }));
  const problems = asked.ok ? (typed?.problems ?? {}) : { ...typed?.problems, day: asked.problem.sentence };
  const said = evening.servings.length === 0 || !asked.ok ? [...new Set(Object.values(problems))] : [];
  const props: TonightProps = {
    ...here,
    shell: withWords({ ...here.shell, today: now.today }, said),
    evening,
    chosen: chosenBins(typed?.values ?? c.req.query()),
    cautions: cautionsOf(here.snapshot, evening),
    waiting: await waitingSince(store, now.today - 1),
    anybody: here.snapshot.animals.length > 0,
    nextDay: evening.servings.length > 0 ? null : nextDayOf(here.snapshot),
    told: toldOf(here, { query: c.req.query(), lines, moment: now.moment }),
    used: await usedOf(house, { day, lines }),
    written: new Set(lines.filter(isMeal).map(({ animal }) => animal)).size,
    earliest: now.today - facts.policy.roundBackDays.value,
  };
  return page(c, TonightPage(props), statusOf(problems));
}

const statusOf = (problems: Refused['problems']): ContentfulStatusCode =>
  Object.keys(problems).length === 0 ? 200 : 422;

/** Where no form is left to say it above, what was wrong is said by the frame. */
function withWords(shell: Shell, sentences: readonly string[]): Shell {
  const words = sentences.map((text) => ({ kind: 'problem' as const, text }));
  return { ...shell, flash: [...shell.flash, ...words] };
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

/** Cautions of the kinds that eat; live prey near a moult only where one is near. */
function cautionsOf(snapshot: Snapshot, { servings }: Evening): TonightProps['cautions'] {
  const eating = new Set(servings.map(({ animal }) => animal));
  const of = (animal: Animal) => {
    const codes = snapshot.facts.kinds.get(animal.kind)?.cautions ?? [];
    return codes.filter((code) => code !== 'live prey near a moult' || nearsMoult(animal, snapshot));
  };
  return new Map(
    snapshot.animals.filter(({ code }) => eating.has(code)).map((animal) => [animal.code, of(animal)]),
  );
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

/** What an evening took out of the bins, as they stand now. */
async function usedOf({ context }: House, { day, lines }: Written): Promise<TonightProps['used']> {
  const byBin = new Map<string, number>();
  for (const { bin, heads } of lines)
    if (bin !== null && heads !== null) byBin.set(bin, (byBin.get(bin) ?? 0) + heads);
  return byBin.size === 0 ? [] : usedBins(await loadSnapshot(context), { day, byBin });
}

const DAYS_AHEAD = 14;

/** The first evening anybody is due, within two weeks. */
function nextDayOf(snapshot: Snapshot): DayNumber | null {
  const ahead = snapshot.animals
    .map((animal) => nextMealOf(snapshot, animal).evening)
    .filter((day) => day !== null && day > snapshot.today && day <= snapshot.today + DAYS_AHEAD);
  return ahead.length === 0 ? null : Math.min(...(ahead as number[]));
}
