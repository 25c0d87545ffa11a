/** What has numbers in the Book that the keeper may change: a prey species, or the method itself. */
import { type BookNumber, keyOf } from '../facts/own/book-number.ts';
import { methodWith, preyWith } from '../facts/own/facts-with.ts';
import { methodNumbers } from '../facts/own/method-numbers.ts';
import { preyNumbers } from '../facts/own/prey-numbers.ts';
import { METHOD, type OwnNumbers } from '../husbandry/own-numbers.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { ok, type Result } from '../husbandry/result.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import { inPercent } from '../husbandry/units.ts';
import { findSpecies } from './find.ts';
import { whyNotPrey } from './prey-bounds.ts';

export interface Numbered {
  /** 'house cricket', 'the method'. */
  readonly called: string;
  /** As these facts have them. */
  readonly numbers: readonly BookNumber[];
  /** Why it cannot be with these changes, or null. */
  readonly whyNot: (changes: OwnNumbers) => Problem | null;
}

/** By the code of a prey species, or `METHOD`. */
export function numbered(facts: Facts, code: string): Result<Numbered> {
  if (code === METHOD) return ok(theMethod(facts));
  const species = findSpecies(facts, code);
  if (!species.ok) return species;
  return ok({
    called: species.value.commonName,
    numbers: preyNumbers(species.value),
    whyNot: (changes) => whyNotPrey(preyWith(species.value, changes)),
  });
}

const theMethod = ({ policy }: Facts): Numbered => ({
  called: 'the method',
  numbers: methodNumbers(policy),
  whyNot: (changes) => {
    const { lastsFrom, tightFrom } = methodWith(policy, changes);
    return tightFrom.value < lastsFrom.value
      ? null
      : problem(
          'ends-swapped',
          `"${inPercent(tightFrom.value)}" % is not below ${inPercent(lastsFrom.value)} %, from which a week lasts; write less.`,
          keyOf(METHOD, 'tightFrom'),
        );
  },
});
