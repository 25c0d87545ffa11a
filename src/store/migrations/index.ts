/**
 * Every step of the schema, oldest first; new steps are only ever added at the end.
 * A step that adds a column to a noun also writes its default into the images kept in `change`.
 */
import { first } from './001-first.ts';
import { kinds } from './002-kinds.ts';
import { roomsRemoved } from './003-rooms-removed.ts';
import { sacs } from './004-sacs.ts';
import { comingsAndGoings } from './005-comings-and-goings.ts';
import { larder } from './006-larder.ts';
import { placed } from './007-placed.ts';
import { numbers } from './008-numbers.ts';
import { market } from './009-market.ts';
import { rests } from './010-rests.ts';
import type { Migration } from './migration.ts';

export const migrations: readonly Migration[] = [
  first,
  kinds,
  roomsRemoved,
  sacs,
  comingsAndGoings,
  larder,
  placed,
  numbers,
  market,
  rests,
];
