/** Tonight's round: who is due, what each is offered, who is left alone. */
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../../src/husbandry/animals/kind.ts';
import { eaterOf, ruleOf } from '../../../src/husbandry/animals/stage.ts';
import { windowFor } from '../../../src/husbandry/prey/matching.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { eveningOf } from '../../../src/husbandry/supply/evening.ts';
import {
  animalWith,
  countedBin,
  facts,
  mixedAnimals,
  mixedBins,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const juvenile = (over: object = {}) =>
  animalWith({ code: 'A1', kind: 'brachypelma-hamorii', gaugeMm: 50, lastTaken: TODAY - 30, ...over });
const crickets = countedBin('B1', 'acheta-domesticus', { heads: 100, fromMm: 8, toMm: 14 });
const roundOf = (over: object) => eveningOf(snapshotWith({ bins: [crickets], ...over }));

describe('who is due', () => {
  const rule = ruleOf(facts.kinds.get('brachypelma-hamorii') as Kind, juvenile());
  const [least, most] = rule.intervalDays.value;

  it('comes due in the middle of the interval, not before', () => {
    const middle = Math.round((least + most) / 2);
    const fedAgo = (days: number) =>
      roundOf({ animals: [juvenile({ lastTaken: TODAY - days })] }).servings.length;
    expect([fedAgo(middle - 1), fedAgo(middle)]).toEqual([0, 1]);
  });

  it('comes due earlier when tonight is the last feeding day of its range', () => {
    const onlyToday = [false, false, false, false, false, false, false].map(
      (_, day) => day === (TODAY + 3) % 7,
    );
    const calendar = { feedingWeekdays: onlyToday, absences: [] };
    const round = roundOf({ calendar, animals: [juvenile({ lastTaken: TODAY - least })] });
    expect(round.feedingDay).toBe(true);
    expect(round.servings.map(({ animal }) => animal)).toEqual(['A1']);
  });

  it('is late past the end of the range', () => {
    const states = [most, most + 1].map(
      (days) => roundOf({ animals: [juvenile({ lastTaken: TODAY - days })] }).servings[0]?.state,
    );
    expect(states).toEqual(['due', 'late']);
  });

  it('is asked again when the retry after a refusal has passed', () => {
    const refused = (days: number) =>
      roundOf({ animals: [juvenile({ lastOffered: TODAY - days, lastOutcome: 'refused' })] }).servings.length;
    expect(refused(rule.retryDays.value - 1)).toBe(0);
    expect(refused(rule.retryDays.value + most)).toBe(1);
  });

  it('is nobody on an evening without feeding', () => {
    const calendar = { feedingWeekdays: Array(7).fill(true), absences: [{ from: TODAY, to: TODAY + 2 }] };
    const round = roundOf({ calendar, animals: [juvenile()] });
    expect(round.feedingDay).toBe(false);
    expect(round.servings).toEqual([]);
  });
});

describe('who is left alone', () => {
  it('is an animal that is hardening, until the day said', () => {
    const round = roundOf({ animals: [juvenile({ lastMoult: { earliest: TODAY - 4, found: TODAY - 2 } })] });
    expect(round.servings).toEqual([]);
    expect(round.withheld[0]?.reason).toMatch(/^moulted; nothing before \w{3} \d+ \w{3}/);
  });

  it('is an animal seen in premoult, but no longer once it has moulted and hardened', () => {
    const seen = juvenile({ premoultSeen: TODAY - 5 });
    expect(roundOf({ animals: [seen] }).withheld[0]?.reason).toMatch(/^about to moult/);
    const since = juvenile({
      premoultSeen: TODAY - 60,
      lastMoult: { earliest: TODAY - 41, found: TODAY - 40 },
    });
    expect(roundOf({ animals: [since] }).servings).toHaveLength(1);
  });
});

describe('what is offered', () => {
  const snapshot = snapshotWith({ animals: mixedAnimals(150), bins: mixedBins(60) });
  const round = eveningOf(snapshot);
  const offered = round.servings.flatMap(({ animal, offer }) => (offer ? [{ animal, offer }] : []));

  it('lies within each own window, and live prey within its live part', () => {
    expect(offered.length).toBeGreaterThan(30);
    for (const { animal, offer } of offered) {
      const eater = snapshot.animals.find(({ code }) => code === animal) as (typeof snapshot.animals)[number];
      const kind = facts.kinds.get(eater.kind) as Kind;
      const window = windowFor(
        ruleOf(kind, eater),
        eaterOf(kind, eater),
        facts.species.get(offer.species) as PreySpecies,
      );
      expect(offer.fromMm).toBeGreaterThanOrEqual(window?.minMm as number);
      const longest =
        offer.portions > 1 ? (window?.maxMm as number) * Math.cbrt(offer.portions) : window?.maxMm;
      expect(offer.toMm).toBeLessThanOrEqual((offer.killFirst ? longest : window?.liveMaxMm) as number);
    }
  });

  it('is never more than a bin holds', () => {
    const taken = new Map<string, number>();
    for (const { offer } of offered) taken.set(offer.bin, (taken.get(offer.bin) ?? 0) + offer.heads);
    for (const [bin, heads] of taken) {
      const event = snapshot.bins.find(({ code }) => code === bin)?.events[0];
      if (event?.kind === 'counted') expect(heads).toBeLessThanOrEqual(event.heads + 1);
    }
  });

  it('says so when nothing fits', () => {
    const spiderling = animalWith({
      code: 'A1',
      kind: 'brachypelma-hamorii',
      gaugeMm: 6,
      lastTaken: TODAY - 20,
    });
    const large = countedBin('B1', 'acheta-domesticus', { heads: 50, fromMm: 18, toMm: 20 });
    const [serving] = eveningOf(snapshotWith({ animals: [spiderling], bins: [large] })).servings;
    expect(serving).toMatchObject({ offer: null, note: 'Nothing in the larder fits.' });
  });
});
