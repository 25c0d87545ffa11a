/** Asks a question of the room: the answer kept for this revision and day, else computed and kept. */

import { createHash } from 'node:crypto';
import { factsWith } from '../facts/own/facts-with.ts';
import { type Market, noMarket, tooLateToday } from '../husbandry/orders/index.ts';
import { ok, type Result } from '../husbandry/result.ts';
import type { Facts, Snapshot } from '../husbandry/snapshot.ts';
import { type Keeping, keepAnswer, keptAnswer, lastKept, revision } from '../store/index.ts';
import { timeNow } from './clock.ts';
import type { Context } from './context.ts';
import { bookChanges } from './facts-now.ts';
import { loadSnapshot } from './load-snapshot.ts';
import { marketRows, suppliersAt } from './market.ts';
import { type Answering, type Answers, answerHere, nameOf, type Options, type Subject } from './questions.ts';

/** Raised whenever the core answers otherwise for the same room: answers of another engine are not shown. */
const ENGINE = '12';

export interface Asking<S extends Subject> {
  readonly options: Options[S];
  /** The room asked about; by default as it is today. */
  readonly snapshot?: Snapshot;
  readonly answering?: Answering;
}

/** Of subjects that may be asked without a word. */
export type CoverAsking = Partial<Asking<'sunday' | 'weeks'>>;

export async function ask<S extends Subject>(
  context: Context,
  subject: S,
  { options, snapshot: given, answering = answerHere }: Asking<S>,
): Promise<Result<Answers[S]>> {
  const kept = await askKept(context, subject, { options, ...(given ? { snapshot: given } : {}) });
  if (kept !== null) return ok(kept);
  const snapshot = given ?? (await loadSnapshot(context));
  const keeping = keepingOf(snapshot, subject, options);
  const answer = await answering({ subject, name: keeping.key, snapshot, options });
  if (!answer.ok) return answer;
  const body = JSON.stringify(answer.value);
  const written = await keepAnswer(context.store, { ...keeping, revision: answer.value.revision }, body);
  return written.ok ? ok(JSON.parse(body) as Answers[S]) : answer;
}

/** The answer already kept, or null. */
export async function askKept<S extends Subject>(
  context: Context,
  subject: S,
  { options, snapshot }: Omit<Asking<S>, 'answering'>,
): Promise<Answers[S] | null> {
  const asked = snapshot ?? (await presentOf(context));
  const kept = await context.store.ask(keptAnswer(keepingOf(asked, subject, options)));
  return kept === null ? null : (JSON.parse(kept) as Answers[S]);
}

/** The latest answer kept to a question, whatever has changed since; or null. */
export async function askLast<S extends Subject>(
  { store }: Context,
  subject: S,
  options: Options[S],
): Promise<Answers[S] | null> {
  const kept = await store.ask(lastKept({ key: nameOf(subject, options), engine: `${ENGINE} ` }));
  return kept === null ? null : (JSON.parse(kept) as Answers[S]);
}

interface Present extends Pick<Snapshot, 'facts' | 'today' | 'revision'> {
  readonly market?: Pick<Market, 'suppliers'>;
}

/** What tells one room from another: enough to find a kept answer, without reading the room. */
async function presentOf({ store, facts, clock }: Context): Promise<Present> {
  const found = await store.askAll({ revision, ...bookChanges, suppliers: marketRows.suppliers });
  const now = timeNow(clock());
  return {
    facts: factsWith(facts, found),
    today: now.today,
    revision: found.revision,
    market: { suppliers: suppliersAt(found.suppliers, now) },
  };
}

/** Subjects that ask by when something could be ordered. */
const ORDERING: ReadonlySet<Subject> = new Set<Subject>(['plan', 'bulk', 'box']);

/** One answer is kept a question: of the latest day and the orders it still allows, made by this engine from these facts. */
function keepingOf<S extends Subject>(
  { facts, today, revision: at, market = noMarket }: Present,
  subject: S,
  options: Options[S],
): Keeping {
  const tooLate = ORDERING.has(subject) ? tooLateToday(market.suppliers, today) : [];
  return {
    key: nameOf(subject, options),
    revision: at,
    engine: [ENGINE, markOf(facts), today, ...tooLate].join(' '),
  };
}

const marks = new WeakMap<Facts, string>();
const MARK_LENGTH = 12;

/** A short name of everything the facts say. */
function markOf(facts: Facts): string {
  const known = marks.get(facts);
  if (known !== undefined) return known;
  const said = JSON.stringify([[...facts.kinds], [...facts.species], facts.policy]);
  const mark = createHash('sha256').update(said).digest('hex').slice(0, MARK_LENGTH);
  marks.set(facts, mark);
  return mark;
}
