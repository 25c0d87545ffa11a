/** Deliveries of one day and acts that help alike are told apart by their codes, not by the order of lists. */
import { expect, it } from 'vitest';
import { sundayCheck } from '../../../src/husbandry/supply/sunday.ts';
import { pencilFacts, pencilKind, pencilPrey } from '../../support/pencil-facts.ts';
import { animalWith, binWith, snapshotWith, TODAY } from '../../support/room.ts';

const kind = pencilKind({
  code: 'eater',
  prey: [4, 8],
  intervalDays: [5, 5],
  graceDays: 2,
  safeGapDays: 9,
  urgency: 'ordinary',
  words: 'eater',
});
const delivery = (code: string) => ({
  code,
  species: 'cricket',
  bin: 'box',
  lot: { heads: 3, fromMm: 4, toMm: 8 },
  day: TODAY + 9,
});

const room = snapshotWith({
  animals: [animalWith({ code: 'A1', kind: 'eater', gaugeMm: 10, lastTaken: TODAY - 4 })],
  bins: [binWith({ code: 'box', species: 'cricket' })],
  deliveries: [delivery('D1'), delivery('D2')],
  facts: pencilFacts([kind], [pencilPrey('cricket', [4, 8])]),
});

it('answers the same whichever of two like deliveries is written first', () => {
  const answer = sundayCheck(room, { replicates: 3 });
  const turned = sundayCheck({ ...room, deliveries: [...room.deliveries].reverse() }, { replicates: 3 });
  expect(answer.untilDelivery).toBe('D1');
  expect(answer.act?.kind).toBe('bring delivery forward');
  expect(JSON.stringify(turned)).toBe(JSON.stringify(answer));
});

it('counts what was wanted in vain again when an animal, fed meanwhile, finds nothing the next time', () => {
  const once = { ...delivery('D1'), day: TODAY + 2, lot: { heads: 1, fromMm: 4, toMm: 8 } };
  const hungry = { ...room, animals: [{ ...room.animals[0]!, lastTaken: TODAY - 5 }], deliveries: [once] };
  const { groups } = sundayCheck(hungry, { days: 9, replicates: 3 });
  expect(groups[0]!.unmetByDay).toEqual([1, 0, 0, 0, 0, 0, 0, 1, 0]);
});

it('takes what is part of an order as fixed: where nothing else could be done, no act is proposed', () => {
  const placed = room.deliveries.map((each) => ({ ...each, order: 'O1' }));
  const answer = sundayCheck({ ...room, deliveries: placed }, { replicates: 3 });
  expect([answer.untilDelivery, answer.act]).toEqual(['D1', null]);
});
