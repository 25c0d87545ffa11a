/** The style sheet of the pages in one piece: what it imports, in order, without the comments. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const IMPORT = /^@import "([^"]+)";\n/gm;
const COMMENT = /^[ \t]*\/\*[^*]*\*+(?:[^/*][^*]*\*+)*\/\n/gm;

/** A browser would fetch two dozen small files, one after another. */
export const ownStyle = (folder: string, first: string): string =>
  readFileSync(join(folder, first), 'utf8')
    .replace(IMPORT, (_, name: string) => readFileSync(join(folder, name), 'utf8'))
    .replace(COMMENT, '');
