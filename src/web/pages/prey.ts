/** One prey species of the Book: what it does at a temperature, its numbers, and how well they foretell. */
import type { Context, Hono } from 'hono';
import { type PreyCautionLine, PreyPage, type PreyProps } from '../../../views/pages/prey.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { sourceWords } from '../../facts/source-words.ts';
import { speciesSheet } from '../../husbandry/larder/index.ts';
import { leaveOneOut, meanOfDay, type PreySpecies } from '../../husbandry/prey/index.ts';
import { binClimate } from '../../husbandry/rooms.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import type { TempC } from '../../husbandry/units.ts';
import { readTemperature } from '../../intake/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { numberRoutes, numbersShown } from './number-acts.ts';
import { codeOf, route } from './route.ts';
import { othersOf } from './source-line.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

const at = { codeOf, page: paths.prey, act: paths.preyAct };

export function preyRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(route(paths.prey(':code')), (c) => showPrey(house, c));
  numberRoutes(app, house, { ...at, again: (c, refused) => showPrey(house, c, refused) });
}

async function showPrey(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { species: all, policy } = here.snapshot.facts;
  const code = codeOf(c);
  const species = all.get(code);
  if (species === undefined) return c.notFound();
  const { name, commonName, notes } = species;
  const open = refused?.values.group ?? c.req.query('change') ?? '';
  const props: PreyProps = {
    ...here,
    code,
    name,
    commonName,
    cautions: cautionLines(species),
    notes,
    ...(await numbersShown(house, here, { code, open, at })),
    ...sheetAsked(here, species, c.req.query('at') ?? ''),
    leftOut: leaveOneOut(species, policy.leaveOneOutPoints.value),
  };
  return page(c, PreyPage(props), statusOf(refused !== null));
}

/** What it does at the temperature asked for; where none is asked, or none that can be read, at its own place here. */
function sheetAsked(
  { snapshot, unit }: Visit,
  species: PreySpecies,
  asked: string,
): Pick<PreyProps, 'sheet' | 'asked'> {
  const read = asked.trim() === '' ? null : readTemperature(asked, unit === 'mm' ? 'C' : null);
  const tempC = read?.ok ? read.value : placeOf(snapshot, species);
  return {
    sheet: speciesSheet(species, tempC),
    asked:
      read === null
        ? { typed: `${tempC} °C`, problem: null }
        : { typed: asked, problem: read.ok ? null : read.problem.sentence },
  };
}

/** Where nobody keeps it: a warm shelf. */
const WARM_SHELF_C = 28;

/** The mean temperature of today in the first bin it lives in. */
function placeOf(snapshot: Snapshot, { code }: PreySpecies): TempC {
  const bin = snapshot.bins.find(({ species, role }) => species === code && role !== 'frozen');
  if (bin === undefined) return WARM_SHELF_C;
  return Math.round(meanOfDay(binClimate(snapshot, bin).on(snapshot.today)));
}

const cautionLines = ({ cautions = [] }: PreySpecies): readonly PreyCautionLine[] =>
  cautions.map(({ text }) => ({
    text: text.value,
    source: sourceWords(text),
    others: othersOf(text),
  }));
