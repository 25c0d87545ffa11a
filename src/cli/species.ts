/** `species`: how a prey species grows and breeds at a temperature. */
import { speciesSheet } from '../husbandry/larder/index.ts';
import type { PreySpecies } from '../husbandry/prey/index.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type NameMatch, preyFinder, readTemperature } from '../intake/index.ts';
import { answered, printJson, refused } from './answering.ts';
import { sheetLines } from './species-text.ts';
import { atMost } from './values.ts';
import { optionValue, readWords } from './words.ts';
import { type Command, EXIT } from './world.ts';

const OPTIONS = { temp: 'value', json: 'switch' } as const;
const USUAL_TEMP = '26 C';

export const species: Command = async (given, world) => {
  const words = readWords(given, OPTIONS);
  if (!words.ok) return refused(world, words.problem);
  const rest = atMost(words.value, 1);
  if (!rest.ok) return refused(world, rest.problem);
  const found = speciesNamed(rest.value[0], [...world.facts.species.values()]);
  if (!found.ok) return refused(world, found.problem);
  const tempC = readTemperature(optionValue(words.value, 'temp') ?? USUAL_TEMP, 'C');
  return answered(world, tempC, (temperature) => {
    const sheet = speciesSheet(found.value.item, temperature);
    if (found.value.said !== null) world.err(found.value.said);
    if (words.value.switches.has('json')) printJson(world, sheet);
    else for (const line of sheetLines(sheet)) world.out(line);
    return EXIT.good;
  });
};

function speciesNamed(
  text: string | undefined,
  known: readonly PreySpecies[],
): Result<NameMatch<PreySpecies>> {
  if (text === undefined) return err(noSpecies('Say which prey species.', known));
  const finder = preyFinder(known);
  const match = finder.find(text);
  if (match !== null) return ok(match);
  const near = finder.near(text);
  return err(noSpecies(`"${text}" is not a prey species known here.`, near.length > 0 ? near : known));
}

const noSpecies = (begins: string, known: readonly PreySpecies[]): Problem =>
  problem('unknown-species', `${begins} Perhaps: ${known.map(({ commonName }) => commonName).join(', ')}.`);
