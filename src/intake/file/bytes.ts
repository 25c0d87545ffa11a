/** Turns the bytes of a file into text, whatever spreadsheet wrote them, or says why they are not text. */
import { type Problem, problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { decodeWindows1252 } from './windows1252.ts';

export type Encoding = 'UTF-8' | 'UTF-16 LE' | 'UTF-16 BE' | 'Windows-1252';

interface DecodedText {
  readonly text: string;
  readonly encoding: Encoding;
}

const BYTES_PER_MB = 1024 * 1024;
const MOST_MB = 20;
const ZIP_MARK = [0x50, 0x4b, 0x03, 0x04];
const OLD_WORKBOOK_MARK = [0xd0, 0xcf, 0x11, 0xe0];
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const CONTROL = /[\u0000-\u0008\u000e-\u001f\u007f]/;

const startsWith = (bytes: Uint8Array, mark: readonly number[]): boolean =>
  mark.every((byte, index) => bytes[index] === byte);

function strictly(label: string, bytes: Uint8Array): string | null {
  try {
    return new TextDecoder(label, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function decoded(bytes: Uint8Array): { readonly text: string | null; readonly encoding: Encoding } {
  if (startsWith(bytes, [0xff, 0xfe])) return { text: strictly('utf-16le', bytes), encoding: 'UTF-16 LE' };
  if (startsWith(bytes, [0xfe, 0xff])) return { text: strictly('utf-16be', bytes), encoding: 'UTF-16 BE' };
  const text = strictly('utf-8', bytes);
  if (text !== null) return { text, encoding: 'UTF-8' };
  return { text: decodeWindows1252(bytes), encoding: 'Windows-1252' };
}

/** Why a file of this many bytes is not read; null when it may be. */
export const sizeProblem = (bytes: number): Problem | null =>
  bytes <= MOST_MB * BYTES_PER_MB
    ? null
    : problem(
        'file-too-large',
        `The file is ${Math.round(bytes / BYTES_PER_MB)} MB; at most ${MOST_MB} MB can be read. Split it or leave out columns.`,
      );

const notText = (bytes: Uint8Array): Problem =>
  startsWith(bytes, ZIP_MARK) || startsWith(bytes, OLD_WORKBOOK_MARK)
    ? problem('file-is-workbook', 'This is a spreadsheet workbook, not CSV. Save it as "CSV UTF-8" first.')
    : problem('file-not-text', 'The file is not text. Save the sheet as "CSV UTF-8" and try that file.');

/** Text of a file of at most 20 MB; an empty, oversized or non-text file is a Problem. */
export function decodeBytes(bytes: Uint8Array): Result<DecodedText> {
  const tooLarge = sizeProblem(bytes.length);
  if (tooLarge !== null) return err(tooLarge);
  const { text, encoding } = decoded(bytes);
  if (text === null || CONTROL.test(text)) return err(notText(bytes));
  if (text.trim() === '')
    return err(problem('file-empty', 'The file is empty: it has 0 rows. Choose the file with your list.'));
  return ok({ text, encoding });
}
