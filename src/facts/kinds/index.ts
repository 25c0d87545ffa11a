/** The kinds of animals the product knows, and their look-up by code; one general kind stands for each group. */
import type { Kind } from '../../husbandry/animals/index.ts';
import { centipedes } from './centipedes.ts';
import { frogs } from './frogs.ts';
import { lizards } from './lizards.ts';
import { mantids } from './mantids.ts';
import { scorpions } from './scorpions.ts';
import { spiders } from './spiders.ts';
import { tarantulas } from './tarantulas.ts';
import { whipSpiders } from './whip-spiders.ts';

export const kinds: readonly Kind[] = [
  ...tarantulas,
  ...spiders,
  ...scorpions,
  ...mantids,
  ...centipedes,
  ...whipSpiders,
  ...frogs,
  ...lizards,
];

export const kindsByCode: ReadonlyMap<string, Kind> = new Map(kinds.map((kind) => [kind.code, kind]));
