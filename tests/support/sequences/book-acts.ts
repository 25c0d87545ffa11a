/** Inputs drawn for the acts about kinds and rules, sacs and shelves: most are good, some are not. */
import type * as actions from '../../../src/actions/index.ts';
import type { Dice } from './draw.ts';
import type { Present } from './present.ts';

type Given<N extends keyof typeof actions> = Parameters<(typeof actions)[N]>[1];

const KIND = 'brachypelma-hamorii';
const NUMBERED = ['acheta-domesticus', 'method', 'method', 'no-such-prey'];
const STAGES = ['young', 'juvenile', 'subadult', 'adult', 'larva'];

/** A kind of the keeper's own where there is one, or one of the Book. */
const kindOf = ({ dice, kinds }: Present): string => {
  const own = kinds.filter(({ base }) => base !== null).map(({ code }) => code);
  return (dice.often(0.6) ? dice.pick(own) : undefined) ?? (dice.often(0.95) ? KIND : 'no-such-kind');
};
const sacOf = ({ dice, changes, change }: Present): string =>
  (dice.often(0.9)
    ? dice.pick(changes.filter(({ sac, cancelled }) => sac !== null && !cancelled))?.code
    : null) ?? change();
const onDay = (here: Present) => ({ change: sacOf(here), day: here.past() });
const some = (dice: Dice, draw: () => string): string[] => [
  ...new Set(Array.from({ length: dice.whole(1, 3) }, draw)),
];
const nameDrawn = (dice: Dice) => ({
  name: `Exempla ${dice.pick(['una', 'bina', 'trina']) ?? ''}${dice.whole(1, 9)}`,
  commonName: `example ${dice.whole(1, 99)}`,
});

export const bookActs = {
  addKind: (here: Present): Given<'addKind'> => ({ from: kindOf(here), ...nameDrawn(here.dice) }),
  renameKind: (here: Present): Given<'renameKind'> => ({ kind: kindOf(here), ...nameDrawn(here.dice) }),
  editKind: (here: Present): Given<'editKind'> => ({
    kind: kindOf(here),
    aliases: `example ${here.dice.whole(1, 20)}`,
    ...(here.dice.often(0.3) ? { adultLeast: 200, adultMost: 100 } : {}),
  }),
  editRule: (here: Present): Given<'editRule'> => ({
    kind: kindOf(here),
    stage: here.dice.pick(STAGES) ?? 'adult',
    intervalLeast: here.dice.whole(3, 6),
    intervalMost: here.dice.whole(6, 12),
  }),
  resetRule: (here: Present): Given<'resetRule'> => ({
    kind: here.dice.pick(here.kinds)?.code ?? kindOf(here),
    stage: here.dice.often(0.5) ? '' : (here.dice.pick(STAGES) ?? ''),
  }),
  editNumbers: ({ dice }: Present): Given<'editNumbers'> => {
    const of = dice.pick(NUMBERED) ?? 'method';
    const figures: Record<string, number> =
      of === 'method'
        ? { 'method.eveningSkippedChance': dice.whole(0, 110) }
        : { 'species.holdingLossPerDay': dice.whole(0, 9) };
    return { of, figures };
  },
  resetNumbers: ({ dice, numbers }: Present): Given<'resetNumbers'> => ({
    of: dice.pick(numbers)?.code ?? dice.pick(NUMBERED) ?? 'method',
    number: dice.often(0.7) ? '' : 'species.holdingLossPerDay',
  }),
  removeKind: (here: Present): Given<'removeKind'> => ({
    kind: here.kinds.findLast(({ base }) => base !== null)?.code ?? kindOf(here),
  }),
  noteSac: ({ dice, animal, past }: Present): Given<'noteSac'> => ({
    animal: animal(),
    laidFrom: past(),
    count: dice.whole(20, 200),
    motherFasts: dice.often(0.3),
    demo: dice.often(0.2),
  }),
  pullSac: (here: Present): Given<'pullSac'> => onDay(here),
  hatchSac: (here: Present): Given<'hatchSac'> => ({
    ...onDay(here),
    count: here.dice.often(0.5) ? here.dice.whole(5, 90) : undefined,
  }),
  settleSac: (here: Present): Given<'settleSac'> => ({ ...onDay(here), count: here.dice.whole(1, 20) }),
  endSac: (here: Present): Given<'endSac'> => ({
    ...onDay(here),
    how: here.dice.often(0.5) ? 'dud' : 'eaten',
  }),
  editChange: (here: Present): Given<'editChange'> => ({
    change: here.change(),
    count: here.dice.whole(1, 60),
    chance: here.dice.often(0.9) ? 0.5 : 7,
  }),
};

export const herdActs = {
  editAnimals: ({ dice, animal, room, past }: Present): Given<'editAnimals'> => ({
    animals: some(dice, animal),
    ...(dice.often(0.5) ? { shelf: `S${dice.whole(1, 4)}` } : {}),
    ...(dice.often(0.3) ? { room: room() } : {}),
    ...(dice.often(0.15) ? { leftReason: 'died' as const, day: past() } : {}),
  }),
  splitGroup: ({ dice, animal, animals }: Present): Given<'splitGroup'> => ({
    animal: animals.find(({ count, leftDay }) => count > 1 && leftDay === null)?.code ?? animal(),
    heads: dice.whole(1, 2),
    into: dice.often(0.5) ? 'group' : 'singles',
  }),
  lend: ({ dice, animal, past, ahead }: Present): Given<'lend'> => ({
    animals: some(dice, animal),
    to: 'A friend',
    day: past(),
    back: dice.often(0.5) ? ahead() : undefined,
  }),
  cameBack: ({ dice, animals, animal, past }: Present): Given<'cameBack'> => ({
    animal: animals.find(({ leftReason }) => leftReason === 'lent')?.code ?? animal(),
    day: dice.often(0.6) ? undefined : past(),
  }),
  arrangeShelf: ({ dice, animal, animals, room }: Present): Given<'arrangeShelf'> => {
    const one = animals.find(({ code }) => code === animal());
    const at = one === undefined ? { room: room(), shelf: '' } : { room: one.room, shelf: one.shelf };
    const moving = { animals: [animal()], to: { room: room(), shelf: `S${dice.whole(1, 4)}` } };
    return { at, animals: some(dice, animal), ...(dice.often(0.3) ? { moving } : {}) };
  },
  arrangeShelves: ({ dice, animals }: Present): Given<'arrangeShelves'> => ({
    shelves: animals
      .map(({ room, shelf }) => ({ room, shelf }))
      .sort((a, b) => (dice.often(0.5) ? 1 : -1) * a.shelf.localeCompare(b.shelf)),
  }),
};
