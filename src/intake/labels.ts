/** Labels of one file: each is used once; unnamed likes are numbered. */
import { problem } from '../husbandry/problems.ts';
import { counter } from './identity.ts';
import { plainWords } from './names/plain.ts';
import { quote } from './quoting.ts';
import { type Note, trouble } from './reading.ts';

/** A check that lets each label through once; a label seen before is dropped and noted. */
export function labelsOnce(): (label: string | null, row: number) => { label: string | null; notes: Note[] } {
  const rowOf = new Map<string, number>();
  return (label, row) => {
    if (label === null) return { label, notes: [] };
    const before = rowOf.get(label.toLowerCase());
    if (before === undefined) {
      rowOf.set(label.toLowerCase(), row);
      return { label, notes: [] };
    }
    const sentence = `The label ${quote(label)} already stands in row ${before}; give each its own. This row is read without it.`;
    return { label: null, notes: [trouble(problem('label-twice', sentence, 'label'))] };
  };
}

/** Numbers the second and further things without a name of their own: "House cricket", "House cricket 2". */
export function numberLikes(): (name: string) => string {
  const nthOf = counter();
  return (name) => {
    const nth = nthOf(plainWords(name) || name);
    return nth === 1 ? name : `${name} ${nth}`;
  };
}
