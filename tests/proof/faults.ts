/**
 * Seeds one fault at a time into a copy of the tree and runs the tests: each must turn at least one red.
 * `npx tsx tests/proof/faults.ts [name ...] [--keep]`; --keep writes the table to tests/proof/results/faults.md.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Fault, faults } from './fault-list.ts';
import { planFaults } from './fault-list-plan.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const LONGEST_SECONDS = 900;
const PARTS = ['src', 'views', 'seed', 'tests', 'package.json', 'tsconfig.json'];

/** A copy of the tree that borrows the installed packages. */
function copyOfTree(): string {
  const folder = mkdtempSync(join(tmpdir(), 'preylarder-faults-'));
  for (const part of PARTS) cpSync(join(ROOT, part), join(folder, part), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
  return folder;
}

/** Puts the fault in; it is an error of this list when its place is not found exactly once. */
function seed(folder: string, { file, from, to, name }: Fault): () => void {
  const path = join(folder, file);
  const sound = readFileSync(path, 'utf8');
  const places = sound.split(from).length - 1;
  if (places !== 1) throw new Error(`${name}: "${from}" stands ${places} times in ${file}`);
  writeFileSync(
    path,
    sound.replace(from, () => to),
  );
  return () => writeFileSync(path, sound);
}

interface Outcome {
  readonly fault: Fault;
  readonly failed: number;
  readonly first: string;
}

/** Runs the fault's tests until the first red one; tests that never end have noticed it too. */
function testsWith(folder: string, fault: Fault): Outcome {
  const report = join(folder, 'report.json');
  rmSync(report, { force: true });
  const vitest = [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--config',
    'tests/vitest.config.ts',
    '--bail',
    '1',
    // A slow machine is no red test.
    '--testTimeout',
    '300000',
    '--hookTimeout',
    '300000',
  ];
  const told = ['--reporter', 'json', '--outputFile', report, ...fault.tests];
  const { status } = spawnSync(
    'timeout',
    ['-k', '5', `${LONGEST_SECONDS}`, process.execPath, ...vitest, ...told],
    {
      cwd: folder,
      stdio: 'ignore',
    },
  );
  if (!existsSync(report)) return { fault, failed: 1, first: `did not end (exit ${status})` };
  const { numFailedTests, testResults } = JSON.parse(readFileSync(report, 'utf8')) as Report;
  const red = testResults
    .flatMap(({ assertionResults }) => assertionResults)
    .find(({ status: state }) => state === 'failed');
  const broken = testResults.find(
    ({ status: state, assertionResults }) => state === 'failed' && assertionResults.length === 0,
  );
  const failed = numFailedTests + Number(broken !== undefined);
  return { fault, failed, first: red?.fullName ?? broken?.name ?? '' };
}

interface Report {
  readonly numFailedTests: number;
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string; readonly fullName: string }[];
  }[];
}

const row = ({ fault, failed, first }: Outcome): string =>
  `| ${fault.name} | ${fault.file} | ${failed > 0 ? 'found' : '**missed**'} | ${first.replaceAll('|', '/')} |`;

const words = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const wanted = [...faults, ...planFaults].filter(({ name }) => words.length === 0 || words.includes(name));
const folder = copyOfTree();
const lines = ['| fault | file | tests | first red test |', '|---|---|---|---|'];
let missed = 0;
for (const fault of wanted) {
  const mend = seed(folder, fault);
  const outcome = testsWith(folder, fault);
  mend();
  missed += Number(outcome.failed === 0);
  lines.push(row(outcome));
  process.stdout.write(`${row(outcome)}\n`);
}
rmSync(folder, { recursive: true, force: true });
const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { cwd: ROOT, encoding: 'utf8' }).trim();
const closing = `${wanted.length - missed} of ${wanted.length} faults found, at ${commit}`;
process.stdout.write(`${closing}\n`);
if (process.argv.includes('--keep')) {
  writeFileSync(
    join(ROOT, 'tests/proof/results/faults.md'),
    `# Seeded faults\n\n${lines.join('\n')}\n\n${closing}\n`,
  );
}
process.exit(missed === 0 ? 0 : 1);
