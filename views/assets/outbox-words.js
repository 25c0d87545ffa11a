/** What the outbox says, in words. */

const two = (number) => String(number).padStart(2, '0');

/** '19:42', or with the day when it was not today. */
export function clockOf(ms, now = Date.now()) {
  const [at, today] = [new Date(ms), new Date(now)];
  const time = `${two(at.getHours())}:${two(at.getMinutes())}`;
  if (at.toDateString() === today.toDateString()) return time;
  return `${at.toLocaleDateString('en-GB', { weekday: 'short', day: 'numeric', month: 'short' })}, ${time}`;
}

const named = (item) => `${item.words} (${clockOf(item.at)})`;

const WHY = {
  one: {
    away: 'The server is away; it is kept on this device and sent as soon as it answers.',
    loggedOut: 'You are logged out; it is kept on this device. Log in again and it is sent.',
  },
  many: {
    away: 'The server is away; they are kept on this device and sent in order as soon as it answers.',
    loggedOut: 'You are logged out; they are kept on this device. Log in again and they are sent in order.',
  },
};

/** What waits, the latest by name; '' when nothing does. */
export function waitingWords(items) {
  const waiting = items.filter(({ state }) => state !== 'refused');
  if (waiting.length === 0) return '';
  const why = waiting.length === 1 ? WHY.one : WHY.many;
  const others = waiting.length === 1 ? '' : ` and ${waiting.length - 1} more`;
  const loggedOut = waiting.some(({ state }) => state === 'logged-out');
  return `Not sent yet: ${named(waiting.at(-1))}${others}. ${loggedOut ? why.loggedOut : why.away}`;
}

export const refusedWords = (item) =>
  `Not written down: ${named(item)}. The server does not take it as it is.`;

export const unkeptWords = ({ words }, kind) =>
  kind === 'logged-out'
    ? `Not sent: ${words}. You are logged out, and this device keeps nothing. Log in in another tab, then tap again.`
    : `Not sent: ${words}. The server does not take it now, and this device keeps nothing. Leave this page open and tap again later.`;

export const writtenWords = ({ words }) => `Written down: ${words}.`;
export const sentWords = ({ words }) => `Sent now: ${words}. Nothing waits on this device any more.`;
export const thrownWords = ({ words }) => `Thrown away: ${words}.`;

/** What stands at the shelf or form itself. */
export function noteWords(item) {
  if (item.state === 'refused') return `Not written down yet (${clockOf(item.at)}); see above.`;
  if (item.tries === 0) return 'Being sent.';
  return `Kept on this device (${clockOf(item.at)}), not sent yet.`;
}
