/** Inputs drawn for what is done to the living stock: harvested, culled, split, placed and kept apart. */
import type * as actions from '../../../src/actions/index.ts';
import type { Present } from './present.ts';

type Given<N extends keyof typeof actions> = Parameters<(typeof actions)[N]>[1];

/** A number there may not be, insisted on now and then. */
const taking = ({ dice, bin, past }: Present) => ({
  bin: bin(),
  heads: dice.whole(1, 250),
  day: past(),
  sure: dice.often(0.6),
});
const sized = ({ dice }: Present) =>
  dice.often(0.6) ? { fromMm: dice.whole(2, 9), toMm: dice.whole(8, 20) } : {};
const bytes = (...lines: string[]) => new TextEncoder().encode(`${lines.join('\n')}\n`);

export const livingActs = {
  harvest: (here: Present): Given<'harvest'> => ({
    ...taking(here),
    fromMm: here.dice.whole(2, 9),
    toMm: here.dice.whole(8, 20),
    to: here.dice.often(0.5) ? here.bin() : '',
  }),
  retire: (here: Present): Given<'retire'> => ({
    ...taking(here),
    to: here.dice.often(0.5) ? here.bin() : '',
  }),
  cull: (here: Present): Given<'cull'> => ({
    ...taking(here),
    ...sized(here),
    how: here.dice.pick(['frozen', 'humanely'] as const) ?? 'frozen',
  }),
  splitBin: (here: Present): Given<'splitBin'> => {
    const { heads, ...rest } = taking(here);
    return here.dice.often(0.5) ? { ...rest, heads } : { ...rest, percent: here.dice.whole(0, 100) };
  },
  mergeBins: ({ dice, bin, past }: Present): Given<'mergeBins'> => ({
    bin: bin(),
    to: bin(),
    day: past(),
    sure: dice.often(0.7),
  }),
  cleanOut: ({ dice, bin, past }: Present): Given<'cleanOut'> => ({
    bin: bin(),
    eggsLost: dice.whole(0, 110),
    day: past(),
  }),
  quarantine: ({ dice, bin }: Present): Given<'quarantine'> => ({ bin: bin(), days: dice.whole(0, 20) }),
  restBin: ({ dice, bin }: Present): Given<'restBin'> => ({ bin: bin(), days: dice.whole(0, 20) }),
  placeBin: ({ dice, bin, room, past }: Present): Given<'placeBin'> => ({
    bin: bin(),
    ...(dice.often(0.6) ? { room: room() } : {}),
    ...(dice.often(0.5) ? { ownC: dice.often(0.3) ? null : { dayC: dice.whole(20, 50), nightC: 18 } } : {}),
    day: past(),
  }),
  coldStore: ({ bin, past }: Present): Given<'coldStore'> => ({ bin: bin(), day: past() }),
  foundDead: ({ dice, bin, past }: Present): Given<'foundDead'> => ({
    bin: bin(),
    heads: dice.whole(1, 30),
    day: past(),
  }),
  seeAdults: ({ bin, past }: Present): Given<'seeAdults'> => ({ bin: bin(), day: past() }),
  sexAdults: ({ dice, bin, past }: Present): Given<'sexAdults'> => ({
    bin: bin(),
    females: dice.whole(0, 9),
    males: dice.whole(0, 9),
    day: past(),
  }),
  dieOff: ({ dice, bin, past }: Present): Given<'dieOff'> => ({
    bin: bin(),
    left: dice.whole(0, 50),
    day: past(),
  }),
  readTemperatures: ({ dice, room, past }: Present): Given<'readTemperatures'> => ({
    room: room(),
    bytes: bytes('date,temperature', `${past()},${dice.often(0.9) ? dice.whole(10, 30) : 'warm'}`),
  }),
};
