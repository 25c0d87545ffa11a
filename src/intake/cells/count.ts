/** Counts as keepers write them: "12", "ca. 200", "~50", "1k", "50-60". */
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { quote } from '../quoting.ts';
import { readWhole } from './number.ts';

interface CountRead {
  readonly heads: number;
  /** How it was read, when not word for word: 'the middle of "50-60"'. */
  readonly said: string | null;
}

const MOST_HEADS = 1_000_000;
const LONGEST_TEXT = 40;
const ABOUT =
  /^(?:(?:ca|approx|about|around|circa|roughly|etwa|environ|c)\b\.?|[~≈><x×])\s*|\s*(?:[+x×]|pcs\.?|pieces|heads|st(?:ü|u)ck)$/gi;
const RANGE = /^(.+?)\s*(?:-|–|—|\bto\b|\bbis\b)\s*(.+)$/i;

const badCount = (text: string) =>
  err(problem('not-a-count', `${quote(text)} is not a count; write a whole number such as 12.`, 'count'));

/** A whole number of heads, 0 allowed. */
export function readCount(text: string): Result<CountRead> {
  const clean = text.trim().replace(ABOUT, '').trim();
  const whole = clean.length > LONGEST_TEXT ? null : readWhole(clean);
  const [, low = '', high = ''] =
    whole === null && clean.length <= LONGEST_TEXT ? (RANGE.exec(clean) ?? []) : [];
  const from = whole ?? readWhole(low.trim());
  const to = whole ?? readWhole(high.trim());
  if (from === null || to === null) return badCount(text);
  const heads = Math.round((from + to) / 2);
  if (heads > MOST_HEADS)
    return err(
      problem(
        'count-out-of-range',
        `${quote(text)} is too many; at most ${MOST_HEADS} can be read.`,
        'count',
      ),
    );
  return ok({ heads, said: whole === null ? `Count ${heads}: the middle of ${quote(text)}.` : null });
}
