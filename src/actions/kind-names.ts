/** Names of kinds: each leads to one kind only, so that a keeper's list is read one way. */
import type { Kind } from '../husbandry/animals/index.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import type { Facts } from '../husbandry/snapshot.ts';

export interface Names {
  readonly name?: string;
  readonly commonName?: string;
  readonly aliases?: readonly string[];
}

const plain = (name: string): string => name.trim().toLowerCase();
const namesOf = ({ name, commonName, aliases }: Kind): readonly string[] =>
  [name, commonName, ...aliases].map(plain);

/** A name that leads to another kind already, as a Problem; null when all are free. */
export function whyNotFree({ kinds }: Facts, code: string | null, names: Names): Problem | null {
  const others = [...kinds.values()].filter((kind) => kind.code !== code);
  const wanted: readonly (readonly [string, string])[] = [
    ...(names.name === undefined ? [] : [['name', names.name] as const]),
    ...(names.commonName === undefined ? [] : [['commonName', names.commonName] as const]),
    ...(names.aliases ?? []).map((alias) => ['aliases', alias] as const),
  ];
  for (const [field, name] of wanted) {
    const owner = others.find((kind) => namesOf(kind).includes(plain(name)));
    if (owner === undefined) continue;
    const other = `"${name}" already means ${owner.name} (${owner.commonName}); choose another name.`;
    return problem('name-taken', other, field);
  }
  return null;
}
