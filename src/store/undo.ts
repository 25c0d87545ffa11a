/** Undo: voids an act and puts back what it changed, unless something newer stands on it. */
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type Act, type ActMark, addAct, type Change, changesOf, type Drops, type Puts } from './acts.ts';
import { type Noun, nameOf, nouns } from './nouns.ts';
import type { Tx } from './query.ts';
import { rowsNamed } from './rows.ts';
import { isStillNamed } from './trouble.ts';
import { standsInTheWay } from './undo-obstacles.ts';

/** Undoes one act as a new act, and returns the new act's number. Undoing an undo does it again. */
export async function undoAct(tx: Tx, target: Act, mark: ActMark): Promise<Result<number>> {
  if (target.voidedAt !== null)
    return err(problem('already-undone', `"${target.summary}" has been undone already.`));
  const changes = await tx.ask(changesOf(target.id));
  const obstacle = (await standsInTheWay(tx, target, changes)) ?? (await movedOn(tx, target, changes));
  if (obstacle !== null) return err(obstacle);
  return putBack(tx, { target, changes, mark });
}

interface Undoing {
  readonly target: Act;
  readonly changes: readonly Change[];
  readonly mark: ActMark;
}

async function putBack(tx: Tx, { target, changes, mark }: Undoing): Promise<Result<number>> {
  try {
    const id = await addAct(tx, mark, {
      summary: target.undoes === null ? `Undid: ${target.summary}` : `Did again: ${againOf(target)}`,
      undoes: target.id,
      ...reversed(changes),
    });
    await mute(tx, target.id, mark.moment);
    if (target.undoes !== null) await mute(tx, target.undoes, null);
    return ok(id);
  } catch (error) {
    if (!isStillNamed(error)) throw error;
    return err(
      problem(
        'still-needed',
        `"${target.summary}" cannot be undone: something in it is still used elsewhere.`,
      ),
    );
  }
}

const againOf = (undo: Act): string => undo.summary.replace(/^Undid: /, '');

/** Voids an act and its entries at a moment, or lets them count again. */
async function mute(tx: Tx, act: number, moment: string | null): Promise<void> {
  await tx.run('update act set voided_at = ? where id = ?', [moment, act]);
  await tx.run('update entry set voided = ? where act = ?', [moment === null ? 0 : 1, act]);
}

/** The puts and drops that lead from after back to before. */
function reversed(changes: readonly Change[]): { readonly puts: Puts; readonly drops: Drops } {
  const of = (noun: Noun): readonly Change[] => changes.filter((change) => change.noun === noun);
  const puts = nouns.map((noun) => [noun, of(noun).flatMap(({ before }) => before ?? [])]);
  const drops = nouns.map((noun) => [noun, of(noun).flatMap(({ before, code }) => (before ? [] : code))]);
  return { puts: Object.fromEntries(puts), drops: Object.fromEntries(drops) };
}

/** A row that is not as the act left it, as a Problem; null when all are. */
async function movedOn(tx: Tx, target: Act, changes: readonly Change[]): Promise<Problem | null> {
  for (const noun of new Set(changes.map((change) => change.noun))) {
    const own = changes.filter((change) => change.noun === noun);
    const now = await tx.ask(
      rowsNamed(
        noun,
        own.map(({ code }) => code),
      ),
    );
    const byName = new Map(now.map((row) => [nameOf(row), row]));
    const moved = own.find(
      ({ code, after }) => JSON.stringify(byName.get(code) ?? null) !== JSON.stringify(after),
    );
    if (moved !== undefined)
      return problem(
        'changed-since',
        `"${target.summary}" cannot be undone: ${moved.code} is no longer as that left it.`,
      );
  }
  return null;
}
