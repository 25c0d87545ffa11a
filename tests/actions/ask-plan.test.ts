/** Plans asked for: kept for the room as it is, and the last good one shown when it has changed since. */
import { expect, test } from 'vitest';
import {
  addAnimal,
  addRoom,
  answerHere,
  askPlan,
  editNumbers,
  editSupplier,
  firstRoom,
  keptPlan,
  lastPlan,
  loadSnapshot,
} from '../../src/actions/index.ts';
import { problem } from '../../src/husbandry/problems.ts';
import { err } from '../../src/husbandry/result.ts';
import { facts } from '../support/room.ts';
import { sellsPrey } from '../support/sellers.ts';
import { freshContext, good } from '../support/store-at.ts';

const plannedRoom = async () => ({ ...(await freshContext()), facts });
const TWELVE_WEEKS = { weeks: 12, wishes: [], supposed: [] } as const;
const PINNED = { ...TWELVE_WEEKS, wishes: [{ key: 'order O1 20000', wish: 'pin', amount: 2 }] } as const;

test('a plan is kept until the room changes, and is then still the last good one', async () => {
  const room = await plannedRoom();
  expect(await lastPlan(room, TWELVE_WEEKS)).toBeNull();
  const plan = good(await askPlan(room, TWELVE_WEEKS));
  expect(await keptPlan(room, TWELVE_WEEKS, await loadSnapshot(room))).toEqual(plan);
  good(await addRoom(room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  expect(await keptPlan(room, TWELVE_WEEKS, await loadSnapshot(room))).toBeNull();
  expect(await lastPlan(room, TWELVE_WEEKS)).toEqual(plan);
});

test('a plan made by other numbers of the Book is not the one kept', async () => {
  const room = await plannedRoom();
  good(await firstRoom(room));
  good(await addAnimal(room, { name: 'Ash', kind: 'brachypelma-hamorii', room: 'R1', gaugeMm: 14 }));
  const targetOf = async () =>
    good(await askPlan(room, TWELVE_WEEKS)).whole.service.map(({ target }) => target);
  const [before] = await targetOf();
  const { policy } = room.facts;
  const minutes = { ...policy.planShopMinutes, value: 5 };
  const other = { ...room, facts: { ...facts, policy: { ...policy, planShopMinutes: minutes } } };
  expect(await keptPlan(room, TWELVE_WEEKS, await loadSnapshot(room))).not.toBeNull();
  expect(await keptPlan(other, TWELVE_WEEKS, await loadSnapshot(other))).toBeNull();
  const figures = { 'method.planTargets.fragile': '90', 'method.planTargets.ordinary': '90' };
  good(await editNumbers(room, { of: 'method', figures }));
  expect(await keptPlan(room, TWELVE_WEEKS, await loadSnapshot(room))).toBeNull();
  expect([before, await targetOf()]).toEqual([expect.toSatisfy((target: number) => target > 0.9), [0.9]]);
});

test('a plan that was stopped leaves the last good one where it is, for questions with wishes too', async () => {
  const room = await plannedRoom();
  const plan = good(await askPlan(room, TWELVE_WEEKS));
  const stopped = async () => err(problem('cancelled', 'It was stopped before it was done.'));
  expect(await askPlan(room, PINNED, { answering: stopped })).toMatchObject({ ok: false });
  expect(await lastPlan(room, PINNED)).toEqual(plan);
});

test('a plan made before a supplier’s last hour of ordering is not the plan of after it, on days it matters', async () => {
  const room = await plannedRoom();
  await sellsPrey(room.store);
  let minutes = 0;
  const timed = { ...room, clock: () => ({ ...room.clock(), minutes }) };
  const kept = async () => keptPlan(timed, TWELVE_WEEKS, await loadSnapshot(timed));
  const plan = good(await askPlan(timed, TWELVE_WEEKS));
  minutes = 13 * 60 + 59;
  expect(await kept()).toEqual(plan);
  minutes += 1;
  expect(await kept()).toBeNull();
  expect((await loadSnapshot(timed)).market?.suppliers[0]?.tooLateOn).toBe(room.clock().today);
  good(await editSupplier(timed, { supplier: 'S1', dispatchWeekdays: [true, ...Array(6).fill(false)] }));
  good(await askPlan(timed, TWELVE_WEEKS));
  minutes = 0;
  expect(await kept()).not.toBeNull();
});

test('the order of wishes is not another question; their amounts are', async () => {
  const room = await plannedRoom();
  let asked = 0;
  const answering: typeof answerHere = (question) => {
    asked += 1;
    return answerHere(question);
  };
  const [pin, forbid] = [PINNED.wishes[0], { key: 'cull B1 20000', wish: 'forbid', amount: null } as const];
  for (const wishes of [
    [pin, forbid],
    [forbid, pin],
    [{ ...pin, amount: 3 }, forbid],
  ])
    good(await askPlan(room, { ...TWELVE_WEEKS, wishes }, { answering }));
  expect(asked).toBe(2);
});
