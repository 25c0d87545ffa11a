/** The numbers of prey species and of the method: all may be changed, each by itself, and taken back is the Book's. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { whyNotPrey } from '../../../src/actions/prey-bounds.ts';
import { factsWith, preyWith } from '../../../src/facts/own/facts-with.ts';
import { methodNumbers } from '../../../src/facts/own/method-numbers.ts';
import { preyNumbers } from '../../../src/facts/own/prey-numbers.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/index.ts';
import { facts } from '../../support/room.ts';

const species = [...facts.species.values()];
const cricket = facts.species.get('acheta-domesticus')!;
const DAY = 20_000;
const changed = (code: string, changes: Readonly<Record<string, number>>) => ({
  code,
  changes: Object.fromEntries(Object.entries(changes).map(([key, value]) => [key, { value, day: DAY }])),
});

/** Paths of every sourced number, or list with numbers, in plain data. */
function sourcedIn(value: unknown, path: readonly string[] = []): readonly string[] {
  if (value === null || typeof value !== 'object') return [];
  if ('status' in value && 'value' in value) return typeof value.value === 'string' ? [] : [path.join('/')];
  return Object.entries(value).flatMap(([name, each]) => sourcedIn(each, [...path, name]));
}

describe.each(species)('$commonName', (prey: PreySpecies) => {
  it('has every sourced number in the list of those that may be changed, but its curve of lengths', () => {
    const listed = preyNumbers(prey).flatMap(({ path, sourced }) => (sourced ? [path.join('/')] : []));
    const empty = prey.spans.flatMap(({ points }, i) => (points.value.length ? [] : [`spans/${i}/points`]));
    expect([...listed, ...empty, 'lengthByDevelopment'].toSorted()).toEqual(sourcedIn(prey).toSorted());
  });

  it('names each figure once, in letters fit for a page, and finds it where it says', () => {
    const figures = preyNumbers(prey).flatMap((number) => number.figures);
    const keys = figures.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { key, path, value } of figures) {
      expect(key).toMatch(/^[\w.-]+$/);
      expect(path.reduce<unknown>((data, step) => (data as never)[step], prey)).toBe(value);
    }
  });

  it('stands within its own bounds', () => {
    expect(whyNotPrey(prey)).toBeNull();
  });

  it('has each figure changed by itself, and is the very object without changes', () => {
    expect(preyWith(prey, {})).toBe(prey);
    const figures = preyNumbers(prey).flatMap((number) => number.figures);
    fc.assert(
      fc.property(fc.subarray(figures, { minLength: 1 }), (some) => {
        const own = Object.fromEntries(some.map(({ key, value }) => [key, { value: value + 1, day: DAY }]));
        const after = preyNumbers(preyWith(prey, own)).flatMap((number) => number.figures);
        expect(after.map(({ value }) => value)).toEqual(
          figures.map(({ key, value }) => (own[key] ? value + 1 : value)),
        );
      }),
      { numRuns: 20 },
    );
  });
});

describe('a changed number', () => {
  const key = preyNumbers(cricket).find(({ what }) => what === 'eggs that hatch')!.key;

  it('is the keeper’s, with its day, in a species that is a new object; all others are the Book’s', () => {
    const merged = factsWith(facts, { kinds: [], numbers: [changed(cricket.code, { [key]: 0.5 })] });
    expect(merged.species.get(cricket.code)!.laying!.hatchShare).toEqual({
      value: 0.5,
      unit: '1',
      source: 'keeper',
      status: 'yours',
      note: 'since 2024-10-04',
    });
    expect(merged.kinds).toStrictEqual(facts.kinds);
    expect(merged.policy).toBe(facts.policy);
    for (const other of species.filter(({ code }) => code !== cricket.code))
      expect(merged.species.get(other.code)).toBe(other);
  });

  it('that is one point of several says that the others are the Book’s', () => {
    const number = preyNumbers(cricket).find(({ figures }) => figures.length > 1)!;
    const after = preyWith(cricket, changed('', { [number.figures[0]!.key]: 99 }).changes);
    expect(preyNumbers(after).find((each) => each.key === number.key)!.sourced!.note).toBe(
      'since 2024-10-04; the others as the Book has them',
    );
  });

  it('of a species or a number the Book no longer has is left aside', () => {
    const numbers = [changed('gone', { [key]: 1 }), changed(cricket.code, { 'span.gone.points.25': 3 })];
    expect(factsWith(facts, { kinds: [], numbers }).species.get(cricket.code)).toBe(cricket);
  });

  it('of the method is in the policy', () => {
    const of = methodNumbers(facts.policy).find(({ what }) => what === 'evenings skipped')!;
    const merged = factsWith(facts, { kinds: [], numbers: [changed('method', { [of.key]: 0.3 })] });
    expect(merged.policy.eveningSkippedChance).toMatchObject({ value: 0.3, status: 'yours' });
    expect(merged.species).toBe(facts.species);
  });
});
