/** Short cautions, shown where the act is. */
import type { CautionCode } from '../src/husbandry/animals/index.ts';

const ANIMAL_CAUTIONS: Readonly<Record<CautionCode, string>> = {
  venom: 'Venomous: use long tweezers and keep hands out.',
  'urticating hairs': 'Kicks hairs: mind eyes and skin, wear gloves.',
  'live prey near a moult': 'May moult soon: take live prey out before you leave.',
  escape: 'Quick to bolt: have a catch cup ready.',
  regulated: 'Check the local rules before moving or selling it.',
};

export const animalCaution = (code: CautionCode): string => ANIMAL_CAUTIONS[code];

/** What matters with tweezers in hand, in a few words. */
const IN_BRIEF: readonly (readonly [CautionCode, string])[] = [
  ['venom', 'venomous: long tweezers'],
  ['urticating hairs', 'kicks hairs'],
  ['escape', 'bolts'],
  ['live prey near a moult', 'may moult soon: live prey out before you leave'],
];

/** The cautions of one animal in the round, on one line; empty when there are none. */
export const inBrief = (codes: readonly CautionCode[]): string =>
  IN_BRIEF.filter(([code]) => codes.includes(code))
    .map(([, words]) => words)
    .join('; ');

/** The round as a whole. */
export const ROUND_CAUTION = 'Live prey never stays with an animal about to moult.';
/** Bins and colonies. */
export const BIN_CAUTION = 'Dust from feeder bins can cause allergy: open them in fresh air, mask on.';
/** Anything that brings prey in or starts a colony. */
export const STOCK_CAUTION =
  'Keep new stock apart for a week, let none escape, and check the local rules for the species.';
