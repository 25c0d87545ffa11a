/** What a page cannot do without is asked once of a room, and answered whatever the thread says. */
import { expect, test } from 'vitest';
import { type Answering, answerHere, askOnce } from '../../src/actions/index.ts';
import { problem } from '../../src/husbandry/problems.ts';
import { err } from '../../src/husbandry/result.ts';
import { cupsHere, standingTonight } from '../../src/husbandry/supply/index.ts';
import { mixedAnimals, mixedBins, snapshotWith } from '../support/room.ts';

const newRoom = (over: object = {}) =>
  snapshotWith({ animals: mixedAnimals(4), bins: mixedBins(4), ...over });

function counted() {
  const names: string[] = [];
  const answering: Answering = (question) => {
    names.push(question.name);
    return answerHere(question);
  };
  return { names, answering };
}

test('asked twice of the same room it is worked out once, also while it is under way', async () => {
  const { names, answering } = counted();
  const asking = { options: null, snapshot: newRoom(), answering };
  const [first, second] = await Promise.all([askOnce('shelves', asking), askOnce('shelves', asking)]);
  expect(await askOnce('shelves', asking)).toBe(first);
  expect(second).toBe(first);
  expect(first).toEqual(standingTonight(asking.snapshot));
  expect(names).toHaveLength(1);
});

test('another room, and other words, are asked anew', async () => {
  const { names, answering } = counted();
  const snapshot = newRoom();
  for (const bin of snapshot.bins.slice(0, 2))
    await askOnce('bin today', { options: { bin: bin.code }, snapshot, answering });
  await askOnce('bin today', { options: { bin: snapshot.bins[0]!.code }, snapshot: newRoom(), answering });
  expect(names).toHaveLength(3);
});

test('where the thread is busy it is worked out here', async () => {
  const snapshot = newRoom();
  const answering: Answering = async () => err(problem('busy', 'Ask again.'));
  expect(await askOnce('shelves', { options: null, snapshot, answering })).toEqual(standingTonight(snapshot));
});

test('an answer of a newer room is not taken for one of this room', async () => {
  const snapshot = newRoom();
  const newer = newRoom({ revision: snapshot.revision + 1, bins: [] });
  const answering: Answering = (question) => answerHere({ ...question, snapshot: newer });
  expect(await askOnce('shelves', { options: null, snapshot, answering })).toEqual(standingTonight(snapshot));
});

test('what failed is asked again', async () => {
  const snapshot = newRoom();
  const broken: Answering = () => Promise.reject(new Error('the thread broke'));
  await expect(askOnce('cups', { options: null, snapshot, answering: broken })).rejects.toThrow('broke');
  expect(await askOnce('cups', { options: null, snapshot })).toEqual(cupsHere(snapshot));
});
