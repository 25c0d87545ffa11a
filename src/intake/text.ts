/** Free text of a cell, cut where it is longer than anyone would write. */
import { problem } from '../husbandry/problems.ts';
import { quote } from './quoting.ts';
import { type Note, trouble } from './reading.ts';

const LONGEST = { name: 120, label: 60, place: 80, notes: 2000 } as const;

/** The text, '' for a lone dash or question mark; what is too long is cut and noted. */
export function readText(text: string, sort: keyof typeof LONGEST, notes: Note[]): string {
  if (/^[-–—?]$/.test(text)) return '';
  const most = LONGEST[sort];
  if (text.length <= most) return text;
  notes.push(
    trouble(
      problem(
        'text-too-long',
        `${quote(text)} is longer than ${most} characters; the rest was cut off.`,
        sort,
      ),
    ),
  );
  return text.slice(0, most).trim();
}
