/** The compiled program, as `npm run build` leaves it: benchmarks measure what keepers run. */
import type * as AskSunday from '../../src/actions/index.ts';
import type * as Sunday from '../../src/husbandry/supply/sunday.ts';
import type * as Store from '../../src/store/index.ts';
import type { Core } from './demand-loop.ts';
import type { LarderCore } from './larder-days.ts';

const load = (path: string): Promise<unknown> =>
  import(new URL(`../../dist/src/${path}`, import.meta.url).href);

export async function compiledCore(): Promise<Core> {
  const parts = ['appetite/roster', 'appetite/feeding-days', 'supply/menu', 'supply/run', 'supply/tally'];
  const loaded = await Promise.all(parts.map((part) => load(`husbandry/${part}.js`)));
  return Object.assign({}, ...loaded) as Core;
}

export async function compiledLarder(): Promise<LarderCore> {
  const loaded = await Promise.all(
    ['chain', 'climate', 'state'].map((part) => load(`husbandry/larder/${part}.js`)),
  );
  return Object.assign({}, ...loaded) as LarderCore;
}

export const compiledSunday = async (): Promise<typeof Sunday> =>
  (await load('husbandry/supply/sunday.js')) as typeof Sunday;

export const compiledActions = async (): Promise<typeof AskSunday> =>
  (await load('actions/index.js')) as typeof AskSunday;

export const compiledStore = async (): Promise<typeof Store> =>
  (await load('store/index.js')) as typeof Store;
