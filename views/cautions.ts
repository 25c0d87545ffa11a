/** Short cautions, shown where the act is. */
import type { CautionCode } from '../src/husbandry/animals/index.ts';
import type { PreySpecies } from '../src/husbandry/prey/index.ts';

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
export const BIN_CAUTION =
  'Dust and droppings in feeder bins can cause allergy: open them in fresh air, mask on.';
/** Anything that brings prey in or starts a colony. */
export const STOCK_CAUTION =
  'Keep new stock apart for a week, let none escape, and check the local rules for the species. Take no prey from the wild.';
/** Killing prey that nobody eats. */
export const CULL_CAUTION =
  'Cool them until they no longer move, then freeze them for two days. Mind the local rules; release none.';
/** Prey kept apart; crickets most of all. */
export const QUARANTINE_CAUTION =
  'Crickets carry viruses that empty a room: feed new ones last, with tools of their own.';
/** Where a bin has crashed. */
export const LOSS_CAUTION =
  'It may be a virus: move nothing out of it, wash hands and tools, and look after it last. Freeze the dying for two days; feed none of them.';
/** Prey that goes from one bin into another. */
export const TRANSFER_CAUTION = 'Close lids at once: none should escape.';

/** What matters with this prey, of its species' own cautions. */
export const preyCautions = ({ cautions = [] }: Pick<PreySpecies, 'cautions'>): readonly string[] =>
  cautions.map(({ text }) => text.value);
