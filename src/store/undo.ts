/** Undo: voids acts and puts back what they changed, unless something newer rests on them; and does them again. */
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type Act, type ActMark, actNumbered, actsNumbered, addAct, type Change } from './acts.ts';
import { type Noun, nameOf, nouns, type Rows } from './nouns.ts';
import type { Tx } from './query.ts';
import { inTheWay } from './rests-on.ts';
import { rowsNamed } from './rows.ts';
import { isStillNamed } from './trouble.ts';
import { changesOf, groundGone, inOrder, placeGone, subjectsOf, turn } from './turns.ts';

/** Undoes one act as a new act, and returns the new act's number. Undoing an undo does its acts again. */
export async function undoAct(tx: Tx, target: Act, mark: ActMark): Promise<Result<number>> {
  const { acts, turns } = await tx.ask(subjectsOf(target.id));
  if (target.voidedAt !== null) return err(alreadyUndone(target));
  if (turns === 0) return undoTogether(tx, [target], { ...mark, said: target.summary });
  const on = turns % 2 === 1;
  const step = { target, subjects: acts, on, mark, said: saidOf(target) };
  const changes = await tx.ask(changesOf([target.id]));
  const blocked = on ? null : await obstacle(tx, target.summary, acts);
  return blocked === null ? takeStep(tx, step, changes) : err(blocked);
}

/** What was undone or done again. */
const saidOf = ({ summary }: Act): string => summary.slice(summary.indexOf(': ') + 2);

/** Undoes acts of the keeper as one step, all or none; `said` tells them in a few words. */
export async function undoTogether(
  tx: Tx,
  targets: readonly Act[],
  { said, ...mark }: ActMark & { readonly said: string },
): Promise<Result<number>> {
  const gone = targets.find(({ voidedAt }) => voidedAt !== null);
  if (gone !== undefined) return err(alreadyUndone(gone));
  const subjects = await tx.ask(inOrder(targets.map(({ id }) => id)));
  const blocked = await obstacle(tx, said, subjects);
  if (blocked !== null) return err(blocked);
  const target = targets.find(({ id }) => id === subjects[0])!;
  return takeStep(tx, { target, subjects, on: false, mark, said }, await tx.ask(changesOf(subjects)));
}

const alreadyUndone = ({ summary }: Act): Problem =>
  problem('already-undone', `"${summary}" has been undone already.`);

async function obstacle(tx: Tx, said: string, acts: readonly number[]): Promise<Problem | null> {
  const newer = await inTheWay(tx.ask, acts);
  if (newer === null) return null;
  const summary = (await tx.ask(actNumbered(newer)))?.summary;
  return problem(
    'newer-stands',
    `"${said}" cannot be undone yet: "${summary}" came later and rests on it. Undo that first.`,
  );
}

const UNDID = 'Undid';
const DID_AGAIN = 'Did again';

/** Whether an act undid others, as against doing something or doing it again. */
export const isUndo = ({ undoes, summary }: Act): boolean => undoes !== null && summary.startsWith(UNDID);

interface Step {
  readonly target: Act;
  readonly subjects: readonly number[];
  /** Whether the subjects count afterwards. */
  readonly on: boolean;
  readonly mark: ActMark;
  readonly said: string;
}

async function takeStep(tx: Tx, step: Step, done: readonly Change[]): Promise<Result<number>> {
  const { target, subjects, on, mark, said } = step;
  const changes = netOf(done);
  const moved = await movedOn(tx, said, on ? [...changes, ...(await startOf(tx, subjects))] : changes);
  if (moved !== null) return err(moved);
  try {
    const summary = `${on ? DID_AGAIN : UNDID}: ${said}`;
    const act = await addAct(tx, mark, { summary, undoes: target.id, ...reversed(changes) });
    if (target.undoes !== null)
      await tx.run('update act set voided_at = ? where id = ?', [mark.moment, target.id]);
    await turn(tx, { act, subjects, on, moment: mark.moment });
    if (await tx.ask(placeGone(changes.map(({ code }) => code)))) return err(placeIsGone(said, on));
    return on && (await tx.ask(groundGone(subjects))) ? err(gone(said)) : ok(act);
  } catch (error) {
    if (!isStillNamed(error)) throw error;
    return err(on ? gone(said) : stillNeeded(said));
  }
}

const gone = (said: string): Problem =>
  problem('ground-gone', `"${said}" cannot be done again: something it speaks of is no longer here.`);
const placeIsGone = (said: string, on: boolean): Problem =>
  problem(
    'place-gone',
    `"${said}" cannot be ${on ? 'done again' : 'undone'}: the room, bin or kind it needs was removed. Bring that back first.`,
  );
const stillNeeded = (said: string): Problem =>
  problem('still-needed', `"${said}" cannot be undone: something in it is still used elsewhere.`);

/** The rows that acts began from: what is done again must find them, also where all the acts together change nothing. */
async function startOf(tx: Tx, acts: readonly number[]): Promise<readonly Change[]> {
  const net = netOf(await tx.ask(changesOf(acts)));
  return net.map((change) => ({ ...change, after: change.before }));
}

/** One change a row: from as it was before the first to as it was after the last. */
function netOf(changes: readonly Change[]): readonly Change[] {
  const net = new Map<string, Change>();
  for (const change of changes) {
    const key = `${change.noun} ${change.code}`;
    net.set(key, { ...change, before: (net.get(key) ?? change).before });
  }
  return [...net.values()];
}

/** The puts and drops that lead from after back to before. */
function reversed(changes: readonly Change[]) {
  const of = (noun: Noun): readonly Change[] => changes.filter((change) => change.noun === noun);
  const puts = nouns.map((noun) => [noun, of(noun).flatMap(({ before }) => before ?? [])]);
  const drops = nouns.map((noun) => [noun, of(noun).flatMap(({ before, code }) => (before ? [] : code))]);
  return { puts: Object.fromEntries(puts), drops: Object.fromEntries(drops) };
}

/** A row that is not as it was left, as a Problem; null when all are. */
async function movedOn(tx: Tx, said: string, changes: readonly Change[]): Promise<Problem | null> {
  for (const noun of new Set(changes.map((change) => change.noun))) {
    const own = changes.filter((change) => change.noun === noun);
    const now = await tx.ask(
      rowsNamed(
        noun,
        own.map(({ code }) => code),
      ),
    );
    const byName = new Map(now.map((row) => [nameOf(row), row]));
    const moved = own.find(({ code, after }) => !isSame(byName.get(code) ?? null, after));
    if (moved !== undefined)
      return problem(
        'changed-since',
        `"${said}" cannot be undone: ${moved.code} is no longer as that left it.`,
      );
  }
  return null;
}

const isSame = (now: Rows[Noun] | null, left: Rows[Noun] | null): boolean =>
  JSON.stringify(now) === JSON.stringify(left);

/** Acts of these numbers, all of which must be there and be the keeper's own doing. */
export async function actsToUndo(tx: Tx, ids: readonly number[]): Promise<Result<readonly Act[]>> {
  const found = await tx.ask(actsNumbered(ids));
  const unknown = ids.find((id) => !found.some((act) => act.id === id));
  if (unknown !== undefined) return err(problem('unknown-act', `There is no act ${unknown}.`, 'acts'));
  const undo = found.find(({ undoes }) => undoes !== null);
  return undo === undefined
    ? ok(found)
    : err(problem('an-undo', `"${undo.summary}" is itself an undo.`, 'acts'));
}
