/** Finds the record a row speaks of: by label, else by name, kind and which of its likes it is. */
import type { ExistingAnimal } from './entries.ts';
import { plainWords } from './names/plain.ts';

/** What identity rests on. */
export interface Identity {
  readonly label: string | null;
  readonly name: string;
  readonly kind: string;
}

type Numbered = Pick<ExistingAnimal, 'code' | 'nth'>;

export interface Register<R> {
  /** The record of the next row, each record at most once. */
  readonly claim: (identity: Identity) => R | null;
}

const keyOf = ({ name, kind }: Identity): string => `${plainWords(name) || name}|${kind}`;
const labelOf = (label: string): string => label.trim().toLowerCase();

/** Counts likes: 1 for the first of a key, 2 for the second ... */
export function counter(): (key: string) => number {
  const counts = new Map<string, number>();
  return (key) => {
    const nth = (counts.get(key) ?? 0) + 1;
    counts.set(key, nth);
    return nth;
  };
}

export function register<R extends Numbered>(
  existing: readonly R[],
  identityOf: (record: R) => Identity,
): Register<R> {
  const byLabel = new Map<string, R>();
  const byName = new Map<string, R>();
  const nthOnRecord = counter();
  for (const record of existing) {
    const identity = identityOf(record);
    const key = keyOf(identity);
    const inOrder = nthOnRecord(key);
    byName.set(`${key}|${record.nth ?? inOrder}`, record);
    byLabel.set(labelOf(record.code), record);
    if (identity.label) byLabel.set(labelOf(identity.label), record);
  }
  const nthInFile = counter();
  const claimed = new Set<string>();
  return {
    claim: (identity) => {
      const named = byName.get(`${keyOf(identity)}|${nthInFile(keyOf(identity))}`);
      const labelled = identity.label ? byLabel.get(labelOf(identity.label)) : undefined;
      const otherLabel = named && identity.label && identityOf(named).label;
      const found = labelled ?? (otherLabel ? undefined : named);
      if (!found || claimed.has(found.code)) return null;
      claimed.add(found.code);
      return found;
    },
  };
}
