/** Files of measured temperatures: several dialects become the least and greatest of each day. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDate, dayOf } from '../../src/husbandry/calendar.ts';
import { measuredDays, readTemperatures, withNewer } from '../../src/intake/index.ts';
import { good } from '../support/store-at.ts';

const day = (text: string) => {
  const [year, month, date] = text.split('-').map(Number) as [number, number, number];
  return good(dayOf(year, month, date));
};
const today = day('2026-04-01');
const read = (text: string, dates?: 'dmy' | 'mdy') =>
  readTemperatures(new TextEncoder().encode(text), { today, dates });
const days = (text: string) =>
  measuredDays(good(read(text)).series).map(({ day: on, minC, maxC }) => [civilDate(on), minC, maxC]);
const sentence = (text: string, dates?: 'dmy' | 'mdy') => {
  const result = read(text, dates);
  return result.ok ? '' : result.problem.sentence;
};

describe('a file of temperatures', () => {
  it.each([
    ['date,temperature\n2026-03-01,22.5\n2026-03-02,23\n'],
    ['Datum;Temperatur (°C)\n28.02.2026;7,5\n01.03.2026;22,5\n02.03.2026;23,0\n'],
    ['timestamp\ttemp\n2026-03-01 06:00\t22.5\n2026-03-02T23:59:59Z\t23\n'],
    ['Horodatage;Température\n13/02/2026 08:00;9\n01/03/2026 08:00;22,5\n02/03/2026 08:00;23\n'],
    ['Fecha y hora,Temperatura\n2026-03-01 10:15,"22,5"\n2026-03-02 10:15,"23,0"\n'],
    ['Logger 7\n\nTime,Celsius\n2026-03-01 10:15,22.5\n2026-03-02 10:15,23 C\n'],
    ['date,temp (°F)\n2026-03-01,72.5\n2026-03-02,73.4\n'],
    ['Time;Probe 1 (°F);Humidity\n2026-03-01 10:00;72,5;55\n2026-03-02 10:00;73,4;60\n'],
    ['date,temp\n2026-03-01,72.5 F\n2026-03-02,73.4 F\n'],
  ])('%j', (text) => {
    expect(days(text).slice(-2)).toEqual([
      ['2026-03-01', 22.5, 22.5],
      ['2026-03-02', 23, 23],
    ]);
  });

  it('takes the least and greatest of several readings, or of columns that give them', () => {
    const many = 'date,temp\n2026-03-01 06:00,18.2\n2026-03-01 14:00,27.9\n2026-03-01 20:00,24\n';
    const columns = 'Date,Min,Max\n2026-03-01,18.2,27.9\n';
    expect(days(many)).toEqual([['2026-03-01', 18.2, 27.9]]);
    expect(days(columns)).toEqual(days(many));
  });

  it('leaves days without a reading open, and rows that cannot be read out, with the reason', () => {
    const text = 'date,temp\n2026-03-01,20\n2026-03-04,22\n2026-03-05,off\n2026-03-06,180\n,21\n';
    const done = good(read(text));
    expect(done.series).toEqual({
      from: day('2026-03-01'),
      minC: [20, null, null, 22],
      maxC: [20, null, null, 22],
    });
    expect(done).toMatchObject({ rows: 2, leftOut: 3, why: { row: 4 } });
    expect(done.why?.sentence).toBe('"off" is not a temperature; write it as 26 C or 79 F.');
  });

  it('says what is wrong with a file as a whole', () => {
    expect(sentence('date,humidity\n2026-03-01,60\n')).toContain('No column was found for the temperature');
    expect(sentence('place,temp\nbox,20\n')).toContain(
      'No column was found for the date among "place", "temp". Call it "date".',
    );
    expect(sentence('date,temp\n2026-03-01,warm\n')).toContain('"warm" is not a temperature');
    expect(sentence('date,temp\n')).toContain('0 rows');
    expect(sentence('date,temp\n2027-03-01,20\n')).toContain('is in the future');
    expect(sentence('')).toContain('empty');
  });

  it('asks for the order of day and month where the file does not show it', () => {
    const text = 'date,temp\n03/02/2026,20\n04/02/2026,21\n';
    expect(sentence(text)).toContain('could be day first or month first');
    const first = (dates: 'dmy' | 'mdy') => civilDate(good(read(text, dates)).series.from);
    expect([first('dmy'), first('mdy')]).toEqual(['2026-02-03', '2026-03-02']);
  });
});

const reading = fc.record({
  day: fc.integer({ min: 20_000, max: 20_060 }),
  minC: fc.integer({ min: 5, max: 20 }),
  maxC: fc.integer({ min: 20, max: 40 }),
});
const oneADay = fc.uniqueArray(reading, { selector: (each) => each.day, minLength: 1, maxLength: 30 });

describe('a series with newer readings', () => {
  it('holds every day of either, and the newer where both have one', () => {
    fc.assert(
      fc.property(oneADay, oneADay, (old, newer) => {
        const seriesOf = (each: typeof old) => good(read(csv(each))).series;
        const both = measuredDays(withNewer(seriesOf(old), seriesOf(newer)));
        const wanted = new Map([...old, ...newer].map((each) => [each.day, each]));
        expect(both).toEqual([...wanted.values()].sort((a, b) => a.day - b.day));
      }),
    );
  });
});

const csv = (each: readonly { day: number; minC: number; maxC: number }[]) =>
  ['date,min,max', ...each.map((one) => `${civilDate(one.day)},${one.minC},${one.maxC}`)].join('\n');
