/** Numbers of prey and of the method in the keeper's hands: changed, reset, undone, and heard by every forecast. */
import { describe, expect, test } from 'vitest';
import {
  askSunday,
  editNumbers,
  factsNow,
  importStock,
  loadSnapshot,
  resetNumbers,
  undo,
} from '../../src/actions/index.ts';
import { speciesSheet } from '../../src/husbandry/larder/index.ts';
import { revision, rowsOf } from '../../src/store/index.ts';
import { emptyHome, filledHome } from '../support/house.ts';
import { facts } from '../support/room.ts';
import { freshContext, good, type Room } from '../support/store-at.ts';

const CRICKET = 'acheta-domesticus';
const NYMPH = 'span.egg-to-adult';
const of = { of: CRICKET };

const library = async (): Promise<Room> => ({ ...(await freshContext()), facts });
const cricketOf = async (room: Room) => (await factsNow(room)).species.get(CRICKET)!;
const spanOf = async (room: Room) => (await cricketOf(room)).spans.at(-1)!;

describe('a number of a prey species', () => {
  test('is changed, one point of several by itself, and says since when and why', async () => {
    const room = await library();
    const { summary } = good(
      await editNumbers(room, {
        ...of,
        figures: { 'laying.hatchShare': '70,5 %', 'stage.later-young.survival.25': 55 },
        why: 'counted three boxes',
      }),
    );
    const { laying } = await cricketOf(room);
    expect(laying!.hatchShare).toMatchObject({
      value: 0.705,
      status: 'yours',
      note: 'since 2024-10-04: counted three boxes',
    });
    expect(summary).toBe('Changed house cricket: later young: gets through alive at 25 °C, eggs that hatch');
  });

  test('changed back to what the Book says is no longer the keeper’s', async () => {
    const room = await library();
    good(await editNumbers(room, { ...of, figures: { 'laying.hatchShare': 70 } }));
    good(await editNumbers(room, { ...of, figures: { 'laying.hatchShare': 62 } }));
    expect(await factsNow(room)).toBe(facts);
    expect(await room.store.ask(rowsOf('numbers'))).toEqual([]);
  });

  test('keeps the day and why of what was changed before', async () => {
    const room = await library();
    good(await editNumbers(room, { ...of, figures: { 'laying.hatchShare': 70 }, why: 'first' }));
    room.pass(3);
    const both = { 'laying.hatchShare': 70, 'laying.femaleShare': 45 };
    good(await editNumbers(room, { ...of, figures: both, why: 'second' }));
    const { laying } = await cricketOf(room);
    expect(laying!.hatchShare.note).toBe('since 2024-10-04: first');
    expect(laying!.femaleShare.note).toBe('since 2024-10-07: second');
  });

  test('is undone as one act, and done again', async () => {
    const room = await library();
    const { act } = good(await editNumbers(room, { ...of, figures: { 'laying.hatchShare': 70 } }));
    const undone = good(await undo(room, { act }));
    expect(await factsNow(room)).toBe(facts);
    good(await undo(room, { act: undone.act }));
    expect((await cricketOf(room)).laying!.hatchShare.value).toBe(0.7);
  });

  test('is reset by itself, or all of them', async () => {
    const room = await library();
    const both = { 'laying.hatchShare': 70, 'laying.femaleShare': 45 };
    good(await editNumbers(room, { ...of, figures: both }));
    good(await resetNumbers(room, { ...of, number: 'laying.hatchShare' }));
    expect((await cricketOf(room)).laying).toMatchObject({
      hatchShare: { value: 0.62, status: 'published' },
      femaleShare: { value: 0.45, status: 'yours' },
    });
    good(await resetNumbers(room, of));
    expect(await factsNow(room)).toBe(facts);
    expect(await resetNumbers(room, of)).toMatchObject({ problem: { code: 'nothing-changed' } });
  });

  test('whose reset would leave the rest at odds is not reset alone', async () => {
    const room = await library();
    const warm = { [`${NYMPH}.optimumC`]: 42, [`${NYMPH}.upperStopC`]: 45 };
    good(await editNumbers(room, { ...of, figures: warm }));
    expect(await resetNumbers(room, { ...of, number: `${NYMPH}.upperStopC` })).toMatchObject({
      problem: { code: 'does-not-fit', sentence: expect.stringContaining('Or reset all.') },
    });
  });

  test.each([
    [{ 'laying.hatchShare': 140 }, 'laying.hatchShare', '"140" is not a share from 0 to 100 %.'],
    [
      { 'stage.later-young.survival.25': -1 },
      'stage.later-young.survival.25',
      '"-1" is not a share from 0 to 100 %.',
    ],
    [{ 'adult.cv': 0 }, 'adult.cv', '"0" is not a spread from 5 to 150 % of the mean.'],
    [{ [`${NYMPH}.degreeDays`]: 'many' }, `${NYMPH}.degreeDays`, '"many" is not a sum of warmth'],
    [{ [`${NYMPH}.lowerThresholdC`]: 39 }, `${NYMPH}.lowerThresholdC`, '"39" °C is not below'],
    [{ 'species.sizeClasses.1-4-in.to': 1 }, 'species.sizeClasses.1-4-in.to', '"1" mm is not above'],
    [{ 'stage.egg.share': 50 }, 'stage.later-young.share', 'makes the stages 131.9 % of their time together'],
    [{ wings: 2 }, 'wings', '"wings" is not a number of house cricket.'],
  ] as const)('%o is refused beside %s', async (figures, field, sentence) => {
    const room = await library();
    const before = await room.store.ask(revision);
    expect(await editNumbers(room, { ...of, figures: figures as Record<string, string> })).toMatchObject({
      problem: { field, sentence: expect.stringContaining(sentence) },
    });
    expect(await room.store.ask(revision)).toBe(before);
  });

  test('edited by two people from the same page: the second is told', async () => {
    const room = await library();
    const asOf = await room.store.ask(revision);
    good(await editNumbers(room, { ...of, figures: { 'laying.hatchShare': 70 }, asOf }));
    expect(await editNumbers(room, { ...of, figures: { 'adult.cv': 40 }, asOf })).toMatchObject({
      problem: { code: 'changed-meanwhile' },
    });
  });

  test('of a species the Book does not have, or that says so already, is no act', async () => {
    const room = await library();
    expect(await editNumbers(room, { of: 'unicorn', figures: {} })).toMatchObject({
      problem: { code: 'unknown-species' },
    });
    expect(await editNumbers(room, { ...of, figures: { 'laying.hatchShare': 62 } })).toMatchObject({
      problem: { code: 'nothing-changed' },
    });
  });
});

