/** Slows guessing of the password from one address, more with each miss, and never locks anybody out for long. */

const FREE_MISSES = 4;
const LONGEST_WAIT_S = 30;
const FORGET_AFTER_S = 3600;
const MOST_ADDRESSES = 10_000;
const MOST_AT_ONCE = 4;

interface Misses {
  readonly count: number;
  /** Seconds since 1970. */
  readonly last: number;
}

export interface Throttle {
  /** Seconds to wait before this address may try; 0 when it may try now, which then counts as a miss until it succeeds. */
  readonly enter: (address: string, now: number) => number;
  /** The try is over. */
  readonly leave: (address: string, succeeded: boolean) => void;
}

export function throttle(): Throttle {
  const misses = new Map<string, Misses>();
  let trying = 0;
  return {
    enter: (address, now) => {
      const wait = trying >= MOST_AT_ONCE ? 1 : waitOf(misses.get(address), now);
      if (wait > 0) return wait;
      forgetOld(misses, now);
      misses.set(address, { count: (misses.get(address)?.count ?? 0) + 1, last: now });
      trying += 1;
      return 0;
    },
    leave: (address, succeeded) => {
      trying -= 1;
      if (succeeded) misses.delete(address);
    },
  };
}

function waitOf(misses: Misses | undefined, now: number): number {
  if (misses === undefined || misses.count < FREE_MISSES) return 0;
  const wait = Math.min(2 ** (misses.count - FREE_MISSES), LONGEST_WAIT_S);
  return Math.max(0, misses.last + wait - now);
}

function forgetOld(misses: Map<string, Misses>, now: number): void {
  if (misses.size > MOST_ADDRESSES) misses.clear();
  for (const [address, { last }] of misses) if (last < now - FORGET_AFTER_S) misses.delete(address);
}
