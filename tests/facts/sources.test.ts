/** Every number of the facts leads to a work, to common practice or to memory, and says so truly. */
import { describe, expect, it } from 'vitest';
import { kinds } from '../../src/facts/kinds/index.ts';
import { policy } from '../../src/facts/policy.ts';
import { preySpecies } from '../../src/facts/prey/index.ts';
import { hatchToFirstFeed, layingToFirstFeed, sacComesOff } from '../../src/facts/sacs.ts';
import { sources } from '../../src/facts/sources.ts';
import { sourcedIn } from './walk.ts';

const numbers = [
  ...sourcedIn({ preySpecies, kinds, policy, hatchToFirstFeed, layingToFirstFeed, sacComesOff }),
];
const kindOf = { published: 'work', 'common practice': 'common practice', 'from memory': 'from memory' };

describe('sources', () => {
  it('resolves every source to a work with author, year and title, to practice or to memory', () => {
    for (const [id, source] of Object.entries(sources)) {
      if (source.kind !== 'work') {
        expect(source.note.length, id).toBeGreaterThan(10);
        continue;
      }
      expect(source.author.length, id).toBeGreaterThan(3);
      expect(source.title.length, id).toBeGreaterThan(10);
      expect(typeof source.year === 'number' || source.year === 'year not shown', id).toBe(true);
    }
  });

  it('finds the source of every number, of the kind its status claims', () => {
    expect(numbers.length).toBeGreaterThan(3000);
    const wrong = numbers.filter(
      ([, { source, status }]) => status === 'yours' || sources[source]?.kind !== kindOf[status],
    );
    expect(wrong.map(([path]) => path)).toEqual([]);
  });

  it('carries no work, practice or memory that no number rests on', () => {
    const cited = new Set(
      numbers.flatMap(([, { source, others = [] }]) => [source, ...others.map((other) => other.source)]),
    );
    expect(Object.keys(sources).filter((id) => !cited.has(id))).toEqual([]);
  });

  it('says why a number is the default wherever other works say otherwise, and names those works', () => {
    const contested = numbers.filter(([, { others, why }]) => others !== undefined || why !== undefined);
    expect(contested.length).toBeGreaterThan(25);
    const bare = contested.filter(([, { others = [], why = '' }]) => others.length === 0 || why.length < 10);
    expect(bare.map(([path]) => path)).toEqual([]);
    const said = contested.flatMap(([, { others = [] }]) => others);
    expect(said.filter((other) => sources[other.source] === undefined || other.said === '')).toEqual([]);
  });

  it('gives every number a unit', () => {
    expect(numbers.filter(([, { unit }]) => unit === '').map(([path]) => path)).toEqual([]);
  });
});
