/** Puts the program together: configuration, store, door, and an end in good order. */
import { randomUUID } from 'node:crypto';
import { seedDemo } from '../seed/demo.ts';
import { ErrorPage } from '../views/pages/error.tsx';
import { LoginPage } from '../views/pages/login.tsx';
import { chanceInFull } from '../views/partials/verdict.tsx';
import { type Answering, askCover, type Context, firstRoom, nowIn } from './actions/index.ts';
import { type Config, projectRoot, readConfig } from './config.ts';
import { kindsByCode } from './facts/kinds/index.ts';
import { policy } from './facts/policy.ts';
import { speciesByCode } from './facts/prey/index.ts';
import type { Problem } from './husbandry/problems.ts';
import type { Result } from './husbandry/result.ts';
import { openStore, revision } from './store/index.ts';
import { createApp, type DoorPages, listen, logToStderr, ownNames, setPassword } from './web/index.ts';
import { mountPages } from './web/pages/index.ts';
import { answerPool } from './workers/pool.ts';

const BAD_CONFIGURATION = 2;
const CANNOT_START = 1;

const pages: DoorPages = {
  failure: ({ sentence, requestId }) => ErrorPage({ theme: 'system', sentence, advice: null, requestId }),
  login: ({ next, problem }) =>
    LoginPage({ theme: 'system', next, forms: { formId: randomUUID(), refused: refusedLogin(problem) } }),
};

const refusedLogin = (problem: Problem | null) =>
  problem === null ? null : { form: 'login', values: {}, problems: { password: problem.sentence } };

/** The value, or the sentence on stderr and the end. */
function need<T>(result: Result<T>, exitCode: number): T {
  if (result.ok) return result.value;
  process.stderr.write(`${result.problem.sentence}\n`);
  process.exit(exitCode);
}

async function start(config: Config): Promise<void> {
  for (const name of config.unknown)
    process.stderr.write(`${name} is not a setting known here; it does nothing.\n`);
  const clock = () => nowIn(config.timezone, new Date());
  const store = need(await openStore({ place: config.place, moment: clock().moment }), CANNOT_START);
  if (config.password !== null) need(await setPassword(store, config.password), CANNOT_START);
  const context: Context = { store, facts: { kinds: kindsByCode, species: speciesByCode, policy }, clock };
  need(await moveIn(context), CANNOT_START);
  const pool = answerPool();
  const { answering, underWay } = pool;
  const canLogOut = config.password !== null;
  const app = createApp(context, {
    root: projectRoot(),
    locked: config.password !== null,
    hostNames: config.hostNames,
    pages,
    log: logToStderr,
    mount: (behind) =>
      mountPages(behind, {
        context,
        answering,
        underWay,
        furnish: seedDemo,
        canLogOut,
        timezone: config.timezone,
      }),
  });
  const server = need(await listen(app, config.listenOn, config.port), CANNOT_START);
  for (const address of addressesOf(config, server.port))
    process.stdout.write(`Preylarder is at ${address}\n`);
  const stop = async (): Promise<void> => {
    await server.stop();
    await pool.close();
    await store.close();
    process.exit(0);
  };
  process.once('SIGTERM', stop);
  process.once('SIGINT', stop);
  try {
    process.stdout.write(`${await verdictOf(context, answering)}\n`);
  } catch (error) {
    logToStderr({ level: 'error', event: 'no verdict at the start', error: String(error) });
  }
}

/** A new database is furnished with the demo room; and there is always a room. */
async function moveIn(context: Context): Promise<Result<unknown>> {
  const isNew = (await context.store.ask(revision)) === 0;
  const furnished = isNew ? await seedDemo(context) : null;
  return furnished === null || furnished.ok ? firstRoom(context) : furnished;
}

/** The week's verdict, and how sure it is. */
async function verdictOf(context: Context, answering: Answering): Promise<string> {
  const answer = await askCover(context, { answering });
  if (!answer.ok) return answer.problem.sentence;
  const { headline, verdict, nothingMissed } = answer.value.answer;
  const sure = `Nobody misses a meal in ${chanceInFull(nothingMissed)}.`;
  return verdict === 'empty' ? headline : `${headline} ${sure}`;
}

/** Where a browser finds it: this machine, and behind a password the network. */
function addressesOf({ password, hostNames }: Config, port: number): readonly string[] {
  const isOutside = (name: string): boolean => /^\d+(\.\d+){3}$/.test(name) && !name.startsWith('127.');
  const outside = password === null ? [] : [...hostNames, ...ownNames().filter(isOutside)];
  return ['localhost', ...outside].map((name) => `http://${name}:${port}`);
}

await start(need(readConfig(process.env), BAD_CONFIGURATION));
