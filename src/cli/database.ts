/** Opens the keeper's database for one command and closes it again; only an import may make a new one. */
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { type Context, nowIn } from '../actions/index.ts';
import { type Config, readConfig } from '../config.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { isFile, openStore } from '../store/index.ts';
import type { World } from './world.ts';

export interface Opening {
  /** Path or address of the database, instead of the environment's. */
  readonly db: string | undefined;
  /** What holds where there is none: that is a Problem, one is made, or one is lent that is gone afterwards. */
  readonly missing: 'refuse' | 'make' | 'lend';
}

/** Runs something on the database. */
export async function withDatabase<T>(
  world: World,
  opening: Opening,
  use: (context: Context) => Promise<Result<T>>,
): Promise<Result<T>> {
  const config = configOf(world, opening.db);
  if (!config.ok) return config;
  const file = missingFile(config.value);
  if (file === null || opening.missing === 'make') return used(world, config.value, use);
  if (opening.missing === 'refuse') return err(noDatabase(file));
  const folder = mkdtempSync(join(tmpdir(), 'preylarder-'));
  const url = pathToFileURL(join(folder, 'lent.db')).href;
  try {
    return await used(world, { ...config.value, place: { url, authToken: undefined } }, use);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The configuration of the environment, with another database where one is named. */
const configOf = ({ environment }: World, db: string | undefined): Result<Config> =>
  readConfig(db === undefined ? environment : { ...environment, PREYLARDER_DB: db });

/** Today where the keeper lives. */
export function todayOf(world: World): Result<number> {
  const config = configOf(world, undefined);
  return config.ok ? ok(nowIn(config.value.timezone, world.instant()).today) : config;
}

function missingFile({ place }: Config): string | null {
  if (!isFile(place)) return null;
  const file = fileURLToPath(new URL(place.url));
  return existsSync(file) ? null : file;
}

const noDatabase = (file: string): Problem =>
  problem('no-database', `There is no database at ${file}. Import a list first, or name another with --db.`);

async function used<T>(
  world: World,
  { place, timezone }: Config,
  use: (context: Context) => Promise<Result<T>>,
): Promise<Result<T>> {
  const clock = () => nowIn(timezone, world.instant());
  const store = await openStore({ place, moment: clock().moment });
  if (!store.ok) return store;
  try {
    return await use({ store: store.value, facts: world.facts, clock });
  } finally {
    await store.value.close();
  }
}
