/** When parcels go and come: weekdays, cut-off, holidays, and weather that holds them; small cases worked by hand. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { civilDate, parseCivilDate } from '../../../src/husbandry/calendar.ts';
import {
  atTime,
  dispatchesOf,
  heldUntil,
  isSentOn,
  type Supplier,
  tooLateToday,
} from '../../../src/husbandry/orders/index.ts';
import { supplierWith } from '../../support/market.ts';
import { good } from '../../support/store-at.ts';

const day = (date: string) => good(parseCivilDate(date));
/** Monday to Wednesday, two days on the way, ordered the day before. */
const mail = supplierWith({
  dispatchWeekdays: [true, true, true, false, false, false, false],
  transitDays: 2,
  cutOffDays: 1,
  coldBelowC: 0,
  heatAboveC: 30,
});
/** Thursday 1 October 2026. */
const THURSDAY = day('2026-10-01');
const told = (supplier: Supplier, from: number, days: number, weather = {}) =>
  dispatchesOf(supplier, { from, to: from + days }, [weather].flat() as never).map(
    ({ orderBy, sent, comes }) => [orderBy, sent, comes].map((each) => civilDate(each).slice(5)),
  );

test('on a Thursday the next parcel is ordered by Sunday, sent on Monday and there on Wednesday', () => {
  expect(told(mail, THURSDAY, 7, [])).toEqual([
    ['10-04', '10-05', '10-07'],
    ['10-05', '10-06', '10-08'],
    ['10-06', '10-07', '10-09'],
  ]);
});

test('a parcel whose last day of ordering was yesterday is not offered, one of today is', () => {
  expect(told(mail, day('2026-10-05'), 1, [])).toEqual([['10-05', '10-06', '10-08']]);
  expect(told(mail, day('2026-10-06'), 0, [])).toEqual([]);
});

test('once the last hour of ordering has come today is too late, and tomorrow is the next chance', () => {
  const byNoon = supplierWith({ ...mail, cutOffTime: '12:00' });
  const monday = day('2026-10-05');
  const at = (minutes: number) => atTime(byNoon, { today: monday, minutes });
  expect(told(at(12 * 60 - 1), monday, 2, [])).toHaveLength(2);
  expect(told(at(12 * 60), monday, 2, [])).toEqual([['10-06', '10-07', '10-09']]);
  expect(told(atTime(at(12 * 60), { today: monday, minutes: 0 }), monday, 2, [])).toHaveLength(2);
  expect(atTime(mail, { today: monday, minutes: 23 * 60 })).toEqual(mail);
});

test('for whom it is too late today matters only where a parcel could have been ordered', () => {
  const suppliers = ['2026-10-05', '2026-10-07'].map((date) => {
    const today = day(date);
    const late = atTime(supplierWith({ ...mail, cutOffTime: '12:00' }), { today, minutes: 13 * 60 });
    return tooLateToday([late, mail], today);
  });
  expect(suppliers).toEqual([['S1'], []]);
});

test('a shop is open on the day itself', () => {
  const shop = supplierWith({
    kind: 'shop',
    dispatchWeekdays: [false, false, false, true, false, true, false],
  });
  expect(told(shop, THURSDAY, 3, [])).toEqual([
    ['10-01', '10-01', '10-01'],
    ['10-03', '10-03', '10-03'],
  ]);
});

test('nothing is sent on a holiday, its first and last day among them; what is on its way still comes', () => {
  const holidays = [{ from: day('2026-10-06'), to: day('2026-10-12') }];
  expect(told({ ...mail, holidays }, THURSDAY, 14, [])).toEqual([
    ['10-04', '10-05', '10-07'],
    ['10-12', '10-13', '10-15'],
    ['10-13', '10-14', '10-16'],
  ]);
});

test('a parcel that would meet the cold on any day of its way is not offered', () => {
  const cold = { from: day('2026-10-08'), to: day('2026-10-12'), tempC: -3 };
  expect(told(mail, THURSDAY, 14, [cold])).toEqual([
    ['10-04', '10-05', '10-07'],
    ['10-12', '10-13', '10-15'],
    ['10-13', '10-14', '10-16'],
  ]);
});

