/** Random sequences of every act, undo and doing-again: all can be taken back, and the journal tells all. */
import { expect, test } from 'vitest';
import * as actions from '../../src/actions/index.ts';
import { facts, policyWith } from '../support/room.ts';
import { DRAWN, emptyTally, runSequence } from '../support/sequences/run.ts';
import { freshContext, quickStore } from '../support/store-at.ts';

const SEQUENCES = 150;
/** Rare acts may need more of them to be drawn at all. */
const MOST = 400;
const LONGEST_MS = 240_000;
/** Exports of the actions that write no act of their own, or are drawn in a way of their own. */
const NO_ACTS = [
  'answerHere',
  'answerTo',
  'askBin',
  'askBinsGo',
  'askBox',
  'askBulk',
  'askColony',
  'askCover',
  'askHarvests',
  'askOnce',
  'askPlan',
  'askSunday',
  'askWeeks',
  'eveningOfAct',
  'factsNow',
  'keptBulk',
  'keptColony',
  'keptPlan',
  'lastLook',
  'lastPlan',
  'loadLife',
  'loadSnapshot',
  'nowIn',
  'planName',
  'stepWords',
  'tryKind',
  'tryRule',
  'usualPlanQuestion',
];
const IN_THEIR_OWN_WAY = ['firstRoom', 'undo', 'undoMany'];

test('every act has a generator', () => {
  expect([...Object.keys(DRAWN), ...NO_ACTS, ...IN_THEIR_OWN_WAY].sort()).toEqual(
    Object.keys(actions).sort(),
  );
});

test(
  `in ${SEQUENCES} random sequences undo-all gives the first state, the journal rebuilds the last, and cache and replay agree`,
  async () => {
    const policy = policyWith({ replicates: 4, actReplicates: 2, stockReplicates: 3 });
    const room = { ...(await freshContext(await quickStore())), facts: { ...facts, policy } };
    const mirror = await quickStore();
    const tally = emptyTally();
    const wrong: string[] = [];
    const undone = () => [...Object.keys(DRAWN), 'undo', 'undoMany'].filter((name) => !tally.done.has(name));
    for (let seed = 1; seed <= SEQUENCES || (seed <= MOST && undone().length > 0); seed += 1)
      wrong.push(...(await runSequence({ room, mirror }, seed, tally)));
    expect(wrong.slice(0, 3)).toEqual([]);
    expect(undone()).toEqual([]);
    expect(tally.undos).toBeGreaterThan(SEQUENCES);
  },
  LONGEST_MS,
);
