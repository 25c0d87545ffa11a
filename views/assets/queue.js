/**
 * The outbox's rules, apart from page, network and clock: what waits, in which order, and what an answer does to it.
 *
 * - What the keeper sends is first put into the outbox, then sent. Nothing is sent that is not kept.
 * - It goes oldest first, one at a time. It leaves only when the server has answered that it is done, or when
 *   the keeper throws it away.
 * - Server away (no answer, or 429, 502, 503, 504): it waits, and so does all behind it, with growing pauses.
 * - Logged out: it waits, and so does all behind it.
 * - Refused, or any other answer: it is set aside, and those behind it go on. Only the keeper sends it again.
 * - A sending whose answer was lost is sent again. The server knows its form id and does nothing twice.
 * - A day belongs to the form, not to the sending: what was tapped at 03:50 and sent at noon is of that evening.
 * - One tab sends at a time: whoever holds the lock, or, where a browser has none, the lease.
 */

/**
 * @typedef {'waiting' | 'refused' | 'logged-out'} State
 * @typedef {object} Item What waits to be sent.
 * @property {string} id Sorts by age.
 * @property {string} address Path it is posted to.
 * @property {string} body Its fields, as a form sends them.
 * @property {string} form Id of the form in its page.
 * @property {string} words What it is, for the keeper.
 * @property {string} part The shelf it is of, '' for a whole form.
 * @property {string} answers Id of the item set aside that this one puts right, '' when it is the first.
 * @property {number} at Moment of the tap, ms since 1970.
 * @property {number} tries How often it was sent without being done.
 * @property {State} state
 * @typedef {'done' | 'refused' | 'away' | 'logged-out'} Kind
 * @typedef {{ tab: string, until: number }} Lease
 * @typedef {{ items: () => Item[], change: (item: Item) => void, remove: (id: string) => void }} Box
 */

const AWAY = [429, 502, 503, 504];
const SHORTEST_PAUSE_MS = 2000;
const LONGEST_PAUSE_MS = 60_000;
const LEASE_MS = 15_000;
const DIGITS_OF_A_MOMENT = 15;

/**
 * What an answer means; `path` is where it led to.
 * @param {{ status: number, path: string, redirected: boolean }} answer
 * @returns {Kind}
 */
export function kindOf({ status, path, redirected }) {
  if (status === 401 || (redirected && path === '/login')) return 'logged-out';
  if (AWAY.includes(status)) return 'away';
  return status >= 200 && status < 300 ? 'done' : 'refused';
}

/** @param {Item} a @param {Item} b */
export const byAge = (a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/**
 * A name that sorts after every other, also when the device's clock was set back.
 * @param {number} now
 * @param {readonly Item[]} items
 */
export function nameAfter(now, items) {
  const last = Math.max(0, ...items.map(({ id }) => Number.parseInt(id, 10)));
  return String(Math.max(now, last + 1)).padStart(DIGITS_OF_A_MOMENT, '0');
}

/**
 * What is sent next; those set aside are passed over.
 * @param {readonly Item[]} items
 * @returns {Item | undefined}
 */
export const nextOf = (items) => [...items].sort(byAge).find(({ state }) => state !== 'refused');

/**
 * The item after an answer; null when it is done.
 * @param {Item} item
 * @param {Kind} kind
 * @returns {Item | null}
 */
export function afterAnswer(item, kind) {
  if (kind === 'done') return null;
  return { ...item, tries: item.tries + 1, state: kind === 'away' ? 'waiting' : kind };
}

/**
 * What the keeper is told of: all but what another item, or a form standing open, puts right. Behind one that was
 * tried in vain all have waited.
 * @param {readonly Item[]} items
 * @param {readonly string[]} open
 */
export function toldOf(items, open) {
  const answered = new Set([...open, ...items.map(({ answers }) => answers)]);
  const isStuck = items.some(({ state, tries }) => state !== 'refused' && tries > 0);
  return items
    .filter(({ id }) => !answered.has(id))
    .map((item) => (isStuck ? { ...item, tries: Math.max(1, item.tries) } : item));
}

/** Pause before the next try, doubled each time. @param {number} tries */
export const pauseMs = (tries) =>
  Math.min(LONGEST_PAUSE_MS, SHORTEST_PAUSE_MS * 2 ** Math.min(Math.max(0, tries - 1), 10));

/** @param {Lease | null} lease @param {string} tab @param {number} now */
export const mayTake = (lease, tab, now) =>
  lease === null || lease.tab === tab || lease.until <= now || lease.until > now + LEASE_MS;

/** @param {string} tab @param {number} now @returns {Lease} */
export const leaseOf = (tab, now) => ({ tab, until: now + LEASE_MS });

/**
 * Sends what waits until nothing does, the server is away, or another tab has taken over.
 * @param {{ box: Box, send: (item: Item) => Promise<{ kind: Kind }>, isMine: () => boolean,
 *   answered: (item: Item, answer: any) => void }} parts
 * @returns {Promise<'empty' | 'elsewhere' | 'away' | 'logged-out'>} why it ended
 */
export async function drain({ box, send, isMine, answered }) {
  for (;;) {
    const item = nextOf(box.items());
    if (item === undefined) return 'empty';
    if (!isMine()) return 'elsewhere';
    const answer = await send(item);
    const left = afterAnswer(item, answer.kind);
    if (left === null) box.remove(item.id);
    else box.change(left);
    answered(item, answer);
    if (answer.kind === 'away' || answer.kind === 'logged-out') return answer.kind;
  }
}
