/** Colony start asked of the program: the answer is kept by question, and is what the core gives. */
import { expect, test } from 'vitest';
import { answerHere, askColony } from '../../src/actions/index.ts';
import { dubiaQuestion } from '../support/dubia-colony.ts';
import { furnished } from '../support/furnished.ts';
import { good } from '../support/store-at.ts';

/** A temperature at which nothing grows is answered at once. */
const cold = { ...dubiaQuestion, dayC: 12, nightC: 12 };

test('the same question is answered from what was kept, another is not', async () => {
  const room = await furnished();
  let asked = 0;
  const answering: typeof answerHere = (question) => {
    asked += 1;
    return answerHere(question);
  };
  const first = good(await askColony(room, cold, { answering }));
  expect(first.outcome).toMatchObject({ ok: false });
  expect(good(await askColony(room, { ...cold }, { answering }))).toEqual(first);
  expect(asked).toBe(1);
  await askColony(room, { ...cold, nightC: 11 }, { answering });
  expect(asked).toBe(2);
});

test('an answer that fails is passed on', async () => {
  const room = await furnished();
  const busy = { code: 'busy', sentence: 'Ask again.' };
  const failing = { answering: async () => ({ ok: false, problem: busy }) as const };
  expect(await askColony(room, cold, failing)).toEqual({ ok: false, problem: busy });
});
