/** One prey species of the Book: what to mind, its numbers with what other works say, and how well they foretell. */
import type { Context, Hono } from 'hono';
import { type PreyCautionLine, PreyPage } from '../../../views/pages/prey.tsx';
import { paths } from '../../../views/paths.ts';
import { sourceWords } from '../../facts/source-words.ts';
import { leaveOneOut, type PreySpecies } from '../../husbandry/prey/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { preyLines } from './prey-numbers.ts';
import { codeOf, route } from './route.ts';
import { othersOf } from './source-line.ts';
import { page, visit } from './visit.ts';

export function preyRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(route(paths.prey(':code')), (c) => showPrey(house, c));
}

async function showPrey(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { species: all, policy } = here.snapshot.facts;
  const species = all.get(codeOf(c));
  if (species === undefined) return c.notFound();
  const { name, commonName, notes } = species;
  const props = {
    shell: here.shell,
    name,
    commonName,
    cautions: cautionLines(species),
    notes,
    groups: preyLines(species, here.unit),
    leftOut: leaveOneOut(species, policy.leaveOneOutPoints.value),
  };
  return page(c, PreyPage(props));
}

const cautionLines = ({ cautions = [] }: PreySpecies): readonly PreyCautionLine[] =>
  cautions.map(({ text }) => ({
    text: text.value,
    source: sourceWords(text),
    others: othersOf(text),
  }));
