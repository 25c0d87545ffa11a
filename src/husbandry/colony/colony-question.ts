/** What is asked of a colony start, and whether it can be answered at all. */
import { type ColonyGrowth, colonyGrowth } from '../larder/index.ts';
import type { DayTemp } from '../prey/index.ts';
import { type Problem, problem } from '../problems.ts';
import { err, ok, type Result } from '../result.ts';
import type { Facts } from '../snapshot.ts';
import type { TempC } from '../units.ts';
import { type Breeding, breedingOf, sizedShare, type Wanted } from './breeding.ts';
import type { Prices } from './costs.ts';
import type { BinSize, Starters } from './start-path.ts';

/** A colony of a species, kept at these temperatures by day and by night. */
export interface Kept {
  /** Code of the prey species. */
  readonly species: string;
  readonly dayC: TempC;
  readonly nightC: TempC;
}

export interface ColonyQuestion extends Kept {
  /** Heads wanted each week, by size. */
  readonly wanted: readonly Wanted[];
  readonly starters: Starters;
  readonly binSize: BinSize | null;
  readonly prices: Prices | null;
}

export interface Asked {
  readonly breeding: Breeding;
  readonly growth: ColonyGrowth;
}

export const tempOf = ({ dayC, nightC }: Kept): DayTemp => ({
  minC: Math.min(dayC, nightC),
  maxC: Math.max(dayC, nightC),
});

/** The species as a colony, or why there is none to speak of. */
export function breedingAsked({ species }: Facts, kept: Kept): Result<Asked> {
  const found = species.get(kept.species);
  if (!found)
    return err(problem('unknown-species', `There is no prey species "${kept.species}".`, 'species'));
  const { commonName, cup } = found;
  if (cup !== null)
    return err(problem('kept-in-cups', `The ${commonName} is raised in cups: plan cups instead.`, 'species'));
  const breeding = breedingOf(found, tempOf(kept));
  if (breeding === null)
    return err(
      problem('laying-unknown', `Nothing is known of how many young a ${commonName} has.`, 'species'),
    );
  const growth = colonyGrowth(breeding.rates);
  return growth && growth.perDay > 0 ? ok({ breeding, growth }) : err(doesNotGrow(kept, commonName));
}

/** What is amiss with the harvest wanted or the starters; null where nothing is. */
export const amissIn = (question: ColonyQuestion, breeding: Breeding): Problem | null =>
  wantedAmiss(question, breeding) ?? startersAmiss(question.starters, breeding);

/** Why a question cannot be answered, as far as a moment tells; null where it may be. */
export function colonyAmiss(facts: Facts, question: ColonyQuestion): Problem | null {
  const asked = breedingAsked(facts, question);
  return asked.ok ? amissIn(question, asked.value.breeding) : asked.problem;
}

const doesNotGrow = ({ dayC, nightC }: Kept, name: string): Problem =>
  problem(
    'does-not-grow',
    `A ${name} colony does not grow at ${dayC} °C by day and ${nightC} °C by night.`,
    'dayC',
  );

function wantedAmiss({ wanted }: ColonyQuestion, { chain }: Breeding): Problem | null {
  if (!wanted.some(({ heads }) => heads > 0))
    return problem('nothing-wanted', 'Say how many you want each week, 1 or more.', 'wanted');
  const none = wanted.find((size) => sizedShare(chain, size).every((share) => share === 0));
  return none
    ? problem(
        'no-such-size',
        `No ${chain.species.commonName} is ${none.fromMm} to ${none.toMm} mm long.`,
        'wanted',
      )
    : null;
}

function startersAmiss(starters: Starters, { femaleShare }: Breeding): Problem | null {
  if (starters.kind === 'young')
    return starters.heads > 0 ? null : problem('no-starters', 'Begin with 1 young or more.', 'starters');
  const { females, males } = starters;
  if (females > 0 && (males > 0 || femaleShare === 1)) return null;
  return problem(
    'no-pair',
    `${females} females and ${males} males cannot breed: begin with 1 of each or more.`,
    'starters',
  );
}

export const cannotLast = (name: string): Problem =>
  problem('cannot-last', `No ${name} colony can give these sizes week after week.`, 'wanted');
