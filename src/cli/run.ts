/** Finds the command that is asked for and runs it; whatever goes wrong ends as a sentence and exit code 2. */
import { check } from './check.ts';
import { demand } from './demand.ts';
import { importList } from './import.ts';
import { species } from './species.ts';
import { type Command, EXIT, type World } from './world.ts';

const commands: Readonly<Record<string, Command>> = { import: importList, check, demand, species };

const HELP = `Preylarder on the command line.

  import <file>    bring in a list of animals (CSV); --stock: a list of live prey
                   [--dry-run] [--dates dmy|mdy|ymd] [--unit mm|cm|in] [--map ours=theirs ...]
                   [--answer "text=code" ...]
  check            will the feeders last? [--date YYYY-MM-DD] [--days N] [--seed S] [--json]
                   exit code: 0 they last (or nobody is to feed), 3 tight, 1 they run short, 2 trouble
  demand           what will be wanted, week by week [--weeks N] [--json]
  species <name>   how a prey species grows and breeds [--temp 26C] [--json]

import, check and demand take --db PATH; without it the database of the server is used (PREYLARDER_DB).
The JSON is described in src/cli/JSON.md.`;

/** Runs the command line given; answers with the exit code. */
export async function run(words: readonly string[], world: World): Promise<number> {
  const [name, ...rest] = words;
  if (name === undefined || name === 'help' || name === '--help' || name === '-h') {
    world.out(HELP);
    return name === undefined ? EXIT.trouble : EXIT.good;
  }
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (command === undefined) {
    world.err(`"${name}" is not a command; there are ${Object.keys(commands).join(', ')} and help.`);
    return EXIT.trouble;
  }
  try {
    return await command(rest, world);
  } catch (error) {
    world.err(
      `This went wrong and is not your doing: ${error instanceof Error ? error.message : String(error)}`,
    );
    return EXIT.trouble;
  }
}
