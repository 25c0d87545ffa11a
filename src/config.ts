/** The environment, read once: what is said there, what holds otherwise, and a sentence for a value that cannot be. */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { z } from 'zod';
import { type Problem, problem } from './husbandry/problems.ts';
import { err, ok, type Result } from './husbandry/result.ts';

export interface Config {
  /** Where the database lives: a file, or a libSQL server and its token. */
  readonly place: { readonly url: string; readonly authToken: string | undefined };
  readonly port: number;
  /** Address listened on: this machine alone, or the network when there is a password. */
  readonly listenOn: string;
  readonly password: string | null;
  /** Names by which other devices call this server, besides its addresses. */
  readonly hostNames: readonly string[];
  /** IANA name of the keeper's time zone. */
  readonly timezone: string;
  /** Variables of ours that mean nothing. */
  readonly unknown: readonly string[];
}

type Environment = Readonly<Record<string, string | undefined>>;

const MOST_PORT = 65_535;
const SHORTEST_PASSWORD = 8;
const KNOWN = ['DB', 'DB_TOKEN', 'DB_TOKEN_FILE', 'PASSWORD', 'PASSWORD_FILE', 'TIMEZONE', 'HOST'];

const schema = z.object({
  PORT: z
    .string()
    .refine((text) => /^\d+$/.test(text.trim()) && Number(text) <= MOST_PORT, {
      error: ({ input }) => `PORT is "${String(input)}"; give a number from 0 to ${MOST_PORT}, such as 8181.`,
    })
    .transform(Number)
    .default(8181),
  PREYLARDER_DB: z.string().optional(),
  PREYLARDER_DB_TOKEN: z.string().optional(),
  PREYLARDER_PASSWORD: z
    .string()
    .min(SHORTEST_PASSWORD, { error: `PREYLARDER_PASSWORD is shorter than ${SHORTEST_PASSWORD} characters.` })
    .optional(),
  PREYLARDER_TIMEZONE: z
    .string()
    .refine(isTimezone, {
      error: ({ input }) => `PREYLARDER_TIMEZONE is "${String(input)}"; give a name such as Europe/Berlin.`,
    })
    .default(Intl.DateTimeFormat().resolvedOptions().timeZone),
  PREYLARDER_HOST: z.string().optional(),
});

/** The configuration an environment says, or the first value that cannot be. */
export function readConfig(environment: Environment): Result<Config> {
  const filled = withSecrets(environment);
  if (!filled.ok) return filled;
  const found = schema.safeParse(filled.value);
  if (!found.success) return err(problem('bad-configuration', found.error.issues[0]!.message));
  const said = found.data;
  const hostNames = (said.PREYLARDER_HOST ?? '').split(',').map((name) => name.trim().toLowerCase());
  const password = said.PREYLARDER_PASSWORD ?? null;
  if (said.PREYLARDER_HOST !== undefined && password === null)
    return err(hostWithoutPassword(said.PREYLARDER_HOST));
  return ok({
    place: { url: urlOf(said.PREYLARDER_DB), authToken: said.PREYLARDER_DB_TOKEN },
    port: said.PORT,
    listenOn: password === null ? '127.0.0.1' : '0.0.0.0',
    password,
    hostNames: hostNames.filter((name) => name !== ''),
    timezone: said.PREYLARDER_TIMEZONE,
    unknown: unknownIn(environment),
  });
}

/** The folder of package.json, above wherever this file was built to. */
export function projectRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) folder = dirname(folder);
  return folder;
}

/** Empty values count as unsaid; secrets may lie in files. */
function withSecrets(environment: Environment): Result<Environment> {
  const said = Object.fromEntries(Object.entries(environment).filter(([, value]) => value?.trim() !== ''));
  for (const name of ['PREYLARDER_PASSWORD', 'PREYLARDER_DB_TOKEN']) {
    const file = said[`${name}_FILE`];
    if (file === undefined) continue;
    if (!existsSync(file))
      return err(problem('bad-configuration', `${name}_FILE is "${file}", but there is no such file.`));
    said[name] = readFileSync(file, 'utf8').replace(/\r?\n$/, '');
  }
  return ok(said);
}

const hostWithoutPassword = (host: string): Problem =>
  problem(
    'bad-configuration',
    `PREYLARDER_HOST is "${host}", but without PREYLARDER_PASSWORD only this machine is served. Set both or neither.`,
  );

function isTimezone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone !== '';
  } catch {
    return false;
  }
}

/** A URL as it is; a path from where the program was started; by default data/preylarder.db in the project. */
function urlOf(database: string | undefined): string {
  if (database === undefined) return pathToFileURL(join(projectRoot(), 'data', 'preylarder.db')).href;
  return /^(libsql|https?|file):/.test(database) ? database : pathToFileURL(resolve(database)).href;
}

const unknownIn = (environment: Environment): readonly string[] =>
  Object.keys(environment).filter(
    (name) => name.startsWith('PREYLARDER_') && !KNOWN.includes(name.slice('PREYLARDER_'.length)),
  );
