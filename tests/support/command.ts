/** Runs the command line in this process: on a fresh folder, at a fixed hour, with what it says kept. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { run } from '../../src/cli/run.ts';
import type { World } from '../../src/cli/world.ts';
import { facts } from './room.ts';
import { freshFolder } from './store-at.ts';

/** Sunday 2026-11-29, in the evening. */
export const INSTANT = new Date('2026-11-29T18:00:00Z');

export interface Said {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

export interface Terminal {
  readonly db: string;
  readonly type: (...words: readonly string[]) => Promise<Said>;
  /** Writes a file and answers with its path. */
  readonly file: (name: string, content: string | Uint8Array) => string;
}

/** A terminal whose database, not there at first, is the environment's. */
export function terminal(): Terminal {
  const folder = freshFolder();
  const db = join(folder, 'room.db');
  const file = (name: string, content: string | Uint8Array) => {
    writeFileSync(join(folder, name), content);
    return join(folder, name);
  };
  const type = async (...words: readonly string[]): Promise<Said> => {
    const [out, err]: [string[], string[]] = [[], []];
    const world: World = {
      environment: { PREYLARDER_DB: db, PREYLARDER_TIMEZONE: 'UTC' },
      facts,
      instant: () => INSTANT,
      out: (line) => out.push(line),
      err: (line) => err.push(line),
    };
    return { exit: await run(words, world), out: out.join('\n'), err: err.join('\n') };
  };
  return { db, type, file };
}

const pencilFile = (name: string) => fileURLToPath(new URL(`pencil-room/${name}`, import.meta.url));
/** Six animals and two lots, small enough to be followed with a pencil. */
export const PENCIL_ANIMALS = pencilFile('animals.csv');
export const PENCIL_LOTS = pencilFile('lots.csv');

/** A terminal at the pencil room. */
export async function pencilRoom(): Promise<Terminal> {
  const at = terminal();
  await at.type('import', PENCIL_ANIMALS);
  await at.type('import', PENCIL_LOTS, '--stock');
  return at;
}
