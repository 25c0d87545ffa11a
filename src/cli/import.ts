/** `import`: brings in a list of animals or of live prey, all of it or nothing. */
import { readFile, stat } from 'node:fs/promises';
import { importAnimals, importStock } from '../actions/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import {
  ANIMAL_COLUMNS,
  DATE_ORDERS,
  type IntakeOptions,
  LENGTH_UNITS,
  STOCK_COLUMNS,
  sizeProblem,
} from '../intake/index.ts';
import { answered, refused } from './answering.ts';
import { withDatabase } from './database.ts';
import { type Brought, importLines, troubleLines } from './import-text.ts';
import { atMost, oneOf, pairs } from './values.ts';
import { optionValue, readWords, type Words } from './words.ts';
import { type Command, EXIT, type World } from './world.ts';

const OPTIONS = {
  'dry-run': 'switch',
  stock: 'switch',
  dates: 'value',
  unit: 'value',
  map: 'values',
  answer: 'values',
  db: 'value',
} as const;

export const importList: Command = async (given, world) => {
  const words = readWords(given, OPTIONS);
  if (!words.ok) return refused(world, words.problem);
  const options = optionsIn(words.value);
  const file = fileIn(words.value);
  if (!options.ok) return refused(world, options.problem);
  if (!file.ok) return refused(world, file.problem);
  const bytes = await bytesOf(file.value);
  if (!bytes.ok) return refused(world, bytes.problem);
  const asked: Asked = {
    bring: words.value.switches.has('stock') ? importStock : importAnimals,
    given: { bytes: bytes.value, options: options.value },
    db: optionValue(words.value, 'db'),
  };
  const dryRun = words.value.switches.has('dry-run');
  return answered(world, await brought(world, asked, dryRun), (found) => told(world, found, dryRun));
};

interface Asked {
  readonly bring: typeof importStock | typeof importAnimals;
  readonly given: { readonly bytes: Uint8Array; readonly options: Omit<IntakeOptions, 'today'> };
  readonly db: string | undefined;
}

/** Reads the list first; only one that is ready to be written makes a database where there is none. */
async function brought(world: World, { bring, given, db }: Asked, dryRun: boolean): Promise<Result<Brought>> {
  const read = await withDatabase(
    world,
    { db, missing: 'lend' },
    (context): Promise<Result<Brought>> => bring(context, { ...given, dryRun: true }),
  );
  if (dryRun || !read.ok || !read.value.reading.ready) return read;
  return withDatabase(
    world,
    { db, missing: 'make' },
    (context): Promise<Result<Brought>> => bring(context, given),
  );
}

/** Prints what was read and done; trouble goes to the other stream. */
function told(world: World, brought: Brought, dryRun: boolean): number {
  for (const line of importLines(brought, dryRun)) world.out(line);
  for (const line of troubleLines(brought)) world.err(line);
  return brought.reading.ready ? EXIT.good : EXIT.trouble;
}

function fileIn(words: Words): Result<string> {
  const rest = atMost(words, 1);
  if (!rest.ok) return rest;
  const [file] = rest.value;
  return file === undefined ? err(problem('no-file', 'Say which file to import.')) : ok(file);
}

function optionsIn(words: Words): Result<Omit<IntakeOptions, 'today'>> {
  const dates = oneOf(words, 'dates', DATE_ORDERS);
  const unit = oneOf(words, 'unit', LENGTH_UNITS);
  const mapping = pairs(words, 'map');
  const answers = pairs(words, 'answer');
  if (!dates.ok) return dates;
  if (!unit.ok) return unit;
  if (!mapping.ok) return mapping;
  if (!answers.ok) return answers;
  const columns: readonly string[] = words.switches.has('stock') ? STOCK_COLUMNS : ANIMAL_COLUMNS;
  const strange = Object.keys(mapping.value).find((column) => !columns.includes(column));
  if (strange !== undefined)
    return err(problem('bad-value', `--map names the column "${strange}"; ours are ${columns.join(', ')}.`));
  return ok({ dates: dates.value, unit: unit.value, mapping: mapping.value, answers: answers.value });
}

/** The bytes of a file that is there and not too large. */
async function bytesOf(file: string): Promise<Result<Uint8Array>> {
  try {
    const found = await stat(file);
    if (!found.isFile()) return err(problem('not-a-file', `"${file}" is not a file.`));
    const tooLarge = sizeProblem(found.size);
    return tooLarge === null ? ok(await readFile(file)) : err(tooLarge);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'ENOENT' || code === 'ENOTDIR')
      return err(problem('no-such-file', `There is no file "${file}".`));
    return err(problem('file-unreadable', `The file "${file}" cannot be read (${code ?? String(error)}).`));
  }
}
