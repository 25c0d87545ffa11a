/** One bin: what is known of it at once, and with `wait` its coming weeks and what a loss means. */
import type { Context, Hono } from 'hono';
import { BinPage, type BinPageProps } from '../../../views/pages/bin.tsx';
import type { Option, PageForms, Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { askBin, askCover, askOnce, lastLook } from '../../actions/index.ts';
import { type Bin, isLost } from '../../husbandry/larder/index.ts';
import { ok, type Result } from '../../husbandry/result.ts';
import { binClimate } from '../../husbandry/rooms.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { atRisk, type BinToday, binRemarks, horizonOf } from '../../husbandry/supply/index.ts';
import { actsAbout } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { binSources } from './bin-sources.ts';
import { busy } from './busy.ts';
import { binOptions, roomOptions, sizeOptionAt, sizeOptions } from './choices.ts';
import { historyLines } from './history.ts';
import type { House } from './house.ts';
import { keptOf } from './larder.ts';
import { showClosedBin } from './left.ts';
import { codeOf, route } from './route.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function binRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(route(paths.bin(':code')), (c) => showBin(house, c));
}

export async function showBin(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { snapshot } = here;
  const { bins, facts } = snapshot;
  const bin = bins.find(({ code }) => code === codeOf(c));
  const species = facts.species.get(bin?.species ?? '');
  if (bin === undefined || species === undefined) return showClosedBin({ house, c, here, refused });
  const ahead = await aheadOf(house, here, { bin, waits: c.req.query('wait') !== undefined });
  if (!ahead.ok) return busy(c, here, ahead.problem);
  const { context, answering } = house;
  const { now, goes } = await askOnce('bin today', { options: { bin: bin.code }, snapshot, answering });
  const props = {
    ...here,
    forms: { ...here.forms, begun: begunIn(c) },
    ...ahead.value,
    bin,
    species,
    now,
    lastLook: await lastLook(context, bin, now.learned),
    leftAlive: leftAlive(now),
    goes,
    warmth: binClimate(snapshot, bin).on(snapshot.today),
    kept: keptOf(snapshot, bin),
    remarks: binRemarks(snapshot, { ...bin, quarantineUntil: null }),
    sizes: sizeOptions(species),
    sizeNow: sizeOptionAt(species, now.lengthsNow.mid),
    otherBins: binOptions(bins.filter((each) => takesFrom(each, bin))),
    rooms: roomOptions(snapshot.rooms),
    quarantineDays: facts.policy.quarantineDays.value,
    sources: binSources(species, facts.policy, here.unit),
    history: await historyOf(house, here, bin.code),
  };
  return page(c, BinPage(props), statusOf(refused !== null));
}

/** An act that another page began here, with what it filled in. */
function begunIn(c: Context): NonNullable<PageForms['begun']> | null {
  const { begin, ...values } = c.req.query();
  return begin === undefined ? null : { form: begin, values };
}

interface About {
  readonly bin: Bin;
  readonly waits: boolean;
}

type Ahead = Pick<BinPageProps, 'whole' | 'outlook' | 'answer' | 'horizonDays' | 'crash'>;

/** What takes a while to work out: of what is not kept, only what somebody waits for. */
async function aheadOf(
  { context, answering }: House,
  { snapshot }: Visit,
  { bin, waits }: About,
): Promise<Result<Ahead>> {
  const asking = { bin: bin.code, waits, snapshot, answering };
  const loss = lossOf(bin, snapshot);
  const crash = loss === null ? ok(null) : await askBin(context, { ...asking, subject: 'crash' });
  if (!crash.ok) return crash;
  const outlook = await askBin(context, { ...asking, subject: 'bin' });
  if (!outlook.ok) return outlook;
  const cover = waits ? await askCover(context, { snapshot, answering }) : ok(null);
  if (!cover.ok) return cover;
  const week = cover.value?.answer;
  return ok({
    whole: waits || (outlook.value !== null && (loss === null || crash.value !== null)),
    outlook: outlook.value?.found ?? null,
    answer: week?.bins.find(({ code }) => code === bin.code) ?? null,
    horizonDays: week?.horizonDays ?? horizonOf(snapshot).days,
    crash: loss && { ...loss, answer: crash.value?.found ?? null },
  });
}

/** Days for which a page tells what a loss means. */
const LOSS_DAYS = 7;

function lossOf(bin: Bin, snapshot: Snapshot) {
  const loss = bin.events.findLast(isLost);
  if (loss === undefined || snapshot.today - loss.day > LOSS_DAYS) return null;
  return { day: loss.day, atRisk: atRisk(snapshot, bin) };
}

const A_FEW = 5;
const SHARES_LEFT = [
  { share: 1 / 4, label: 'A quarter left' },
  { share: 1 / 2, label: 'Half left' },
];

/** None first; shares only where they are more than a few. */
function leftAlive({ headsNow }: BinToday): readonly Option[] {
  const shares = SHARES_LEFT.map(({ share, label }) => ({
    value: `${Math.round(headsNow.mid * share)}`,
    label,
  }));
  return [
    { value: '0', label: 'None left' },
    { value: `${A_FEW}`, label: 'A few left' },
    ...shares.filter(({ value }) => Number(value) > A_FEW),
  ];
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
