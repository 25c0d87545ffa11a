/** Which rows name rows of another noun: the noun that names, its field, the noun named. */
import type { Noun } from './nouns.ts';

export const NAMING: readonly (readonly [noun: Noun, field: string, named: Noun])[] = [
  ['animal', 'room', 'room'],
  ['bin', 'room', 'room'],
  ['planned_change', 'room', 'room'],
  ['delivery', 'bin', 'bin'],
  ['planned_change', 'animal', 'animal'],
  ['animal', 'kind', 'kind'],
  ['planned_change', 'animalKind', 'kind'],
  ['offer', 'supplier', 'supplier'],
  ['purchase', 'supplier', 'supplier'],
  ['delivery', 'purchase', 'purchase'],
  ['delivery', 'offer', 'offer'],
];
