/** What is on its way already, as the programme counts it: there in the period in which it comes, less what is lost. */
import { expect, it } from 'vitest';
import { periodOf } from '../../../src/husbandry/plan/periods.ts';
import { laidOut } from '../../support/plan/planned.ts';
import { animalWith, countedBin, facts, snapshotWith, TODAY } from '../../support/room.ts';

const SMALL = { species: 'acheta-domesticus', fromMm: 3, toMm: 5 };
const HEADS = 400;

it('an order that was placed is there from the period in which it comes on', () => {
  const day = TODAY + 3;
  const room = snapshotWith({
    animals: [
      animalWith({ code: 'A1', kind: 'grammostola-pulchra', gaugeMm: 22, lastTaken: TODAY - 3, count: 12 }),
    ],
    bins: [countedBin('B1', SMALL.species, { heads: 20, ...SMALL })],
  });
  const lot = { heads: HEADS, fromMm: SMALL.fromMm, toMm: SMALL.toMm };
  const [without, placed] = [[], [{ code: 'D1', species: SMALL.species, bin: 'B1', lot, day }]].map(
    (deliveries) => laidOut({ ...room, deliveries }, 6),
  );
  const comes = ({ laid, problem }: typeof placed, t: number): number => {
    const place = laid.places.findIndex(({ bins }) => bins.some(({ bin }) => bin.code === 'B1'));
    return problem.places[place]!.comes[t]!.reduce((sum, heads) => sum + heads, 0);
  };
  const { deadOnArrivalShare, overCountShare } = facts.policy;
  const alive = HEADS * (1 + overCountShare.value) * (1 - deadOnArrivalShare.value);
  placed!.laid.periods.forEach((_, t) => {
    const more = comes(placed!, t) - comes(without!, t);
    if (t !== periodOf(placed!.laid.periods, day)) expect(more).toBe(0);
    else {
      expect(more).toBeLessThan(1.001 * alive);
      expect(more).toBeGreaterThan(0.8 * alive);
    }
  });
});
