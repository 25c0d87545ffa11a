/** Names for codes: what a keeper reads instead of the codes the program keeps. */
import type { PreySpecies } from '../src/husbandry/prey/index.ts';
import type { Snapshot } from '../src/husbandry/snapshot.ts';
import { plural } from '../src/husbandry/words.ts';

export type PreyName = Pick<PreySpecies, 'code' | 'commonName' | 'form'>;

/** Code to name. `species` may be the facts' own map, in its own order. */
export interface Names {
  readonly animals: ReadonlyMap<string, string>;
  readonly bins: ReadonlyMap<string, string>;
  readonly rooms: ReadonlyMap<string, string>;
  readonly species: ReadonlyMap<string, PreyName>;
}

const byCode = (rows: readonly { readonly code: string; readonly name: string }[]): Map<string, string> =>
  new Map(rows.map(({ code, name }) => [code, name === '' ? code : name]));

/** What has names. */
type Named = { readonly [N in 'animals' | 'bins' | 'rooms']: Parameters<typeof byCode>[0] } & Pick<
  Snapshot,
  'facts'
>;

/** Names of all in a room; who has none is called by the code. */
export const namesOf = ({ animals, bins, rooms, facts }: Named): Names => ({
  animals: byCode(animals),
  bins: byCode(bins),
  rooms: byCode(rooms),
  species: facts.species,
});

/** The name for a code, or words that say it is gone. */
export const nameOf = (names: ReadonlyMap<string, string>, code: string): string =>
  names.get(code) ?? 'one no longer here';

/** The common name of a kind, within a sentence. */
export const kindNameOf = (
  kinds: ReadonlyMap<string, { readonly commonName: string }>,
  code: string,
): string => kinds.get(code)?.commonName ?? 'a kind no longer known';

/** 'leopard geckos', 'ghost mantises'; one of them where `n` is 1. */
export function kindsNamed(
  kinds: ReadonlyMap<string, { readonly commonName: string }>,
  code: string,
  n: number,
): string {
  const name = kindNameOf(kinds, code);
  if (n === 1 || !kinds.has(code)) return name;
  if (name.endsWith('sman')) return name.replace(/man$/, 'men');
  return name.endsWith('tis') ? `${name}es` : plural(name);
}

/** 'small house crickets', 'house crickets (1/4 in)': a size in figures never stands between a count and its prey. */
export function sizedPrey(size: string, prey: string): string {
  if (size === '') return prey;
  return HAS_FIGURES.test(size) ? `${prey} (${size})` : `${size} ${prey}`;
}
const HAS_FIGURES = /\d/;

/** '40 small', '40 of 1/4 in'. */
export const headsOfSize = (heads: string, size: string): string =>
  `${heads} ${HAS_FIGURES.test(size) ? 'of ' : ''}${size}`;

/** The common name of a prey species as many or, when `n` is 1, as one: 'house crickets', 'large fruit flies'. */
export function preyName(species: ReadonlyMap<string, PreyName>, code: string, n = 2): string {
  const name = species.get(code)?.commonName;
  if (name === undefined) return 'prey no longer known';
  return n === 1 ? name : plural(name);
}
