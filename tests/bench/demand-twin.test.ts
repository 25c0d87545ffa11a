/** The demand loop against its twin in C, draw by draw. */
import { describe, expect, it } from 'vitest';
import { feedingDaysFrom } from '../../src/husbandry/appetite/feeding-days.ts';
import { rosterOf } from '../../src/husbandry/appetite/roster.ts';
import type { PlannedChange } from '../../src/husbandry/snapshot.ts';
import { menuOf } from '../../src/husbandry/supply/menu.ts';
import { runReplicates } from '../../src/husbandry/supply/run.ts';
import { tallyFor } from '../../src/husbandry/supply/tally.ts';
import { mixedAnimals, snapshotWith, TODAY } from '../support/room.ts';
import { freshFolder } from '../support/store-at.ts';
import { type Core, demandLoop, sumsOf } from './demand-loop.ts';
import { compileTwin, noTwin, playTwin } from './demand-twin.ts';

const core: Core = { rosterOf, feedingDaysFrom, menuOf, runReplicates, tallyFor };

const change = (over: Partial<PlannedChange> & Pick<PlannedChange, 'code' | 'kind'>): PlannedChange => ({
  animalKind: 'brachypelma-hamorii',
  from: TODAY + 5,
  to: TODAY + 30,
  chance: 0.7,
  count: 1,
  gaugeMm: 12,
  room: 'room',
  animal: null,
  ...over,
});

/** Everything that can happen to an animal: groups alike, moults known, premoult, arrivals, a sale, days away. */
const eventful = snapshotWith({
  seed: 5,
  calendar: {
    feedingWeekdays: [true, false, false, true, false, true, false],
    absences: [{ from: TODAY + 10, to: TODAY + 15 }],
  },
  animals: mixedAnimals(150).map((animal, i) => ({
    ...animal,
    count: i % 7 === 0 ? 12 : 1,
    lastTaken: i % 11 === 0 ? null : animal.lastTaken,
    premoultSeen: i % 13 === 0 ? TODAY - 3 : null,
    lastMoult: i % 5 === 0 ? { earliest: TODAY - 42 + (i % 39), found: TODAY - 40 + (i % 39) } : null,
  })),
  changes: [
    change({ code: 'C1', kind: 'sale', animal: 'A3', from: TODAY + 3, to: TODAY + 20 }),
    change({ code: 'C2', kind: 'arrival', count: 30 }),
    change({ code: 'C3', kind: 'arrival', from: TODAY + 2, to: TODAY + 3, chance: 0.9 }),
  ],
});

const ROOMS = {
  'a mixed room fed every day': snapshotWith({ animals: mixedAnimals(150) }),
  'a room in which everything happens': eventful,
};

const missing = noTwin();

describe('the demand loop', () => {
  for (const [name, snapshot] of Object.entries(ROOMS)) {
    it(`agrees with its twin in C on ${name}`, (context) => {
      if (missing !== null) return context.skip(missing);
      const loop = demandLoop(core, snapshot, { days: 84, replicates: 20 });
      const { seconds, ...twin } = playTwin(compileTwin(freshFolder()), loop);
      expect(seconds).toBeGreaterThan(0);
      expect(twin.due).toBeGreaterThan(10_000);
      expect(sumsOf(loop.play())).toEqual(twin);
    });
  }
});
