/** The Book with the keeper's changes: nothing changed is the Book itself, and whatever is taken back is the Book's. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kinds } from '../../../src/facts/kinds/index.ts';
import { factsWith as bookWith, factsTrying } from '../../../src/facts/own/facts-with.ts';
import type { ChangedKind, KindChanges } from '../../../src/husbandry/animals/own-values.ts';
import type { Facts } from '../../../src/husbandry/snapshot.ts';
import { facts } from '../../support/room.ts';

const factsWith = (book: Facts, kinds: readonly ChangedKind[]) => bookWith(book, { kinds, numbers: [] });
const KNEE = 'brachypelma-hamorii';
const DAY = 20_000;
const changed = (changes: Partial<KindChanges>, over: Partial<ChangedKind> = {}): ChangedKind => ({
  code: KNEE,
  base: null,
  changes: { kind: {}, stages: {}, ...changes },
  ...over,
});
const longer = changed({
  stages: { young: { intervalDays: { value: [5, 9], day: DAY, why: 'they stay plump' } } },
});

describe('the Book with changes', () => {
  it('is the Book itself, the very object, where nothing is changed', () => {
    expect(factsWith(facts, [])).toBe(facts);
    const merged = factsWith(facts, [changed({})]);
    expect(merged.kinds.get(KNEE)).toBe(facts.kinds.get(KNEE));
  });

  it('is one object for the same changes, and another for others', () => {
    const once = factsWith(facts, [longer]);
    expect(factsWith(facts, structuredClone([longer]))).toBe(once);
    expect(factsWith(facts, [changed({ stages: { young: {} } })])).not.toBe(once);
  });

  it('puts a value of the keeper in place with its day and why; unit and every other number stay', () => {
    const [young, ...rest] = factsWith(facts, [longer]).kinds.get(KNEE)!.stages;
    const [was, ...others] = facts.kinds.get(KNEE)!.stages;
    expect(young!.intervalDays).toEqual({
      value: [5, 9],
      unit: was!.intervalDays.unit,
      source: 'keeper',
      status: 'yours',
      note: 'since 2024-10-04: they stay plump',
    });
    expect({ ...young, intervalDays: null }).toEqual({ ...was, intervalDays: null });
    expect(rest.every((rule, at) => rule === others[at])).toBe(true);
  });

  it('leaves every other kind as the very object it was', () => {
    const merged = factsWith(facts, [longer]);
    const others = [...facts.kinds].filter(([code]) => code !== KNEE);
    expect(others.every(([code, kind]) => merged.kinds.get(code) === kind)).toBe(true);
    expect(merged.species).toBe(facts.species);
  });

  it('gives a kind of the keeper its own name and code, and the cautions of the one it came from', () => {
    const own = changed(
      { kind: { name: { value: 'Brachypelma nova', day: DAY }, aliases: { value: [], day: DAY } } },
      { code: 'K1', base: KNEE },
    );
    const made = factsWith(facts, [own]).kinds.get('K1')!;
    const base = facts.kinds.get(KNEE)!;
    expect(made).toMatchObject({ code: 'K1', madeFrom: KNEE, name: 'Brachypelma nova', aliases: [] });
    expect(made.cautions).toEqual(base.cautions);
    expect(made.stages.map(({ window }) => window)).toEqual(base.stages.map(({ window }) => window));
  });

  it('leaves out what was made from a kind that is no longer in the Book', () => {
    const lost = changed({}, { code: 'K1', base: 'unicorn' });
    expect(factsWith(facts, [lost]).kinds.size).toBe(facts.kinds.size);
  });

  it('tries a change without losing what is kept', () => {
    const kept = factsWith(facts, [longer]);
    const tried = factsTrying({ book: facts, facts: kept }, changed({}));
    expect(tried.kinds.get(KNEE)).toBe(facts.kinds.get(KNEE));
    expect(factsWith(facts, [longer])).toBe(kept);
  });
});

const stage = fc.constantFrom('young', 'juvenile', 'subadult', 'adult', 'mature male');
const own = <T>(value: fc.Arbitrary<T>) => value.map((each) => ({ value: each, day: DAY }));
const stageChange = fc.record(
  {
    graceDays: own(fc.nat(30)),
    urgency: own(fc.constantFrom('fragile', 'ordinary', 'robust')),
    portions: own(fc.integer({ min: 1, max: 4 })),
    moultDays: own(fc.integer({ min: 1, max: 900 })),
  },
  { requiredKeys: [] },
);
const anyChange = fc.record({
  code: fc.constantFrom(...kinds.map(({ code }) => code)),
  stages: fc.dictionary(stage, stageChange),
});

it('whatever is changed, taking all of it back gives the very kinds of the Book', () => {
  fc.assert(
    fc.property(fc.uniqueArray(anyChange, { selector: ({ code }) => code, maxLength: 6 }), (changes) => {
      const rows = changes.map(({ code, stages }) => changed({ stages } as Partial<KindChanges>, { code }));
      const merged = factsWith(facts, rows);
      for (const { code, changes: wanted } of rows)
        for (const rule of merged.kinds.get(code)!.stages) {
          const urgency = wanted.stages[rule.stage]?.urgency?.value;
          if (urgency !== undefined) expect(rule.urgency).toBe(urgency);
          if (rule.moult === null)
            expect(facts.kinds.get(code)!.stages.find((each) => each.stage === rule.stage)!.moult).toBeNull();
        }
      const back = factsWith(
        facts,
        rows.map(({ code }) => changed({}, { code })),
      );
      expect([...back.kinds]).toEqual([...facts.kinds]);
      for (const [code, kind] of back.kinds) expect(kind).toBe(facts.kinds.get(code));
    }),
  );
});