describe('what reads the Book', () => {
  /** The nymph takes three times as long at every temperature. */
  async function slowed(room: Room) {
    const span = await spanOf(room);
    const points = span.points.value.map(({ tempC, days }) => [`${NYMPH}.points.${tempC}`, 3 * days]);
    const degreeDays = 3 * span.degreeDays.value;
    const figures = { ...Object.fromEntries(points), [`${NYMPH}.degreeDays`]: degreeDays };
    return good(await editNumbers(room, { ...of, figures }));
  }

  test('the sheet, the forecast of a bin and Sunday’s answer follow, and come back with undo', async () => {
    const { room } = await filledHome();
    const sizes = async () => {
      const { bins, ...answer } = good(await askSunday(room));
      return JSON.stringify([
        answer.spectrum,
        bins.map(({ code, died, outgrown, left }) => [code, died, outgrown, left]),
      ]);
    };
    const daysAt28 = async () => speciesSheet(await cricketOf(room), 28).hatchToAdult.days!;
    const [before, days] = [await sizes(), await daysAt28()];
    const { act } = await slowed(room);
    expect(await daysAt28()).toBeCloseTo(3 * days, 6);
    expect(await sizes()).not.toBe(before);
    good(await undo(room, { act }));
    expect(await daysAt28()).toBe(days);
    expect(await sizes()).toBe(before);
  });

  test('a size that is sold otherwise is meant by lists and forms from then on', async () => {
    const { room, send } = await filledHome();
    const figures = { 'species.sizeClasses.pinhead.from': 2.5, 'species.sizeClasses.pinhead.to': 3.5 };
    good(await editNumbers(room, { ...of, figures }));
    const bytes = new TextEncoder().encode('bin,prey,size,count\nListed,house cricket,pinhead,90\n');
    good(await importStock(room, { bytes }));
    const asked = { species: CRICKET, size: `${CRICKET}|pinhead`, heads: '80', name: 'Formed', room: 'R1' };
    await send('/start/bin', asked);
    const bins = (await loadSnapshot(room)).bins.slice(-2);
    for (const { events } of bins)
      expect(events).toContainEqual(expect.objectContaining({ fromMm: 2.5, toMm: 3.5 }));
  });
});

describe('a number of the method', () => {
  test('is changed, reaches the snapshot, and is reset', async () => {
    const { room } = await emptyHome();
    const figures = { 'method.eveningSkippedChance': 30 };
    const { summary } = good(await editNumbers(room, { of: 'method', figures, why: 'a new child' }));
    expect(summary).toBe('Changed the method: evenings skipped');
    const { policy } = (await loadSnapshot(room)).facts;
    expect(policy.eveningSkippedChance).toMatchObject({ value: 0.3, status: 'yours' });
    good(await resetNumbers(room, { of: 'method' }));
    expect((await loadSnapshot(room)).facts).toBe(room.facts);
  });

  test('that makes tight no less sure than lasting is refused', async () => {
    const { room } = await emptyHome();
    expect(await editNumbers(room, { of: 'method', figures: { 'method.tightFrom': 96 } })).toMatchObject({
      problem: {
        field: 'method.tightFrom',
        sentence: '"96" % is not below 95 %, from which a week lasts; write less.',
      },
    });
  });
});
