/** Questions one by one: the same joins, a newer takes the place of the waiting, others wait their turn. */
import { expect, test } from 'vitest';
import type { Answering, Question } from '../../src/actions/index.ts';
import { atTime, noMarket } from '../../src/husbandry/orders/index.ts';
import { err, ok } from '../../src/husbandry/result.ts';
import { CANCELLED, oneByOne } from '../../src/workers/one-by-one.ts';
import { supplierWith } from '../support/market.ts';
import { snapshotWith, TODAY } from '../support/room.ts';

const asked = (revision: number, name = 'week', over: object = {}): Question<'sunday'> => ({
  subject: 'sunday',
  name,
  snapshot: snapshotWith({ revision, ...over }),
  options: {},
});

/** Answers with the revision asked about, when it is let go. */
function held() {
  const begun: number[] = [];
  const gates: (() => void)[] = [];
  const answering: Answering = async ({ snapshot: { revision } }) => {
    begun.push(revision);
    await new Promise<void>((open) => gates.push(open));
    return ok({ revision } as never);
  };
  const letGo = async () => {
    gates.shift()?.();
    await new Promise((done) => setImmediate(done));
  };
  const { answering: ask, cancel } = oneByOne(answering, { stop: () => false, forNewer: false });
  return { begun, letGo, ask, cancel };
}

test('the same question asked while it is under way is answered once', async () => {
  const { begun, letGo, ask } = held();
  const both = [ask(asked(1)), ask(asked(1))];
  await letGo();
  expect(await Promise.all(both)).toMatchObject([{ value: { revision: 1 } }, { value: { revision: 1 } }]);
  expect(begun).toEqual([1]);
});

test('once a supplier’s last hour has passed the same room is another, and the newer', async () => {
  const byNoon = supplierWith({ cutOffTime: '12:00' });
  const at = (minutes: number) =>
    asked(1, 'week', { market: { ...noMarket, suppliers: [atTime(byNoon, { today: TODAY, minutes })] } });
  const [before, after] = [at(0), at(12 * 60)];
  const { begun, letGo, ask } = held();
  const first = ask(before);
  const later = [ask(after), ask(before), ask(at(13 * 60))];
  expect(later[2]).toBe(later[0]);
  expect(later[1]).toBe(first);
  await letGo();
  await letGo();
  await Promise.all([first, ...later]);
  expect(begun).toEqual([1, 1]);
});

test('of several that wait only the newest is computed, and all get it', async () => {
  const { begun, letGo, ask } = held();
  const first = ask(asked(1));
  const later = [ask(asked(2)), ask(asked(4)), ask(asked(3))];
  await letGo();
  await letGo();
  expect(await first).toMatchObject({ value: { revision: 1 } });
  expect((await Promise.all(later)).map((answer) => answer.ok && answer.value.revision)).toEqual([4, 4, 4]);
  expect(begun).toEqual([1, 4]);
});

test('the same question of another day waits its turn and gets an answer of its own', async () => {
  const { begun, letGo, ask } = held();
  const [first, today] = [ask(asked(1, 'month')), ask(asked(2))];
  const yesterday = ask(asked(3, 'week', { today: asked(2).snapshot.today - 1 }));
  for (const _ of [1, 2, 3]) await letGo();
  expect([await first, await today, await yesterday]).toMatchObject(
    [1, 2, 3].map((revision) => ({ value: { revision } })),
  );
  expect(begun).toEqual([1, 2, 3]);
});

test('questions of other kinds wait their turn; when too many wait, the next is told to come again', async () => {
  const { begun, letGo, ask } = held();
  const kept = ['week', 'fortnight', 'month', 'quarter', 'year'].map((name, at) => ask(asked(at + 1, name)));
  expect(await ask(asked(1, 'decade'))).toMatchObject({ ok: false, problem: { code: 'busy' } });
  for (const _ of kept) await letGo();
  expect((await Promise.all(kept)).every((answer) => answer.ok)).toBe(true);
  expect(begun).toEqual([1, 2, 3, 4, 5]);
});

test('an answer that fails makes way for the next', async () => {
  let tries = 0;
  const { answering: ask } = oneByOne(
    async ({ snapshot: { revision } }) => {
      tries += 1;
      if (tries === 1) throw new Error('broken');
      return ok({ revision } as never);
    },
    { stop: () => false, forNewer: false },
  );
  await expect(ask(asked(1))).rejects.toThrow('broken');
  expect(await ask(asked(1))).toMatchObject({ value: { revision: 1 } });
});

test('one that waits is cancelled at once and never computed; one under way only where it can be stopped', async () => {
  const { begun, letGo, ask, cancel } = held();
  const [first, second, third] = [ask(asked(1)), ask(asked(2, 'month')), ask(asked(3, 'quarter'))];
  expect(cancel('month')).toBe(true);
  expect(await second).toMatchObject({ ok: false, problem: { code: 'cancelled' } });
  expect([cancel('week'), cancel('decade')]).toEqual([false, false]);
  await letGo();
  await letGo();
  expect([await first, await third]).toMatchObject([{ value: { revision: 1 } }, { value: { revision: 3 } }]);
  expect(begun).toEqual([1, 3]);
});

test('a newer room ends what is worked out for the old one, and whoever waited gets the newer answer', async () => {
  let end = (): void => undefined;
  const begun: number[] = [];
  const line = oneByOne(
    async ({ snapshot: { revision } }) => {
      begun.push(revision);
      if (revision > 1) return ok({ revision } as never);
      await new Promise<void>((over) => {
        end = over;
      });
      return err(CANCELLED);
    },
    {
      stop: () => {
        end();
        return true;
      },
      forNewer: true,
    },
  );
  const old = line.answering(asked(1));
  const other = line.answering(asked(1, 'month'));
  const newer = line.answering(asked(2));
  expect(await old).toMatchObject({ value: { revision: 2 } });
  expect(await newer).toMatchObject({ value: { revision: 2 } });
  expect(begun.slice(0, 2)).toEqual([1, 2]);
  line.cancel('month');
  await other;
});
