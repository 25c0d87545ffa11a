/** One kind of the Book: its page, its forms, and what a change would do before it is saved. */

import type { Context, Hono } from 'hono';
import { KindPage, type KindProps } from '../../../views/pages/kind.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { NOTHING_CHANGED } from '../../husbandry/animals/index.ts';
import { actsChanging, rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { latestLines } from './history.ts';
import type { House } from './house.ts';
import { kindActRoutes } from './kind-acts.ts';
import { effectOf } from './kind-effect.ts';
import { kindShown } from './kind-forms.ts';
import { kindLines } from './kind-numbers.ts';
import { ledeOf, ruleForm, type Showing, stageViews } from './kind-stages.ts';
import { codeOf, route } from './route.ts';
import { page, statusOf, visit } from './visit.ts';

export function kindRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(route(paths.kind(':code')), (c) => showKind(house, c));
  kindActRoutes(app, house, (c, showing) => showKind(house, c, showing));
}

/** The page; with a form refused or only tried, as it was typed. */
async function showKind(
  house: House,
  c: Context,
  { refused = null, tried, wrong, looked = false }: Showing = {},
) {
  const here = await visit(house, c, { refused });
  const code = codeOf(c);
  const kind = here.snapshot.facts.kinds.get(code);
  if (kind === undefined) return c.notFound();
  const { store, facts } = house.context;
  const found = await store.askAll({ row: rowNamed('kind', code), acts: actsChanging('kind', code) });
  const book = facts.kinds.get(kind.madeFrom ?? code) ?? kind;
  const changes = found.row?.changes ?? NOTHING_CHANGED;
  const { revision, animals } = here.snapshot;
  const desk = { here, kind, book, changes, tried: tried ?? { before: here.snapshot, after: here.snapshot } };
  const props: KindProps = {
    ...here,
    revision,
    code,
    name: kind.name,
    commonName: kind.commonName,
    group: kind.group,
    madeFrom: kind.madeFrom === undefined ? null : { code: book.code, name: book.name },
    lede: ledeOf(desk),
    cautions: kind.cautions,
    stages: stageViews(desk),
    whole: kindLines(kind, book, changes),
    animals: animals
      .filter((animal) => animal.kind === code)
      .map((animal) => ({ code: animal.code, name: here.names.animals.get(animal.code) ?? animal.code })),
    open: openForm(desk, { what: refused?.values.stage ?? formOpen(c, refused), wrong }),
    history: latestLines(found.acts, here.names),
  };
  return page(c, KindPage(props), statusOf(refused !== null && !looked));
}

/** The form asked for, or the one that was refused. */
const formOpen = (c: Context, refused: Refused | null): string =>
  refused?.form === 'kind' ? 'kind' : (c.req.query('change') ?? '');

type Desk = Parameters<typeof stageViews>[0];

function openForm(desk: Desk, { what, wrong }: { what: string; wrong: Showing['wrong'] }): KindProps['open'] {
  if (what === 'kind') return { what: 'kind', form: wholeForm(desk, wrong) };
  const rule = desk.kind.stages.find(({ stage }) => stage === what);
  return rule === undefined
    ? null
    : { what: 'rule', word: rule.words[0] ?? rule.stage, form: ruleForm(desk, rule, wrong) };
}

const wholeForm = ({ here, kind, tried }: Desk, wrong: Showing['wrong']) => ({
  forms: here.forms,
  unit: here.unit,
  code: kind.code,
  revision: here.snapshot.revision,
  figures: kindShown(kind, here.unit),
  hasMale: kind.bodyPerGaugeMale !== null,
  effect: effectOf(here, tried, { kind, stage: null, wrong: wrong ?? [] }),
});
