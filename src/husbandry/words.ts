/** Words of the trade put into sentences. */

/** Several of a thing: 'house crickets', 'fruit flies', 'cockroaches'. */
export function plural(noun: string): string {
  if (noun.endsWith('s')) return noun;
  if (noun.endsWith('y')) return `${noun.slice(0, -1)}ies`;
  return noun.endsWith('ch') ? `${noun}es` : `${noun}s`;
}

/** Capital first letter of a sentence. */
export const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** 'crickets, flies and roaches'. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** 'Ash, Birch, Clove and 4 more'; all of them where they are no more than `most`. */
export function fewOf(names: readonly string[], most: number): string {
  const more = names.length - most;
  if (more <= 0) return listed(names);
  return `${names.slice(0, most).join(', ')} and ${more.toLocaleString('en-GB')} more`;
}

/** 'an adult', 'a spiderling'. */
export const oneOf = (noun: string): string => `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
