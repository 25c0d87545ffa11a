/** The larder: what prey is alive, and one bin with what was seen of it. */

import type { Context, Hono } from 'hono';
import { BinPage } from '../../../views/pages/bin.tsx';
import { LarderPage } from '../../../views/pages/larder.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { askCover } from '../../actions/index.ts';
import type { Bin } from '../../husbandry/larder/index.ts';
import { binRemarks, type CoverAnswer, horizonOf } from '../../husbandry/supply/index.ts';
import { actsAbout } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { binOptions, roomOptions, sizeOptions } from './choices.ts';
import { historyLines } from './history.ts';
import type { House } from './house.ts';
import { showClosedBin } from './left.ts';
import { route } from './route.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function larderRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.larder, (c) => showLarder(house, c));
  app.get(route(paths.bin(':code')), (c) => showBin(house, c));
}

/** The week's answer; where it cannot be had just now, the larder shows what is on record. */
async function answerFor(
  { context, answering }: House,
  { snapshot }: Visit,
): Promise<Pick<CoverAnswer, 'bins' | 'horizonDays'>> {
  const cover = await askCover(context, { snapshot, answering });
  return cover.ok ? cover.value.answer : { bins: [], horizonDays: horizonOf(snapshot).days };
}

export async function showLarder(
  house: House,
  c: Context,
  refused: Refused | null = null,
): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { bins, deliveries, facts } = here.snapshot;
  const { bins: answers, horizonDays } = await answerFor(house, here);
  const sizeClasses = new Map([...facts.species].map(([code, species]) => [code, sizeOptions(species)]));
  const expected = deliveries.toSorted((a, b) => a.day - b.day);
  const props = { ...here, bins, answers, horizonDays, deliveries: expected, sizeClasses };
  return page(c, LarderPage(props), statusOf(refused !== null));
}

export async function showBin(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { bins, facts } = here.snapshot;
  const bin = bins.find(({ code }) => code === c.req.param('code'));
  const species = facts.species.get(bin?.species ?? '');
  if (bin === undefined || species === undefined) return showClosedBin({ house, c, here, refused });
  const { bins: answers, horizonDays } = await answerFor(house, here);
  const props = {
    ...here,
    bin,
    answer: answers.find(({ code }) => code === bin.code) ?? null,
    horizonDays,
    sizes: sizeOptions(species),
    species,
    remarks: binRemarks(here.snapshot, bin),
    otherBins: binOptions(bins.filter((each) => takesFrom(each, bin))),
    rooms: roomOptions(here.snapshot.rooms),
    quarantineDays: facts.policy.quarantineDays.value,
    history: await historyOf(house, here, bin.code),
  };
  return page(c, BinPage(props), statusOf(refused !== null));
}

/** Another bin of the species, both alive or both frozen; a cup takes nobody in. */
const takesFrom = (each: Bin, bin: Bin): boolean =>
  each !== bin &&
  each.species === bin.species &&
  each.role !== 'cup' &&
  (each.role === 'frozen') === (bin.role === 'frozen');

async function historyOf({ context }: House, { names, unit, snapshot }: Visit, code: string) {
  const acts = await context.store.ask(actsAbout('bin', code));
  const speciesOf = new Map(snapshot.bins.map((bin) => [bin.code, bin.species]));
  return historyLines(acts, { about: 'bin', names, unit, speciesOf });
}
