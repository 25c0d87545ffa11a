/** Which kind of animal a row speaks of: by its kind and genus cells, by its record, or by its name. */
import type { Kind } from '../../husbandry/animals/index.ts';
import type { ExistingAnimal } from '../entries.ts';
import type { KindFinder } from '../names/kinds.ts';
import type { MatchHow, NameMatch } from '../names/name-book.ts';
import { plainWords } from '../names/plain.ts';
import { type Resolved, resolveName } from '../resolving.ts';

export interface KindWorld {
  readonly finder: KindFinder;
  readonly kinds: readonly Kind[];
  readonly answers: Readonly<Record<string, string>>;
  readonly existing: readonly ExistingAnimal[];
}

interface KindCells {
  readonly kind: string;
  readonly genus: string;
  readonly who: string;
  readonly label: string;
}

const SEXES_BESIDE = /^(\d+\.\d+(?:\.\d+)?)\s+(.+)$|^(.+?)\s+(\d+\.\d+(?:\.\d+)?)$/;

/** "0.1 B. hamorii" is a kind and a count by sex. */
export function partSexes(text: string): { readonly kind: string; readonly sexes: string } {
  const match = SEXES_BESIDE.exec(text);
  if (!match) return { kind: text, sexes: '' };
  return { kind: match[2] ?? match[3] ?? text, sexes: match[1] ?? match[4] ?? '' };
}

/** Genus and species in two columns make one name. */
export const kindText = ({ kind, genus }: Pick<KindCells, 'kind' | 'genus'>): string =>
  genus === '' || plainWords(kind).startsWith(plainWords(genus)) ? kind : `${genus} ${kind}`.trim();

const onlyKindOf = (records: readonly ExistingAnimal[]): string | undefined => {
  const [first, second] = new Set(records.map(({ kind }) => kind));
  return second === undefined ? first : undefined;
};

/** The kind on record for a label, a code or a name. */
function recordedKind({ label, who }: KindCells, { existing, kinds }: KindWorld): NameMatch<Kind> | null {
  const same = (a: string | null, b: string) => b !== '' && a !== null && a.toLowerCase() === b.toLowerCase();
  const labelled = existing.filter((record) => same(record.label, label) || same(record.code, label));
  const named = existing.filter((record) => same(record.name, who));
  const code = onlyKindOf(labelled.length > 0 ? labelled : named);
  const item = kinds.find((kind) => kind.code === code);
  return item ? { item, how: 'answer', said: null } : null;
}

export function resolveKind(cells: KindCells, world: KindWorld): Resolved<Kind> {
  const text = kindText(cells);
  const match = text === '' ? (recordedKind(cells, world) ?? world.finder.find(cells.who)) : null;
  if (match) return { kind: 'found', match };
  return resolveName(text, world.finder.find, { answers: world.answers, items: world.kinds });
}

/** Whether a match is sure enough to change the kind on record. */
export const isSure = (how: MatchHow): boolean => how !== 'genus' && how !== 'group';
