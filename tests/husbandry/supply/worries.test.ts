/** What the record says is worth a look: refusals in a row, a premoult that takes too long. */
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../../src/husbandry/animals/kind.ts';
import { ruleOf } from '../../../src/husbandry/animals/stage.ts';
import { eveningOf } from '../../../src/husbandry/supply/evening.ts';
import { animalWith, countedBin, facts, snapshotWith, TODAY } from '../../support/room.ts';

const spider = (over: object) =>
  animalWith({ code: 'A1', kind: 'brachypelma-hamorii', gaugeMm: 50, lastTaken: TODAY - 40, ...over });
const bins = [countedBin('B1', 'acheta-domesticus', { heads: 100, fromMm: 8, toMm: 14 })];
const roundOf = (over: object) => eveningOf(snapshotWith({ bins, animals: [spider(over)] }));

describe('prey refused again and again', () => {
  const refusing = (refusalsInRow: number) => roundOf({ refusalsInRow }).servings[0];

  it('is asked about from the second time on, and the animal is fed all the same', () => {
    expect([0, 1].map((n) => refusing(n)?.look)).toEqual([null, null]);
    expect(refusing(2)?.look).toMatch(/^Refused twice in a row: premoult, or something wrong\?/);
    expect(refusing(3)?.look).toContain('three times');
    expect(refusing(11)?.look).toContain('11 times');
    expect(refusing(3)?.offer).not.toBeNull();
  });
});

describe('a premoult', () => {
  const { moult, acceptance } = ruleOf(facts.kinds.get('brachypelma-hamorii') as Kind, spider({}));
  // The room is at the reference temperature, so that the cycle is the rule's own.
  const most = Math.ceil(
    (1 - acceptance.value.at(-1)!.from) * moult!.meanDays.value * (1 + 2 * moult!.cv.value),
  );
  const seen = (days: number) => roundOf({ premoultSeen: TODAY - days }).withheld[0];

  it('holds food back, and is asked about only past what its kind may take', () => {
    expect(seen(most)).toMatchObject({ reason: expect.stringMatching(/^about to moult/), look: null });
    expect(seen(most + 1)?.look).toContain(`longer ago than the ${most} days its kind may take`);
  });

  it('may take longer in a cooler room', () => {
    const cool = [{ code: 'room', name: 'Room', dayTempC: 20, nightTempC: 20 }];
    const animals = [spider({ premoultSeen: TODAY - most - 1 })];
    expect(eveningOf(snapshotWith({ bins, animals, rooms: cool })).withheld[0]?.look).toBeNull();
  });
});
