/** The pool as built: the answer comes from a thread of its own, and the server stays quick meanwhile. */
import { existsSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { answerHere, type Question } from '../../src/actions/index.ts';
import type { Snapshot } from '../../src/husbandry/snapshot.ts';
import { standingTonight } from '../../src/husbandry/supply/index.ts';
import { sundayCheck } from '../../src/husbandry/supply/sunday.ts';
import type * as Pool from '../../src/workers/pool.ts';
import { mixedAnimals, mixedBins, snapshotWith } from '../support/room.ts';
import { good } from '../support/store-at.ts';

/** Takes seconds. */
const aThousandMoths: Question<'colony start'> = {
  subject: 'colony start',
  name: 'a thousand',
  snapshot: snapshotWith({}),
  options: {
    species: 'galleria-mellonella',
    dayC: 30,
    nightC: 28,
    wanted: [{ heads: 200, fromMm: 15, toMm: 25 }],
    starters: { kind: 'adults', females: 5, males: 5 },
    binSize: null,
    prices: null,
  },
};

const BUILT = fileURLToPath(new URL('../../dist/src/workers/pool.js', import.meta.url));

test.runIf(existsSync(BUILT))(
  'a thread gives the same answer, and the loop turns while it works',
  async () => {
    const { answerPool } = (await import(pathToFileURL(BUILT).href)) as typeof Pool;
    const pool = answerPool();
    const snapshot = snapshotWith({ animals: mixedAnimals(40), bins: mixedBins(40) });
    let turns = 0;
    const turning = setInterval(() => {
      turns += 1;
    }, 5);
    const answer = good(await pool.answering({ subject: 'sunday', name: 'week', snapshot, options: {} }));
    clearInterval(turning);
    await pool.close();
    expect(turns).toBeGreaterThan(5);
    expect(answer).toEqual(sundayCheck(snapshot));
  },
);

test.runIf(existsSync(BUILT))(
  'a question whose answer has to wait for the solver is answered too',
  async () => {
    const { answerPool } = (await import(pathToFileURL(BUILT).href)) as typeof Pool;
    const pool = answerPool();
    const question = {
      subject: 'largest harvests',
      name: 'dubia',
      snapshot: snapshotWith({}),
      options: { species: 'blaptica-dubia', dayC: 28, nightC: 26, room: 500 },
    } as const;
    const answer = good(await pool.answering(question));
    await pool.close();
    expect(answer).toEqual(good(await answerHere(question)));
    expect(answer.outcome.ok).toBe(true);
  },
);

test.runIf(existsSync(BUILT))(
  'a thread that is asked again of a room, and then of another, answers of the right one',
  async () => {
    const { answerPool } = (await import(pathToFileURL(BUILT).href)) as typeof Pool;
    const pool = answerPool();
    const [room, later] = [20, 30].map((n, revision) =>
      snapshotWith({ animals: mixedAnimals(n), bins: mixedBins(n), revision }),
    ) as [Snapshot, Snapshot];
    for (const snapshot of [room, room, later, room]) {
      const question = { subject: 'shelves', name: 'shelves', snapshot, options: null } as const;
      expect(good(await pool.answering(question)).found).toEqual(standingTonight(snapshot));
    }
    await pool.close();
  },
);

test.runIf(existsSync(BUILT))(
  'what the week asks is answered while a colony is still lived through',
  async () => {
    const { answerPool } = (await import(pathToFileURL(BUILT).href)) as typeof Pool;
    const pool = answerPool();
    const slow = pool.answering(aThousandMoths);
    const first = await Promise.race([
      slow.then(
        () => 'colony',
        () => 'colony',
      ),
      pool
        .answering({ subject: 'sunday', name: 'week', snapshot: snapshotWith({}), options: {} })
        .then(() => 'week'),
    ]);
    await pool.close();
    expect(first).toBe('week');
  },
);

test.runIf(existsSync(BUILT))(
  'a slow question that is cancelled comes back at once, and the next one is answered',
  async () => {
    const { answerPool } = (await import(pathToFileURL(BUILT).href)) as typeof Pool;
    const pool = answerPool();
    const slow = pool.answering(aThousandMoths);
    await pause(UNDER_WAY_MS);
    const stoppedAt = performance.now();
    expect(pool.underWay.cancel('a thousand')).toBe(true);
    expect(await slow).toMatchObject({ ok: false, problem: { code: 'cancelled' } });
    expect(performance.now() - stoppedAt).toBeLessThan(AT_ONCE_MS);
    expect(pool.underWay.cancel('a thousand')).toBe(false);
    const options = { species: 'blaptica-dubia', dayC: 28, nightC: 26, room: 500 } as const;
    const next = pool.answering({
      subject: 'largest harvests',
      name: 'dubia',
      snapshot: snapshotWith({}),
      options,
    });
    expect(good(await next).outcome.ok).toBe(true);
    await pool.close();
  },
);

test.runIf(existsSync(BUILT))(
  'a plan tells how far it is while it is made, and nothing once it is there',
  async () => {
    const { answerPool } = (await import(pathToFileURL(BUILT).href)) as typeof Pool;
    const pool = answerPool();
    const told = new Set<string>();
    const looking = setInterval(() => {
      const progress = pool.underWay.progressOf('plan');
      if (progress !== null) told.add(progress.step);
    }, 1);
    const snapshot = snapshotWith({ animals: mixedAnimals(12), bins: mixedBins(12) });
    const options = { weeks: 4, wishes: [], supposed: [] };
    const plan = good(await pool.answering({ subject: 'plan', name: 'plan', snapshot, options }));
    clearInterval(looking);
    expect([plan.revision, plan.periods.length]).toEqual([snapshot.revision, 4]);
    expect([...told]).toContain('solving');
    expect(pool.underWay.progressOf('plan')).toBeNull();
    await pool.close();
  },
);

/** Until the thread has begun; and what a stop may take on a busy machine, against the seconds of the answer. */
const UNDER_WAY_MS = 400;
const AT_ONCE_MS = 1000;