test('heat holds parcels as cold does; at the limit itself they go, and who names no limit sends in any weather', () => {
  const at = (tempC: number) => [{ from: THURSDAY, to: THURSDAY + 20, tempC }];
  const monday = day('2026-10-05');
  expect([31, 30, 0, -1].map((tempC) => isSentOn(mail, monday, at(tempC)))).toEqual([
    false,
    true,
    true,
    false,
  ]);
  const hardy = { ...mail, coldBelowC: null, heatAboveC: null };
  expect([-20, 40].map((tempC) => isSentOn(hardy, monday, at(tempC)))).toEqual([true, true]);
});

test('a held parcel leaves on the first sending day after the spell, or lapses when that is too late', () => {
  const spell = [{ from: day('2026-10-05'), to: day('2026-10-08'), tempC: -5 }];
  const sent = day('2026-10-06');
  expect(heldUntil({ ...mail, holdDays: null }, sent, spell)).toBe(day('2026-10-12'));
  expect(heldUntil({ ...mail, holdDays: 6 }, sent, spell)).toBe(day('2026-10-12'));
  expect(heldUntil({ ...mail, holdDays: 5 }, sent, spell)).toBeNull();
  expect(heldUntil({ ...mail, holdDays: 0 }, sent, [])).toBe(sent);
});

test('a parcel is never held for ever: a holiday after the spell is waited for too, and who never sends never does', () => {
  const spell = [{ from: day('2026-10-05'), to: day('2026-10-08'), tempC: -5 }];
  const holidays = [{ from: day('2026-10-09'), to: day('2026-10-20') }];
  expect(heldUntil({ ...mail, holidays }, day('2026-10-06'), spell)).toBe(day('2026-10-21'));
  const never = { ...mail, dispatchWeekdays: Array<boolean>(7).fill(false) };
  expect(heldUntil(never, THURSDAY, [])).toBeNull();
});

const anySupplier = fc
  .record({
    dispatchWeekdays: fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
    transitDays: fc.integer({ min: 0, max: 5 }),
    cutOffDays: fc.integer({ min: 0, max: 5 }),
    holdDays: fc.option(fc.integer({ min: 0, max: 20 })),
    coldBelowC: fc.option(fc.integer({ min: -5, max: 10 })),
  })
  .map(supplierWith);
const anySpells = fc.array(
  fc
    .record({
      from: fc.integer({ min: -5, max: 30 }),
      days: fc.integer({ min: 0, max: 9 }),
      tempC: fc.integer({ min: -9, max: 20 }),
    })
    .map(({ from, days, tempC }) => ({ from: THURSDAY + from, to: THURSDAY + from + days, tempC })),
  { maxLength: 4 },
);

test('what is offered is sent as ordered, and a later look offers no parcel an earlier one did not', () => {
  fc.assert(
    fc.property(anySupplier, anySpells, (supplier, spells) => {
      const range = { from: THURSDAY, to: THURSDAY + 30 };
      const all = dispatchesOf(supplier, range, spells);
      expect(all.every(({ sent }) => heldUntil(supplier, sent, spells) === sent)).toBe(true);
      const later = dispatchesOf(supplier, { ...range, from: THURSDAY + 3 }, spells);
      expect(later).toEqual(all.filter(({ orderBy }) => orderBy >= THURSDAY + 3));
    }),
  );
});

test('a held parcel leaves on a day on which one is sent, within the days it is held', () => {
  fc.assert(
    fc.property(anySupplier, anySpells, fc.integer({ min: 0, max: 30 }), (supplier, spells, ahead) => {
      const left = heldUntil(supplier, THURSDAY + ahead, spells);
      if (left === null) return;
      expect(isSentOn(supplier, left, spells)).toBe(true);
      expect(left - THURSDAY - ahead).toBeLessThanOrEqual(supplier.holdDays ?? Number.POSITIVE_INFINITY);
    }),
  );
});
