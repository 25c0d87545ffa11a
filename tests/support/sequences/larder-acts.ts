/** Inputs drawn for the acts about bins, deliveries, rooms and settings: most are good, some are not. */
import { CAN_COME_BACK } from '../../../src/actions/bring-back.ts';
import type * as actions from '../../../src/actions/index.ts';
import { LEVELS } from '../../../src/actions/look-bin.ts';
import { LOOKS } from '../../../src/actions/see-cup.ts';
import type { Dice } from './draw.ts';
import type { Present } from './present.ts';

type Given<N extends keyof typeof actions> = Parameters<(typeof actions)[N]>[1];

const CRICKET = 'acheta-domesticus';
const speciesOf = (dice: Dice) => (dice.often(0.95) ? CRICKET : 'no-such-prey');
const lotOf = (dice: Dice) => {
  const fromMm = dice.whole(2, 9);
  return { heads: dice.whole(1, 300), fromMm, toMm: fromMm + (dice.often(0.95) ? 4 : -1) };
};
const bytes = (...lines: string[]) => new TextEncoder().encode(`${lines.join('\n')}\n`);

export const larderActs = {
  addBin: ({ dice, room, past }: Present): Given<'addBin'> => ({
    species: speciesOf(dice),
    room: room(),
    capacity: 400,
    ...(dice.often(0.6) ? { lot: lotOf(dice), day: past() } : {}),
    demo: dice.often(0.3),
  }),
  editBin: ({ dice, bin, room }: Present): Given<'editBin'> => ({
    bin: bin(),
    ...(dice.often(0.4) ? { room: room() } : {}),
    ...(dice.often(0.4) ? { name: `Box ${dice.whole(1, 9)}` } : {}),
    ...(dice.often(0.2) ? { closed: dice.often(0.7) } : {}),
  }),
  closeBin: ({ bin }: Present): Given<'closeBin'> => ({ bin: bin() }),
  startCup: ({ dice, room, past }: Present): Given<'startCup'> => ({
    species: dice.often(0.9) ? 'drosophila-hydei' : CRICKET,
    room: room(),
    day: past(),
    demo: dice.often(0.3),
  }),
  countBin: ({ dice, bin, past }: Present): Given<'countBin'> => ({
    bin: bin(),
    heads: dice.whole(0, 300),
    ...(dice.often(0.6) ? { fromMm: 4, toMm: 8 } : dice.often(0.5) ? { grown: dice.whole(0, 40) } : {}),
    day: past(),
  }),
  lookBin: ({ dice, bin, past }: Present): Given<'lookBin'> => ({
    bin: bin(),
    level: dice.pick(LEVELS) ?? 'half',
    day: past(),
  }),
  weighBin: ({ dice, bin, past }: Present): Given<'weighBin'> => ({
    bin: bin(),
    massMg: dice.whole(0, 90_000),
    day: past(),
  }),
  seeSize: ({ dice, bin, past }: Present): Given<'seeSize'> => ({
    bin: bin(),
    fromMm: dice.whole(3, 8),
    toMm: dice.whole(6, 14),
    day: past(),
  }),
  seeCup: ({ dice, bin, bins, past }: Present): Given<'seeCup'> => ({
    bin: dice.often(0.8)
      ? (bins.find(({ role, closed }) => role === 'cup' && !closed)?.code ?? bin())
      : bin(),
    look: dice.pick(LOOKS) ?? 'larvae',
    day: past(),
  }),
  discard: ({ dice, bin, past }: Present): Given<'discard'> => ({
    bin: bin(),
    heads: dice.whole(1, 40),
    day: past(),
  }),
  move: ({ dice, bin, past }: Present): Given<'move'> => ({
    from: bin(),
    to: bin(),
    heads: dice.whole(1, 40),
    ...(dice.often(0.5) ? { fromMm: 4, toMm: 7 } : {}),
    day: past(),
    sure: dice.often(0.5),
  }),
  takeIn: ({ dice, bin, past }: Present): Given<'takeIn'> => ({ ...lotOf(dice), bin: bin(), day: past() }),
  expectDelivery: ({ dice, bin, ahead }: Present): Given<'expectDelivery'> => ({
    ...lotOf(dice),
    bin: bin(),
    day: ahead(),
    demo: dice.often(0.3),
  }),
  deliveryCame: ({ dice, delivery, bin, past }: Present): Given<'deliveryCame'> => ({
    delivery: delivery(),
    alive: dice.whole(0, 200),
    dead: dice.whole(0, 9),
    bin: dice.often(0.2) ? bin() : undefined,
    day: past(),
  }),
  cancelDelivery: ({ delivery }: Present): Given<'cancelDelivery'> => ({ delivery: delivery() }),
  addRoom: ({ dice }: Present): Given<'addRoom'> => ({
    name: `Room ${dice.whole(2, 9)}`,
    dayTempC: dice.often(0.95) ? dice.whole(20, 28) : 900,
    nightTempC: 20,
    demo: dice.often(0.3),
  }),
  editRoom: ({ dice, room }: Present): Given<'editRoom'> => ({ room: room(), dayTempC: dice.whole(20, 28) }),
  removeRoom: ({ dice, room, rooms, animals, bins }: Present): Given<'removeRoom'> => {
    const used = new Set([
      ...animals.filter(({ leftDay }) => leftDay === null).map((each) => each.room),
      ...bins.filter(({ closed }) => !closed).map((each) => each.room),
    ]);
    const empty = rooms.filter(({ code, closed }) => !closed && !used.has(code));
    return { room: (dice.often(0.8) ? dice.pick(empty)?.code : undefined) ?? room() };
  },
  editSettings: ({ dice, ahead }: Present): Given<'editSettings'> => ({
    leadTimeDays: dice.often(0.9) ? dice.whole(1, 9) : -1,
    ...(dice.often(0.3) ? { spell: { from: ahead(), to: ahead(), tempC: dice.whole(-9, 35) } } : {}),
    ...(dice.often(0.2) ? { purse: { currency: dice.often(0.8) ? 'EUR' : 'GBP', hour: 12 } } : {}),
    ...(dice.often(0.2) ? { planWeeks: dice.whole(3, 26) } : {}),
    ...(dice.often(0.3) ? { units: 'inch' as const } : {}),
    demo: dice.often(0.3),
  }),
  bringBack: ({
    dice,
    animals,
    bins,
    rooms,
    deliveries,
    purchases,
    changes,
  }: Present): Given<'bringBack'> => {
    const gone = [
      ...animals
        .filter(({ leftDay }) => leftDay !== null)
        .map(({ code }) => ({ what: 'animal' as const, code })),
      ...animals
        .filter(({ leftDay, count }) => leftDay === null && count > 1 && dice.often(0.3))
        .map(({ code }) => ({ what: 'animal' as const, code, heads: 1 })),
      ...bins.filter(({ closed }) => closed).map(({ code }) => ({ what: 'bin' as const, code })),
      ...rooms.filter(({ closed }) => closed).map(({ code }) => ({ what: 'room' as const, code })),
      ...deliveries
        .filter(({ state }) => state === 'cancelled')
        .map(({ code }) => ({ what: 'delivery' as const, code })),
      ...purchases
        .filter(({ state }) => state === 'cancelled')
        .map(({ code }) => ({ what: 'purchase' as const, code })),
      ...changes
        .filter(({ cancelled }) => cancelled)
        .map(({ code }) => ({ what: 'planned_change' as const, code })),
    ];
    const any = { what: dice.pick(CAN_COME_BACK) ?? 'bin', code: 'B1' };
    return dice.often(0.95) ? (dice.pick(gone) ?? any) : any;
  },
  emptyDemo: (): Given<'emptyDemo'> => ({}),
  importAnimals: ({ dice }: Present): Given<'importAnimals'> => ({
    bytes: bytes(
      'name,kind,size,fed,count',
      `Listed ${dice.whole(1, 9)},${dice.often(0.8) ? 'Brachypelma hamorii' : 'wobbler'},${dice.whole(9, 60)} mm,,1`,
    ),
  }),
  importStock: ({ dice }: Present): Given<'importStock'> => ({
    bytes: bytes(
      'bin,prey,size,count,came',
      `Tub ${dice.whole(1, 5)},${dice.often(0.8) ? 'house cricket' : 'wobbler'},medium,${dice.whole(1, 200)},`,
    ),
  }),
};
