/** Inputs drawn for the acts about animals: most are good, some are not. */
import type * as actions from '../../../src/actions/index.ts';
import { WAYS_TO_LEAVE } from '../../../src/actions/take-away.ts';
import type { Present } from './present.ts';

type Given<N extends keyof typeof actions> = Parameters<(typeof actions)[N]>[1];

const KINDS = ['brachypelma-hamorii', 'hierodula-membranacea', 'any-mantid', 'no-such-kind'];
const SEXES = ['male', 'female', 'unsexed'] as const;

const newAnimal = ({ dice, room, past, kinds }: Present) => ({
  name: dice.often(0.5) ? `Named ${dice.whole(1, 99)}` : '',
  kind:
    (dice.often(0.3) ? dice.pick(kinds)?.code : undefined) ?? (dice.often(0.95) ? KINDS[0]! : KINDS.at(-1)!),
  count: dice.often(0.3) ? dice.whole(2, 6) : 1,
  sex: dice.pick(SEXES) ?? 'unsexed',
  gaugeMm: dice.often(0.95) ? dice.whole(8, 90) : 0,
  room: room(),
  demo: dice.often(0.3),
  lastTaken: dice.often(0.5) ? past() : undefined,
});

const offered = ({ dice, animal, bin }: Present) => {
  const fromMm = dice.whole(3, 8);
  return {
    animal: animal(),
    outcome: 'offered' as const,
    bin: bin(),
    heads: dice.whole(1, 9),
    fromMm,
    toMm: fromMm + (dice.often(0.95) ? 3 : -2),
    bulk: dice.often(0.5),
  };
};
const OUTCOMES = ['not offered', 'premoult', 'moulted', 'died'] as const;
const round = (here: Present) =>
  Array.from({ length: here.dice.whole(1, 4) }, () =>
    here.dice.often(0.7)
      ? offered(here)
      : { animal: here.animal(), outcome: here.dice.pick(OUTCOMES) ?? 'premoult' },
  );
const MORNING = ['taken', 'part-taken', 'refused', 'moulted'] as const;

export const animalActs = {
  addAnimal: (here: Present): Given<'addAnimal'> => newAnimal(here),
  editAnimal: ({ dice, animal, room }: Present): Given<'editAnimal'> => ({
    animal: animal(),
    ...(dice.often(0.4) ? { shelf: `S${dice.whole(1, 4)}` } : {}),
    ...(dice.often(0.4) ? { room: room() } : {}),
    ...(dice.often(0.3) ? { label: dice.pick(['red', 'blue', '']) } : {}),
    ...(dice.often(0.2) ? { gaugeMm: dice.whole(8, 90) } : {}),
    ...(dice.often(0.1) ? { leftReason: 'sold' as const } : {}),
    ...(dice.often(0.1) ? { asOf: 0 } : {}),
  }),
  recordEvening: (here: Present): Given<'recordEvening'> => ({
    day: here.dice.often(0.4) ? here.past() : undefined,
    rows: round(here),
  }),
  recordMorning: ({ dice, animal }: Present): Given<'recordMorning'> => ({
    exceptions: dice.often(0.4) ? [{ animal: animal(), outcome: dice.pick(MORNING) ?? 'taken' }] : [],
  }),
  recordMoult: ({ dice, animal, past }: Present): Given<'recordMoult'> => ({
    animal: animal(),
    found: past(),
    earliest: dice.often(0.3) ? past() : undefined,
    gaugeMm: dice.often(0.3) ? dice.whole(8, 90) : undefined,
  }),
  recordMeasure: ({ dice, animal, past }: Present): Given<'recordMeasure'> => ({
    animal: animal(),
    gaugeMm: dice.whole(8, 90),
    day: past(),
  }),
  recordPremoult: ({ animal, past }: Present): Given<'recordPremoult'> => ({ animal: animal(), day: past() }),
  recordMatured: ({ animal, past }: Present): Given<'recordMatured'> => ({ animal: animal(), day: past() }),
  recordDied: ({ dice, animal, past }: Present): Given<'recordDied'> => ({
    animal: animal(),
    heads: dice.whole(1, 3),
    day: past(),
  }),
  takeAway: ({ dice, animal, past }: Present): Given<'takeAway'> => ({
    animal: animal(),
    reason: dice.pick(WAYS_TO_LEAVE) ?? 'sold',
    day: past(),
  }),
  planChange: ({ dice, animal, room, ahead }: Present): Given<'planChange'> => {
    const from = ahead();
    return {
      kind: dice.pick(['sac', 'arrival', 'sale'] as const) ?? 'sac',
      animalKind: KINDS[0]!,
      from,
      to: dice.often(0.9) ? from : ahead(),
      count: dice.whole(1, 40),
      gaugeMm: 5,
      room: room(),
      animal: dice.often(0.5) ? animal() : undefined,
      demo: dice.often(0.3),
    };
  },
  cancelChange: ({ change }: Present): Given<'cancelChange'> => ({ change: change() }),
  importRows: (here: Present): Given<'importRows'> => ({
    animals: {
      new: here.dice.often(0.6) ? [withoutMeal(newAnimal(here)), withoutMeal(newAnimal(here))] : [],
      changed: here.dice.often(0.6) ? [{ code: here.animal(), fields: { notes: 'from a list' } }] : [],
    },
    lots: here.dice.often(0.5) ? [{ bin: here.bin(), lot: { heads: 50, fromMm: 4, toMm: 6 } }] : [],
  }),
};

const withoutMeal = ({ lastTaken: _, ...animal }: ReturnType<typeof newAnimal>) => animal;
