/** The command line: hands the process's words, streams and clock to the commands. */
import { kindsByCode } from '../facts/kinds/index.ts';
import { policy } from '../facts/policy.ts';
import { speciesByCode } from '../facts/prey/index.ts';
import { run } from './run.ts';

// Whoever reads may stop early, as `head` does.
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => process.exit(code === 'EPIPE' ? 0 : 2));

process.exitCode = await run(process.argv.slice(2), {
  environment: process.env,
  facts: { kinds: kindsByCode, species: speciesByCode, policy },
  instant: () => new Date(),
  out: (line) => process.stdout.write(`${line}\n`),
  err: (line) => process.stderr.write(`${line}\n`),
});
