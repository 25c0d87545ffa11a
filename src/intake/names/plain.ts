/** Brings names and headings to one plain form, so that accents, case and punctuation do not matter. */

const ACCENTS = /\p{M}/gu;
const NOT_WORD = /[^\p{L}\p{N}]+/gu;

/** Lower case, without accents or punctuation, words parted by one space: "Größe (mm)" is "grosse mm". */
export const plainWords = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(ACCENTS, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll('#', ' no ')
    .replace(/['’`]/g, '')
    .replace(NOT_WORD, ' ')
    .trim();

/** Whether the words of `phrase` stand together in `text`; both plain. */
export const holdsPhrase = (text: string, phrase: string): boolean => ` ${text} `.includes(` ${phrase} `);

/** Plain words without plural endings: "fruit flies" is "fruit fly". */
export const singularWords = (plain: string): string =>
  plain
    .split(' ')
    .map((word) =>
      word
        .replace(/ies$/, 'y')
        .replace(/(?<=ch|sh|x)es$/, '')
        .replace(/(?<=[^su])s$/, ''),
    )
    .join(' ');
