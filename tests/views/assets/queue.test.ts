/** The outbox's rules: order is kept, each thing is done once, and nothing is lost, whatever fails and whoever reloads. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  afterAnswer,
  drain,
  type Item,
  kindOf,
  leaseOf,
  mayTake,
  nameAfter,
  nextOf,
  pauseMs,
  toldOf,
} from '../../../views/assets/queue.js';

type Fate = 'done' | 'lost on the way' | 'answer lost' | 'refused' | 'logged-out' | 'page closed';

class PageClosed extends Error {}

const itemNamed = (id: string, body: string): Item => ({
  id,
  address: '/tonight',
  body,
  form: 'round',
  words: body,
  part: '',
  answers: '',
  at: 0,
  tries: 0,
  state: 'waiting',
});

/** A device and a server between which each sending meets the next fate; when no fate is left, all goes well. */
function world(fates: Fate[]) {
  let items: Item[] = [];
  /** What the server has done, by form id and in order; and what it refused. */
  const done: string[] = [];
  const refused: string[] = [];
  let underWay = 0;
  let mostAtOnce = 0;
  const box = {
    items: () => items,
    change: (item: Item) => {
      items = items.map((each) => (each.id === item.id ? item : each));
    },
    remove: (id: string) => {
      items = items.filter((each) => each.id !== id);
    },
  };
  const serverSees = ({ body }: Item) => {
    if (!done.includes(body)) done.push(body);
  };
  const send = async (item: Item) => {
    underWay += 1;
    mostAtOnce = Math.max(mostAtOnce, underWay);
    await Promise.resolve();
    underWay -= 1;
    const fate = fates.shift() ?? 'done';
    if (fate === 'refused' && !done.includes(item.body)) refused.push(item.body);
    else if (fate !== 'lost on the way' && fate !== 'logged-out') serverSees(item);
    if (fate === 'page closed') throw new PageClosed();
    if (fate === 'lost on the way' || fate === 'answer lost') return { kind: 'away' as const };
    if (fate === 'logged-out') return { kind: 'logged-out' as const };
    return { kind: refused.includes(item.body) ? ('refused' as const) : ('done' as const) };
  };
  const visit = () =>
    drain({ box, send, isMine: () => true, answered: () => undefined }).catch((error: unknown) => {
      if (!(error instanceof PageClosed)) throw error;
    });
  const tap = (body: string, now: number) => {
    items = [...items, itemNamed(nameAfter(now, items), body)];
  };
  return { tap, visit, done, refused, left: () => items, mostAtOnce: () => mostAtOnce };
}

const fate = fc.constantFrom<Fate>(
  'done',
  'lost on the way',
  'answer lost',
  'refused',
  'logged-out',
  'page closed',
);
/** Taps with the device's clock, which may go back, and pages opened in between. */
const step = fc.oneof(fc.record({ tap: fc.integer({ min: 0, max: 50 }) }), fc.constant('visit' as const));

