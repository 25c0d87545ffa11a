/** What a box is kept for, as keepers write it: bought prey, a breeding colony, or a cup. */
import type { BinRole } from '../../husbandry/larder/index.ts';
import { type Problem, problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { plainWords } from '../names/plain.ts';
import { quote } from '../quoting.ts';

const WORDS: Readonly<Record<BinRole, ReadonlySet<string>>> = {
  holding: new Set('bin|box|tub|holding|bought|feeders|food|no|n|kiste|futter|bac|caja'.split('|')),
  colony: new Set(
    'colony|breeding|breeding colony|breeders|yes|y|zucht|zuchtkolonie|kolonie|colonie|elevage|colonia|cria'.split(
      '|',
    ),
  ),
  cup: new Set('cup|culture|fly cup|kultur|zuchtglas|cultivo'.split('|')),
  frozen: new Set('frozen|freezer|pre killed|prekilled|gefroren|tiefkuhl|congele|congelado'.split('|')),
};
const ROLES = Object.keys(WORDS) as readonly BinRole[];

/** The role a cell names. */
export function readRole(text: string): Result<BinRole> {
  const word = plainWords(text);
  const role = ROLES.find((each) => WORDS[each].has(word));
  return role === undefined ? err(unreadable(text)) : ok(role);
}

const unreadable = (text: string): Problem =>
  problem('role-unreadable', `${quote(text)} is not one of: bin, colony, cup, frozen.`, 'role');

const COLONY_WITHIN = /\b(colony|breeders?|breeding|zucht|kolonie|colonie|elevage|colonia)/i;

/** Whether a name such as "Dubia colony" says that its prey breeds. */
export const soundsLikeColony = (name: string): boolean => COLONY_WITHIN.test(name);
