/** What is done with a kind of the Book: a rule or the kind changed, tried, renamed, reset, removed. */

import type { Context, Hono } from 'hono';
import type { z } from 'zod';
import type { Refused } from '../../../views/partials/form.tsx';
import { type KindAct, paths } from '../../../views/paths.ts';
import {
  editKind,
  editRule,
  factsNow,
  removeKind,
  renameKind,
  resetRule,
  type Tried,
  tryKind,
  tryRule,
} from '../../actions/index.ts';
import type { Kind } from '../../husbandry/animals/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, type Result } from '../../husbandry/result.ts';
import { settings } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { type KindTyped, kindGiven, kindShape, type RuleTyped, ruleGiven, ruleShape } from './kind-forms.ts';
import type { Showing } from './kind-stages.ts';
import { posted, readForm } from './posted.ts';
import { codeOf, route } from './route.ts';
import { besideField } from './sent-fields.ts';
import { anyText, needed, revision } from './typed.ts';
import { unitOf } from './visit.ts';

type Show = (c: Context, showing: Showing) => Promise<Response>;
const MANY = ['accepts'];
const at = (act: KindAct): string => route(paths.kindAct(':code', act));

/** What every form of the page shares. */
const onKind = (show: Show, form: string) => ({
  form: () => form,
  next: (c: Context) => paths.kind(codeOf(c)),
  again: (c: Context, refused: Refused) => show(c, { refused, wrong: Object.values(refused.problems) }),
});

export function kindActRoutes(app: Hono<DoorEnv>, house: House, show: Show): void {
  numberRoutes(app, house, show);
  nameRoutes(app, house, show);
}

/** Figures changed, tried and reset. */
function numberRoutes(app: Hono<DoorEnv>, house: House, show: Show): void {
  const { context } = house;
  app.post(
    at('rule'),
    posted(house, {
      ...onKind(show, 'rule'),
      many: MANY,
      shape: () => ruleShape,
      act: async (given, { c, formId }) => editRule(context, { ...(await ruleOf(house, c, given)), formId }),
    }),
  );
  app.post(at('rule-effect'), (c) => tryingRule(house, c, show));
  app.post(
    at('edit'),
    posted(house, {
      ...onKind(show, 'kind'),
      shape: kindShape,
      act: (given, { c, unit, formId }) =>
        withKind(house, c, (kind) => editKind(context, { ...kindGiven(kind, given, unit), formId })),
    }),
  );
  app.post(at('edit-effect'), (c) => tryingKind(house, c, show));
  app.post(
    at('reset'),
    posted(house, {
      ...onKind(show, 'reset-all'),
      shape: () => ({ stage: anyText, field: anyText, asOf: revision }),
      act: (given, { c, formId }) => resetRule(context, { ...given, kind: codeOf(c), formId }),
    }),
  );
}

/** Another name, and a kind of one's own away. */
function nameRoutes(app: Hono<DoorEnv>, house: House, show: Show): void {
  const { context } = house;
  app.post(
    at('rename'),
    posted(house, {
      ...onKind(show, 'rename'),
      shape: () => ({ name: needed, commonName: needed, why: anyText, asOf: revision }),
      act: (given, { c, formId }) => renameKind(context, { ...given, kind: codeOf(c), formId }),
    }),
  );
  app.post(
    at('remove'),
    posted(house, {
      ...onKind(show, 'remove'),
      next: () => paths.book,
      shape: () => ({ asOf: revision }),
      act: (given, { c, formId }) => removeKind(context, { ...given, kind: codeOf(c), formId }),
    }),
  );
}

async function ruleOf({ context }: House, c: Context, given: RuleTyped) {
  const kind = (await factsNow(context)).kinds.get(codeOf(c));
  const rule = kind?.stages.find(({ stage }) => stage === given.stage);
  return ruleGiven(codeOf(c), given, rule) as Parameters<typeof editRule>[1];
}

async function withKind<T>(
  { context }: House,
  c: Context,
  use: (kind: Kind) => Promise<Result<T>>,
): Promise<Result<T>> {
  const kind = (await factsNow(context)).kinds.get(codeOf(c));
  return kind === undefined
    ? err(problem('unknown-kind', `"${codeOf(c)}" is not a kind of animal in the Book.`))
    : use(kind);
}

async function tryingRule(house: House, c: Context, show: Show): Promise<Response> {
  const { given, ...form } = await readForm(house, c, { shape: ruleShape, many: MANY });
  const tried = given === null ? null : await tryRule(house.context, await ruleOf(house, c, given));
  return shown(c, show, { form: 'rule', shape: ruleShape, ...form, tried });
}

async function tryingKind(house: House, c: Context, show: Show): Promise<Response> {
  const unit = unitOf(await house.context.store.ask(settings));
  const shape = kindShape(unit);
  const { given, ...form } = await readForm(house, c, { shape });
  const tried =
    given === null
      ? null
      : await withKind(house, c, (kind) => tryKind(house.context, kindGiven(kind, given as KindTyped, unit)));
  return shown(c, show, { form: 'kind', shape, ...form, tried });
}

interface Looked extends Refused {
  readonly shape: z.ZodRawShape;
  /** Null where what was typed could not be read. */
  readonly tried: Result<Tried> | null;
}

/** The form as it was typed, with what it would do or why it cannot. */
function shown(c: Context, show: Show, { form, values, problems, shape, tried }: Looked): Promise<Response> {
  const wrong = tried !== null && !tried.ok ? besideField(tried.problem, shape) : problems;
  const refused = { form, values, problems: wrong };
  return show(c, {
    refused,
    tried: tried?.ok ? tried.value : undefined,
    wrong: Object.values(wrong),
    looked: true,
  });
}