describe('the outbox', () => {
  it('does each thing once, in the order of the taps, and loses nothing', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(step, { maxLength: 25 }),
        fc.array(fate, { maxLength: 40 }),
        async (steps, fates) => {
          const { tap, visit, done, refused, left, mostAtOnce } = world([...fates]);
          const tapped: string[] = [];
          for (const each of steps) {
            if (each === 'visit') await visit();
            else {
              tapped.push(`form ${tapped.length}`);
              tap(tapped.at(-1)!, each.tap);
            }
          }
          for (let visits = 0; visits <= fates.length; visits += 1) await visit();
          expect(done).toEqual(tapped.filter((form) => !refused.includes(form)));
          expect(left().map(({ body, state }) => `${body} ${state}`)).toEqual(
            refused.map((form) => `${form} refused`),
          );
          expect(mostAtOnce()).toBeLessThanOrEqual(1);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('stops at once when another tab has taken over', async () => {
    const { tap, done, left } = world([]);
    tap('form 0', 1);
    const box = { items: left, change: () => undefined, remove: () => undefined };
    const ended = await drain({
      box,
      send: () => Promise.reject(new Error('must not send')),
      isMine: () => false,
      answered: () => undefined,
    });
    expect(ended).toBe('elsewhere');
    expect(done).toEqual([]);
  });

  it('passes over what was refused, and keeps it', () => {
    const refused = { ...itemNamed('1', 'a'), state: 'refused' as const };
    expect(nextOf([itemNamed('2', 'b'), refused])?.id).toBe('2');
    expect(nextOf([refused])).toBeUndefined();
    expect(afterAnswer(itemNamed('1', 'a'), 'refused')).toMatchObject({ state: 'refused', tries: 1 });
    expect(afterAnswer(itemNamed('1', 'a'), 'away')).toMatchObject({ state: 'waiting', tries: 1 });
    expect(afterAnswer(itemNamed('1', 'a'), 'done')).toBeNull();
  });

  it.each([
    [{ status: 200, path: '/tonight', redirected: true }, 'done'],
    [{ status: 200, path: '/tonight', redirected: false }, 'done'],
    [{ status: 422, path: '/tonight', redirected: false }, 'refused'],
    [{ status: 403, path: '/tonight', redirected: false }, 'refused'],
    [{ status: 500, path: '/tonight', redirected: false }, 'refused'],
    [{ status: 401, path: '/tonight', redirected: false }, 'logged-out'],
    [{ status: 200, path: '/login', redirected: true }, 'logged-out'],
    [{ status: 503, path: '/tonight', redirected: false }, 'away'],
    [{ status: 502, path: '/tonight', redirected: false }, 'away'],
    [{ status: 429, path: '/tonight', redirected: false }, 'away'],
  ] as const)('reads the answer %j as %s', (answer, kind) => {
    expect(kindOf(answer)).toBe(kind);
  });

  it('tells of what waits behind one that could not be sent, and not of what is being put right', () => {
    const [first, second] = [itemNamed('1', 'a'), { ...itemNamed('2', 'b'), answers: '0' }];
    const aside = { ...itemNamed('0', 'c'), state: 'refused' as const, tries: 1 };
    const tries = (items: readonly Item[]) => items.map((item) => `${item.id} ${item.tries}`);
    expect(tries(toldOf([first, second], []))).toEqual(['1 0', '2 0']);
    expect(tries(toldOf([{ ...first, tries: 1 }, second], []))).toEqual(['1 1', '2 1']);
    expect(tries(toldOf([aside, first], []))).toEqual(['0 1', '1 0']);
    expect(tries(toldOf([aside, first], ['0']))).toEqual(['1 0']);
    expect(tries(toldOf([aside, first, second], []))).toEqual(['1 0', '2 0']);
  });

  it('tries again after growing pauses, a minute at most', () => {
    const pauses = [1, 2, 3, 4, 5, 6, 7, 100].map(pauseMs);
    expect(pauses.slice(0, 3)).toEqual([2000, 4000, 8000]);
    expect(pauses).toEqual(pauses.toSorted((a, b) => a - b));
    expect(Math.max(...pauses)).toBe(60_000);
  });
});

describe('the lease of a browser without locks', () => {
  it('is one tab’s at a time, and free again when its time is over', () => {
    fc.assert(
      fc.property(fc.nat(1e6), fc.nat(60_000), (now, later) => {
        const lease = leaseOf('one', now);
        expect(mayTake(null, 'two', now)).toBe(true);
        expect(mayTake(lease, 'one', now + later)).toBe(true);
        expect(mayTake(lease, 'two', now + later)).toBe(later >= lease.until - now);
      }),
    );
  });

  it('is free when the clock was set back, so that nobody waits for hours', () => {
    expect(mayTake(leaseOf('one', 10_000_000), 'two', 1000)).toBe(true);
  });
});
