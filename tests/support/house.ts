/** The program behind its door, on a real database with the product's facts and few replicates. */
import type { Hono } from 'hono';
import {
  addAnimal,
  addBin,
  addOffer,
  addSupplier,
  expectDelivery,
  firstRoom,
  startCup,
} from '../../src/actions/index.ts';
import { revision } from '../../src/store/index.ts';
import { createApp, type DoorEnv } from '../../src/web/index.ts';
import { mountPages } from '../../src/web/pages/index.ts';
import { answerPool } from '../../src/workers/pool.ts';
import { OWN } from './door.ts';
import { facts, policyWith } from './room.ts';
import { freshContext, good, type Room } from './store-at.ts';

const ROOT = new URL('../..', import.meta.url).pathname;

export interface Home {
  readonly room: Room;
  readonly app: Hono<DoorEnv>;
  /** Markup of a page. */
  readonly see: (path: string) => Promise<string>;
  /** Sends a form; each time one of its own unless `formId` is said. */
  readonly send: (path: string, fields: Fields) => Promise<Response>;
  /** Counts what was done so far. */
  readonly acts: () => Promise<number>;
}
export type Fields = Readonly<Record<string, string | readonly string[]>>;

/** A home with one room and nothing in it. */
export async function emptyHome(): Promise<Home> {
  const policy = policyWith({
    ...{ replicates: 30, actReplicates: 8, stockReplicates: 10, colonyReplicates: 20 },
    ...{ planReplicates: 10, planJudgeReplicates: 10, planJudgeLeast: 5, planTries: 1 },
  });
  const room = { ...(await freshContext()), facts: { ...facts, policy } };
  good(await firstRoom(room));
  const app = createApp(room, {
    root: ROOT,
    locked: false,
    hostNames: [],
    pages: { failure: ({ sentence }) => sentence, login: () => 'login' },
    log: () => undefined,
    mount: (behind) =>
      mountPages(behind, {
        context: room,
        ...answerPool(),
        furnish: async () =>
          addAnimal(room, { name: 'Demo', kind: 'brachypelma-hamorii', gaugeMm: 40, room: 'R1', demo: true }),
        canLogOut: false,
      }),
  });
  let sent = 0;
  return {
    room,
    app,
    see: async (path) => (await app.request(path)).text(),
    send: async (path, fields) => {
      sent += 1;
      const body = bodyOf({ formId: `form-${sent}`, ...fields });
      return app.request(path, { method: 'POST', headers: OWN, body });
    },
    acts: () => room.store.ask(revision),
  };
}

function bodyOf(fields: Fields): string {
  const pairs = Object.entries(fields).flatMap(([name, value]) => [value].flat().map((each) => [name, each]));
  return new URLSearchParams(pairs as string[][]).toString();
}

/** A1 Ash is due tonight, A2 a group of five spiderlings; B1 crickets, B2 more, B3 a cup; D1 is on its way; S1 sells F1, crickets. */
export async function filledHome(): Promise<Home> {
  const home = await emptyHome();
  const { room } = home;
  const spider = { kind: 'brachypelma-hamorii', room: 'R1' };
  const crickets = { species: 'acheta-domesticus', room: 'R1', capacity: 500 };
  good(
    await addAnimal(room, { ...spider, name: 'Ash', gaugeMm: 50, shelf: 'A2', lastTaken: room.date(-14) }),
  );
  good(
    await addAnimal(room, {
      ...spider,
      name: 'Sac of five',
      count: 5,
      gaugeMm: 14,
      shelf: 'A10',
      lastTaken: room.date(-9),
    }),
  );
  good(await addBin(room, { ...crickets, name: 'Small box', lot: { heads: 200, fromMm: 4, toMm: 6 } }));
  good(await addBin(room, { ...crickets, name: 'Large box', lot: { heads: 80, fromMm: 10, toMm: 14 } }));
  good(await startCup(room, { species: 'drosophila-hydei', room: 'R1', name: 'Cup' }));
  good(await expectDelivery(room, { bin: 'B1', heads: 100, fromMm: 4, toMm: 6, day: room.date(5) }));
  await addSellers(room);
  return home;
}

/** Sends from Monday to Wednesday, there in two days; ordered by noon the day before. */
async function addSellers(room: Room): Promise<void> {
  const dispatchWeekdays = [true, true, true, false, false, false, false];
  const sends = { dispatchWeekdays, transitDays: 2, cutOffDays: 1, cutOffTime: '12:00' };
  good(await addSupplier(room, { name: 'Grille & Co', ...sends, postageFlat: 4.9, coldBelowC: 0 }));
  const crickets = { species: 'acheta-domesticus', size: '1/2 in', fromMm: 10.5, toMm: 15 };
  const prices = [
    { fromPacks: 1, pack: 6 },
    { fromPacks: 5, pack: 5 },
  ];
  good(await addOffer(room, { supplier: 'S1', ...crickets, packHeads: 250, prices }));
}
