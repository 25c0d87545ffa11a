/**
 * Many random sequences of every act, undo and doing-again: `npx tsx tests/proof/undo.ts [sequences] [--keep]`;
 * --keep writes what was seen to tests/proof/results/undo.md.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setImmediate as breathe } from 'node:timers/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { openStore, type Store } from '../../src/store/index.ts';
import { facts, policyWith } from '../support/room.ts';
import { roomOn } from '../support/room-clock.ts';
import { DRAWN, emptyTally, runSequence } from '../support/sequences/run.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const SEQUENCES = Number(process.argv.find((word) => /^\d+$/.test(word)) ?? 10_000);
const A_STORE_SERVES = 500;
const IN_MEMORY = '/dev/shm';

const folder = mkdtempSync(join(existsSync(IN_MEMORY) ? IN_MEMORY : tmpdir(), 'preylarder-undo-'));
const opened = async (name: string): Promise<Store> => {
  const url = pathToFileURL(join(folder, `${name}.db`)).href;
  const store = await openStore({ place: { url }, moment: '2024-10-04T20:00:00.000Z' });
  if (!store.ok) throw new Error(store.problem.sentence);
  return store.value;
};
const policy = policyWith({ replicates: 4, actReplicates: 2, stockReplicates: 3 });
const tally = emptyTally();
const wrong: string[] = [];
const began = performance.now();
for (let from = 1; from <= SEQUENCES; from += A_STORE_SERVES) {
  const [store, mirror] = [await opened(`${from}`), await opened(`${from}-mirror`)];
  const room = { ...roomOn(store), facts: { ...facts, policy } };
  for (let seed = from; seed < Math.min(from + A_STORE_SERVES, SEQUENCES + 1); seed += 1) {
    wrong.push(...(await runSequence({ room, mirror }, seed, tally)));
    await breathe();
  }
  await Promise.all([store.close(), mirror.close()]);
  process.stdout.write(
    `${Math.min(from + A_STORE_SERVES - 1, SEQUENCES)} sequences, ${wrong.length} wrong\n`,
  );
}
rmSync(folder, { recursive: true, force: true });

const minutes = (performance.now() - began) / 60_000;
const names = [...Object.keys(DRAWN), 'undo', 'undoMany'];
const rows = names.map(
  (name) => `| ${name} | ${tally.done.get(name) ?? 0} | ${tally.refused.get(name) ?? 0} |`,
);
const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { cwd: ROOT, encoding: 'utf8' }).trim();
const report = `# Random sequences of acts and undos

Each sequence begins with an empty database, furnishes a small room by acts, and then draws from every act the
program knows, with inputs that are mostly good and sometimes not, from undos of any act or undo, and from acts undone
together with all that rests on them. At its end: the tables rebuilt from the journal alone must be the tables there
are, with the same acts and entries counting; undoing everything, newest first, must give the empty state; in
every third sequence doing it all again must give the last state, which the journal must rebuild once more. In every 50th sequence the Sunday
answer is asked for on the way, and the one kept at the end must be the one computed anew; in every fifth the journal
is played into another store, which must tell the core the same bin events and records.

| figure | value |
|---|---|
| sequences | ${SEQUENCES} |
| steps drawn | ${tally.steps} |
| undos and doings-again among them | ${tally.undos} |
| single undos at the ends | ${tally.ends} |
| answers compared | ${tally.compared} |
| promises broken | ${wrong.length} |
| minutes | ${minutes.toFixed(1)} |

| act | done | refused |
|---|---|---|
${rows.join('\n')}

At ${commit}.
`;
process.stdout.write(`${wrong.slice(0, 20).join('\n')}\n${report}`);
if (process.argv.includes('--keep')) writeFileSync(join(ROOT, 'tests/proof/results/undo.md'), report);
process.exit(wrong.length === 0 ? 0 : 1);
