/**
 * Every step of the schema, oldest first; new steps are only ever added at the end.
 * A step that adds a column to a noun also writes its default into the images kept in `change`.
 */
import { first } from './001-first.ts';
import { comingsAndGoings } from './002-comings-and-goings.ts';
import type { Migration } from './migration.ts';

export const migrations: readonly Migration[] = [first, comingsAndGoings];
