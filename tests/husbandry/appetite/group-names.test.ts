/** What a demand group is called. */
import { expect, test } from 'vitest';
import type { Animal } from '../../../src/husbandry/animals/animal.ts';
import type { Kind } from '../../../src/husbandry/animals/kind.ts';
import { eaterOf, ruleOf } from '../../../src/husbandry/animals/stage.ts';
import { groupsOf } from '../../../src/husbandry/appetite/groups.ts';
import { animalWith, facts } from '../../support/room.ts';

function nameOf(given: Pick<Animal, 'kind' | 'gaugeMm'>): string | undefined {
  const animal = animalWith({ code: 'A1', ...given });
  const kind = facts.kinds.get(animal.kind) as Kind;
  const member = {
    animal: animal.code,
    now: true,
    kind,
    rule: ruleOf(kind, animal),
    eater: eaterOf(kind, animal),
  };
  return groupsOf([member], facts).groups[0]?.name;
}

test.each([
  ['brachypelma-hamorii', 8, 'tarantula spiderlings'],
  ['brachypelma-hamorii', 140, 'adult tarantulas'],
  ['dendrobates-tinctorius', 14, 'froglets'],
])('%s of %i mm: %s', (kind, gaugeMm, name) => {
  expect(nameOf({ kind, gaugeMm })).toBe(name);
});
