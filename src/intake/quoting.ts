/** Quotes a keeper's own words inside a sentence, shortened so that a broken file stays readable. */

const LONGEST_QUOTE = 60;

export function quote(text: string): string {
  const [open, close] = text.includes('"') ? ['“', '”'] : ['"', '"'];
  return `${open}${text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text}${close}`;
}

/** A list in words: 'a', 'a or b', 'a, b or c'. */
export const either = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

const TENTHS = 10;

/** A length for a sentence: millimetres to a tenth. */
export const inMm = (mm: number): string => `${Math.round(mm * TENTHS) / TENTHS} mm`;
