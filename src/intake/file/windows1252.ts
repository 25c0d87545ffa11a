/** Decodes Windows-1252, the old spreadsheet encoding, where it differs from Latin-1. */

const FIRST = 0x80;
/** Characters of bytes 0x80 to 0x9F; a space stands where the encoding defines none. */
const CHARACTERS = '€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ';

/** The text, or null when a byte stands for no character. */
export function decodeWindows1252(bytes: Uint8Array): string | null {
  const characters: string[] = [];
  for (const byte of bytes) {
    const special = CHARACTERS[byte - FIRST];
    if (special === ' ') return null;
    characters.push(special ?? String.fromCharCode(byte));
  }
  return characters.join('');
}
