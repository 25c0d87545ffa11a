/** Colony start asked of the program: the answer is kept by question, and is what the core gives. */
import { expect, test } from 'vitest';
import { answerHere, askColony, askHarvests } from '../../src/actions/index.ts';
import { dubiaQuestion } from '../support/dubia-colony.ts';
import { furnished } from '../support/furnished.ts';
import { facts } from '../support/room.ts';
import { good } from '../support/store-at.ts';

/** A room that knows every prey species. */
const roomWithPrey = async () => ({ ...(await furnished()), facts });

/** A temperature at which nothing grows is answered at once. */
const cold = { ...dubiaQuestion, dayC: 12, nightC: 12 };

test('the same question is answered from what was kept, another is not', async () => {
  const room = await roomWithPrey();
  let asked = 0;
  const answering: typeof answerHere = (question) => {
    asked += 1;
    return answerHere(question);
  };
  const first = good(await askColony(room, cold, { answering }));
  expect(first.outcome).toMatchObject({ ok: false, problem: { code: 'does-not-grow' } });
  expect(good(await askColony(room, { ...cold }, { answering }))).toEqual(first);
  expect(asked).toBe(1);
  await askColony(room, { ...cold, nightC: 11 }, { answering });
  expect(asked).toBe(2);
});

test('an answer that fails is passed on', async () => {
  const room = await roomWithPrey();
  const busy = { code: 'busy', sentence: 'Ask again.' };
  const failing = { answering: async () => ({ ok: false, problem: busy }) as const };
  expect(await askColony(room, cold, failing)).toEqual({ ok: false, problem: busy });
});

test('the largest harvest of each trade size is told, fewer of the larger', async () => {
  const room = await roomWithPrey();
  const { species, dayC, nightC } = dubiaQuestion;
  const { outcome } = good(await askHarvests(room, { species, dayC, nightC, room: 500 }));
  const sizes = good(outcome);
  expect(sizes.map(({ size }) => size.name)).toEqual(['extra small', 'small', 'medium', 'large', 'adult']);
  const heads = sizes.map(({ perWeek }) => perWeek);
  expect(heads).toEqual([...heads].sort((a, b) => b - a));
  expect(heads.at(-1)).toBeGreaterThan(0);
});
