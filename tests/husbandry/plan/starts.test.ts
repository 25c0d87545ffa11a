/** Cups a plan may start: each fly once a week, however many climates its cups stand in. */
import { describe, expect, it } from 'vitest';
import { makePlan, type Wish } from '../../../src/husbandry/plan/index.ts';
import { marketWith } from '../../support/plan/markets.ts';
import { animalWith, binWith, facts, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const cup = (code: string, room: string) =>
  binWith({
    ...{ code, room, species: 'drosophila-hydei', role: 'cup' },
    events: [{ kind: 'cup looked', look: 'producing', day: TODAY - 3 }],
  });
const kind = [...facts.kinds.values()].find(
  ({ firstFeedingGaugeMm }) => firstFeedingGaugeMm.value[0] <= 3,
)!.code;
const room = snapshotWith({
  animals: [animalWith({ code: 'A1', kind, gaugeMm: 4, count: 30, lastTaken: TODAY - 3 })],
  bins: [cup('B1', 'warm'), cup('B2', 'cool')],
  rooms: [
    { code: 'warm', name: 'Warm', dayTempC: 26, nightTempC: 24 },
    { code: 'cool', name: 'Cool', dayTempC: 23, nightTempC: 20 },
    { code: 'room', name: 'Room', dayTempC: 24, nightTempC: 22 },
  ],
  market: marketWith({}),
  facts: { ...facts, policy: policyWith({ planJudgeReplicates: 40, planQuickTrials: 60 }) },
});
const pin: Wish = { key: 'start:drosophila-hydei@2026-11-24', wish: 'pin', amount: 2 };

describe('cups of one fly in a warm and a cool room', () => {
  it('are started once where a pin asks for two', async () => {
    const { lines } = await makePlan(room, { weeks: 6, wishes: [pin], supposed: [], effort: 'quick' });
    const started = lines.filter(({ key }) => key === pin.key);
    expect(started).toHaveLength(1);
    expect(started[0]).toMatchObject({ cups: 2, pinned: true });
  });
});
