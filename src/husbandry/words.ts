/** Words of the trade put into sentences. */

/** Several of a thing: 'house crickets', 'fruit flies', 'cockroaches'. */
export function plural(noun: string): string {
  if (noun.endsWith('s')) return noun;
  if (noun.endsWith('y')) return `${noun.slice(0, -1)}ies`;
  return noun.endsWith('ch') ? `${noun}es` : `${noun}s`;
}

/** Capital first letter of a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
