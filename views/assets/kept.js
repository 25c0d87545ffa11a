/** What this device keeps: sendings, each under a key of its own so that two tabs never write over one another. */
import { byAge, leaseOf, mayTake, nameAfter } from './queue.js';

const PREFIX = 'preylarder outbox ';
const LEASE = 'preylarder sending';
const TAB = `${Math.random()}`;
/** Long enough for another tab's lease to be seen here. */
const SETTLE_MS = 60;

/** Null when there is nothing under the key, or nothing that can be read. */
export function readKept(key) {
  try {
    return JSON.parse(localStorage.getItem(key) ?? 'null');
  } catch {
    return null;
  }
}

/** False when the device keeps nothing: private window, storage full. */
export function keep(key, value) {
  try {
    localStorage.setItem(key, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

export function forget(key) {
  try {
    localStorage.removeItem(key);
  } catch {
    // Nothing was kept.
  }
}

function keysOf(prefix) {
  try {
    return Object.keys(localStorage).filter((key) => key.startsWith(prefix));
  } catch {
    return [];
  }
}

/** The item a change of storage was about; null when it was about something else. */
export function outboxItemOf(key, value) {
  if (key === null || value === null || !key.startsWith(PREFIX)) return null;
  return JSON.parse(value);
}

export const box = {
  items: () =>
    keysOf(PREFIX)
      .map(readKept)
      .filter((item) => item !== null)
      .sort(byAge),
  /** Null when it could not be kept. */
  add: (sending, now) => {
    const id = nameAfter(now, box.items());
    const item = { ...sending, id: `${id} ${TAB}`, at: now, tries: 0, state: 'waiting' };
    return keep(PREFIX + item.id, item) ? item : null;
  },
  /** What was thrown away meanwhile stays away. */
  change: (item) => {
    if (readKept(PREFIX + item.id) !== null) keep(PREFIX + item.id, item);
  },
  remove: (id) => forget(PREFIX + id),
};

/** Does the work if no other tab is at it: with the browser's lock, or on plain http with a lease. */
export async function alone(work) {
  if (navigator.locks)
    return navigator.locks.request(LEASE, { ifAvailable: true }, (lock) =>
      lock === null ? 'elsewhere' : work(() => true),
    );
  if (!(await taken())) return 'elsewhere';
  try {
    return await work(renewed);
  } finally {
    if (readKept(LEASE)?.tab === TAB) forget(LEASE);
  }
}

async function taken() {
  if (!renewed()) return false;
  await new Promise((done) => setTimeout(done, SETTLE_MS));
  return renewed();
}

/** Takes or prolongs the lease; false when another tab has it. */
function renewed() {
  const now = Date.now();
  return mayTake(readKept(LEASE), TAB, now) && keep(LEASE, leaseOf(TAB, now));
}
