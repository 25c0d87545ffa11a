/** The larder: what prey is alive, where each bin goes, what is bred, and what is on its way. */

import type { Context, Hono } from 'hono';
import { LarderPage, type LarderProps } from '../../../views/pages/larder.tsx';
import type { Kept } from '../../../views/partials/bin-words.ts';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { askBinsGo, askCover, askOnce } from '../../actions/index.ts';
import { type Bin, isApart, restsTo } from '../../husbandry/larder/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { cupCalendars, horizonOf, keepsTo, linesOf } from '../../husbandry/supply/index.ts';
import type { DoorEnv } from '../door.ts';
import { sizeOptions } from './choices.ts';
import type { House } from './house.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function larderRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.larder, (c) => showLarder(house, c));
}

export async function showLarder(
  house: House,
  c: Context,
  refused: Refused | null = null,
): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { snapshot } = here;
  const { bins, deliveries, facts } = snapshot;
  const { context, answering } = house;
  const [week, goes] = await Promise.all([weekOf(house, here), askBinsGo(context, { snapshot, answering })]);
  const props = {
    ...here,
    ...week,
    bins,
    goes: new Map(goes.map((each) => [each.bin, each])),
    kept: new Map(bins.map((bin) => [bin.code, keptOf(snapshot, bin)])),
    lines: linesOf(snapshot),
    deliveries: deliveries.toSorted((a, b) => a.day - b.day),
    sizeClasses: new Map([...facts.species].map(([code, species]) => [code, sizeOptions(species)])),
  };
  return page(c, LarderPage(props), statusOf(refused !== null));
}

/** The week's answer; where it cannot be had just now, the larder shows what is on record. */
async function weekOf(
  { context, answering }: House,
  { snapshot }: Visit,
): Promise<Pick<LarderProps, 'answers' | 'horizonDays' | 'cups'>> {
  const cover = await askCover(context, { snapshot, answering });
  if (!cover.ok) return { answers: [], horizonDays: horizonOf(snapshot).days, cups: [] };
  const { answer } = cover.value;
  const cups = await askOnce('cups', { options: null, snapshot, answering });
  return {
    answers: answer.bins,
    horizonDays: answer.horizonDays,
    cups: cupCalendars(snapshot, answer, cups),
  };
}

/** How long a bin is kept apart and left alone, and keeps. */
export const keptOf = (snapshot: Snapshot, bin: Bin): Kept => ({
  apartUntil: isApart(bin, snapshot.today) ? (bin.quarantineUntil ?? null) : null,
  restsUntil: restsTo(bin, snapshot.today),
  keepsTo: keepsTo(snapshot, bin),
});
