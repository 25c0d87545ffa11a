/** Chance for random sequences: the same seed draws the same. */

export interface Dice {
  /** From 0 up to 1. */
  readonly share: () => number;
  /** A whole number from `least` to `most`. */
  readonly whole: (least: number, most: number) => number;
  readonly pick: <T>(from: readonly T[]) => T | undefined;
  /** True this often. */
  readonly often: (share: number) => boolean;
}

export function diceOf(seed: number): Dice {
  let state = seed >>> 0;
  const share = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (least: number, most: number): number => least + Math.floor(share() * (most - least + 1));
  return {
    share,
    whole,
    pick: (from) => from[whole(0, from.length - 1)],
    often: (chance) => share() < chance,
  };
}
