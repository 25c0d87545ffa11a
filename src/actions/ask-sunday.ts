/** Asks the Sunday question: the answer kept for this revision and day, else computed and kept. */

import { createHash } from 'node:crypto';
import { ok, type Result } from '../husbandry/result.ts';
import type { Facts, Snapshot } from '../husbandry/snapshot.ts';
import { type CoverAnswer, type CoverOptions, sundayCheck } from '../husbandry/supply/index.ts';
import { type Keeping, keepAnswer, keptAnswer, revision } from '../store/index.ts';
import type { Context } from './context.ts';
import { loadSnapshot } from './load-snapshot.ts';

/** Raised whenever the core answers otherwise for the same room: answers of another engine are not shown. */
const ENGINE = '2';

export interface SundayQuestion {
  /** Same question, same name. */
  readonly name: string;
  readonly snapshot: Snapshot;
  readonly options: CoverOptions;
}

/** How an answer is computed: here, or in a worker. */
export type Answering = (question: SundayQuestion) => Promise<Result<CoverAnswer>>;

interface Asking {
  readonly options?: CoverOptions;
  /** The room asked about; by default as it is today. */
  readonly snapshot?: Snapshot;
  readonly answering?: Answering;
}

/** Computes where it is asked. */
export const answerHere: Answering = async ({ snapshot, options }) => ok(sundayCheck(snapshot, options));

export async function askSunday(
  context: Context,
  { options = {}, snapshot: given, answering = answerHere }: Asking = {},
): Promise<Result<CoverAnswer>> {
  const asked = given ?? (await presentOf(context));
  const kept = await context.store.ask(keptAnswer(keepingOf(asked, options)));
  if (kept !== null) return ok(JSON.parse(kept) as CoverAnswer);
  const snapshot = given ?? (await loadSnapshot(context));
  const keeping = keepingOf(snapshot, options);
  const { key: name } = keeping;
  const answer = await answering({ name, snapshot, options });
  if (!answer.ok) return answer;
  const body = JSON.stringify(answer.value);
  const written = await keepAnswer(context.store, { ...keeping, revision: answer.value.revision }, body);
  return written.ok ? ok(JSON.parse(body) as CoverAnswer) : answer;
}

type Present = Pick<Snapshot, 'facts' | 'today' | 'revision'>;

/** What tells one room from another: enough to find a kept answer, without reading the room. */
const presentOf = async ({ store, facts, clock }: Context): Promise<Present> => ({
  facts,
  today: clock().today,
  revision: await store.ask(revision),
});

const nameOf = ({ days, replicates, cut, stretchRobust = false }: CoverOptions): string =>
  JSON.stringify(['sunday', days ?? null, replicates ?? null, [...(cut ?? [])].sort(), stretchRobust]);

/** One answer is kept a question: of the latest day, made by this engine from these facts. */
const keepingOf = ({ facts, today, revision: at }: Present, options: CoverOptions): Keeping => ({
  key: nameOf(options),
  revision: at,
  engine: `${ENGINE} ${markOf(facts)} ${today}`,
});

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
