/** An absence that is asked about, saved or not. */
import { expect, it } from 'vitest';
import { whileAway } from '../../../src/husbandry/supply/while-away.ts';
import { mixedAnimals, mixedBins, snapshotWith, TODAY } from '../../support/room.ts';

const days = { from: TODAY + 3, to: TODAY + 12 };
const room = snapshotWith({ animals: mixedAnimals(20), bins: mixedBins(6) });
const inCalendar = (absences: readonly (typeof days)[]) => ({
  ...room,
  calendar: { ...room.calendar, absences },
});

it('is answered alike whether or not it stands in the calendar already', () => {
  const asked = { days, also: true };
  const answer = whileAway(room, asked);
  expect(answer.plan.visits.length).toBeGreaterThan(0);
  expect(whileAway(inCalendar([days]), asked)).toEqual(answer);
});

it('leaves other absences in the calendar', () => {
  const right = { from: days.to + 1, to: days.to + 5 };
  const { plan } = whileAway(inCalendar([days, right]), { days, also: false });
  expect(plan.absence.home).toBe(right.to + 1);
});
