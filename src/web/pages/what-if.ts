/** What ifs: the address holds all that is supposed; plans are made one after the other and compared as they come. */
import { setTimeout as pause } from 'node:timers/promises';
import type { Context, Hono } from 'hono';
import { ProgressPart } from '../../../views/pages/plan-working.tsx';
import { WhatIfPage, WhatIfPart, type WhatIfShown } from '../../../views/pages/what-if.tsx';
import { MOST_IFS, type Supposing } from '../../../views/pages/what-if-forms.tsx';
import { paths } from '../../../views/paths.ts';
import { type WhatIfAsked, whatIfAt } from '../../../views/plan-address.ts';
import { planName } from '../../actions/index.ts';
import { settings } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { binOptions, kindOptions } from './choices.ts';
import type { House } from './house.ts';
import { weeksIn } from './plan-asked.ts';
import { NEWS_AFTER_MS, queryIn } from './plan-page.ts';
import { valuesIn } from './posted.ts';
import type { Typed } from './sent-fields.ts';
import { marketIn } from './supplier-views.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';
import {
  allAnswers,
  beside,
  keptAnswers,
  planOf,
  questionsOf,
  seenIn,
  shownOf,
  workingOf,
} from './what-if-answers.ts';
import { ifsIn, isSupposable, supposedFrom } from './what-if-asked.ts';
import { offerOptions, supplierOptions } from './what-if-choices.ts';

export function whatIfRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.whatIf, (c) => showWhatIf(house, c));
  app.get(paths.whatIfAnswers, (c) => showAnswers(house, c));
  app.post(paths.whatIfCancel, (c) => cancelWhatIf(house, c));
}

interface Asked {
  readonly asked: WhatIfAsked;
  readonly problems: readonly string[];
}

async function askedIn({ context }: House, { snapshot }: Visit, query: URLSearchParams): Promise<Asked> {
  const { planWeeks } = await context.store.ask(settings);
  const weeks = weeksIn(query.get('weeks'), planWeeks);
  const { ifs, problems } = ifsIn(query, snapshot);
  return {
    asked: { weeks: weeks.ok ? weeks.weeks : planWeeks, ifs },
    problems: [...(weeks.ok ? [] : [weeks.sentence]), ...problems],
  };
}

async function showWhatIf(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const query = queryIn(c);
  const { asked, problems } = await askedIn(house, here, query);
  const added = addedIn(query, asked, here);
  if (added.next !== null) return c.redirect(whatIfAt(added.next), 303);
  const waits = query.has('wait');
  const answers = waits ? await allAnswers(house, here, asked) : await keptAnswers(house, here, asked);
  const shown = shownOf(house, here, { asked, ...answers, rests: query.has('rest') || waits });
  const isWrong = problems.length > 0 || added.supposing.what !== null;
  const props = { shell: here.shell, shown, problems, supposing: added.supposing, choices: choicesIn(here) };
  return page(c, WhatIfPage(props), statusOf(isWrong));
}

const choicesIn = (here: Visit) => ({
  kinds: kindsHere(here),
  suppliers: supplierOptions(marketIn(here.snapshot)),
  bins: binOptions(here.snapshot.bins),
  offers: offerOptions(marketIn(here.snapshot), here.names),
});

/** Kinds that live here first. */
function kindsHere({ snapshot: { animals, facts } }: Visit) {
  const here = new Set(animals.map(({ kind }) => kind));
  const all = kindOptions(facts);
  const living = all
    .filter(({ value }) => here.has(value))
    .map((option) => ({ ...option, group: 'Live here' }));
  return [...living, ...all.filter(({ value }) => !here.has(value))];
}

const NOTHING: Supposing = { what: null, values: {}, problems: {} };

const byName = (query: URLSearchParams): Typed =>
  Object.fromEntries([...query.keys()].map((name) => [name, query.getAll(name)]));

interface Added {
  /** With what the form added; null where it added nothing, or nothing that can be. */
  readonly next: WhatIfAsked | null;
  readonly supposing: Supposing;
}

/** What a form of the page adds to its address. */
function addedIn(query: URLSearchParams, asked: WhatIfAsked, { snapshot }: Visit): Added {
  const what = query.get('add');
  if (!isSupposable(what)) return { next: null, supposing: NOTHING };
  const { weeks: _, if: _ifs, add: _add, with: beside = [], ...fields } = byName(query);
  const column = beside[0] === undefined || beside[0] === '' ? asked.ifs.length : Number(beside[0]);
  const read = supposedFrom(what, fields, { snapshot, together: asked.ifs[column] ?? [] });
  const values = Object.fromEntries(Object.entries(fields).map(([name, [value = '']]) => [name, value]));
  if (!read.ok) return { next: null, supposing: { what, values, problems: read.problems } };
  if (column >= MOST_IFS || Number.isNaN(column))
    return {
      next: null,
      supposing: {
        what,
        values,
        problems: { with: `At most ${MOST_IFS} stand side by side; put it together with one of them.` },
      },
    };
  const ifs =
    column < asked.ifs.length
      ? asked.ifs.map((together, i) => (i === column ? [...together, read.supposed] : together))
      : [...asked.ifs, [read.supposed]];
  return { next: { ...asked, ifs }, supposing: NOTHING };
}

/** How far the next plan is; once one more is there, or cannot be, the whole part of the page. */
async function showAnswers(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const query = queryIn(c);
  const { asked } = await askedIn(house, here, query);
  const kept = await keptAnswers(house, here, asked);
  const next = questionsOf(asked)[kept.answers.indexOf(null)];
  if (next === undefined || seenIn(kept.answers) > Number(query.get('seen') ?? 0))
    return partOf(c, shownOf(house, here, { asked, ...kept, rests: false }));
  const plan = await Promise.race([
    planOf(house, here, beside(next, kept.answers[0] ?? null)),
    pause(NEWS_AFTER_MS, null),
  ]);
  if (plan === null) {
    const working = workingOf(house, here, { asked, answers: kept.answers });
    return page(c, String(ProgressPart({ working })));
  }
  const { answers } = await keptAnswers(house, here, asked);
  const problem = plan.ok ? null : plan.problem;
  return partOf(c, shownOf(house, here, { asked, answers, problem, rests: false }));
}

function partOf(c: Context, shown: WhatIfShown): Response | Promise<Response> {
  c.header('HX-Retarget', '#what-ifs');
  return page(c, String(WhatIfPart({ shown })));
}

async function cancelWhatIf(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { asked: typed = '' } = await valuesIn(c);
  const { asked } = await askedIn(house, here, new URLSearchParams(typed));
  for (const question of questionsOf(asked)) house.underWay.cancel(planName(question));
  return c.redirect(`${whatIfAt(asked)}&rest=1`, 303);
}
