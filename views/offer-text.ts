/** An offer as the round's form carries it: bin, heads, lengths, preparation and portions of what was shown. */
import type { PreyOffer } from '../src/husbandry/appetite/index.ts';

const TENTHS = 10;

/** 'B2|3|9.1|12.4|alive|1'; lengths are widened to tenths of a millimetre. */
export const offerText = ({ bin, heads, fromMm, toMm, killFirst, thawed, portions }: PreyOffer): string =>
  [
    bin,
    heads,
    Math.floor(fromMm * TENTHS) / TENTHS,
    Math.ceil(toMm * TENTHS) / TENTHS,
    killFirst || thawed ? 'killed' : 'alive',
    portions,
  ].join('|');

/** Said of a row that showed nothing to offer. */
export const NOTHING_SHOWN = 'none';

/** The bin named by an offer's text or by a bin's code alone. */
export const binIn = (text: string): string => text.split('|')[0] ?? '';
