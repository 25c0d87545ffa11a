/** The pencil room, brought in and asked by command, gets the same numbers as the core asked directly. */
import { expect, it } from 'vitest';
import { loadSnapshot, nowIn } from '../../src/actions/index.ts';
import { sundayCheck } from '../../src/husbandry/supply/sunday.ts';
import { INSTANT, pencilRoom } from '../support/command.ts';
import { facts } from '../support/room.ts';
import { freshStore, urlOf } from '../support/store-at.ts';

it('check prints what the Sunday check answers for the loaded room', async () => {
  const at = await pencilRoom();
  const printed = JSON.parse((await at.type('check', '--json')).out);
  const store = await freshStore(urlOf(at.db));
  const snapshot = await loadSnapshot({ store, facts, clock: () => nowIn('UTC', INSTANT) });
  expect(snapshot.animals.map(({ name }) => name)).toEqual(['Pip', 'Dot', 'Fern', 'Moss', 'Slate', 'Rust']);
  expect(snapshot.bins.map(({ name }) => name)).toEqual(['Small box', 'Large box']);
  const { date, exit, plan, ...answer } = printed;
  expect(answer).toEqual(JSON.parse(JSON.stringify(sundayCheck(snapshot))));
  expect([date, plan]).toEqual(['2026-11-29', []]);
  expect(exit).toBe({ lasts: 0, tight: 3, 'runs short': 1, empty: 0 }[answer.verdict as 'lasts']);
});
