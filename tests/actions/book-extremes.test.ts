/** Every number of prey at the ends of its bounds: the species still has a sheet, in plain numbers. */
import { expect, test } from 'vitest';
import { figureEnds, figureKept } from '../../src/actions/measure-bounds.ts';
import { whyNotPrey } from '../../src/actions/prey-bounds.ts';
import { preyWith } from '../../src/facts/own/facts-with.ts';
import { preyNumbers } from '../../src/facts/own/prey-numbers.ts';
import { speciesSheet } from '../../src/husbandry/larder/index.ts';
import { facts } from '../support/room.ts';

const TEMPS = [12, 28];

/** Paths of what is no plain number in a sheet. */
function strange(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) && value >= 0 ? [] : [`${path}: ${value}`];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([name, each]) => strange(each, `${path}/${name}`));
}

test.each([...facts.species.values()])('$commonName', (prey) => {
  let tried = 0;
  for (const { measure, figures } of preyNumbers(prey))
    for (const { key } of figures)
      for (const end of figureEnds(measure)) {
        const changed = preyWith(prey, { [key]: { value: figureKept(measure, end), day: 1 } });
        if (whyNotPrey(changed) !== null) continue;
        tried += 1;
        for (const tempC of TEMPS)
          expect(strange(speciesSheet(changed, tempC)), `${key} = ${end}`).toEqual([]);
      }
  expect(tried).toBeGreaterThan(20);
});
