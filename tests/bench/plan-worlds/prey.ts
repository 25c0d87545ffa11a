/** The prey of the worlds: how long it grows, what length it has on the way, how fast it dies. */
import type { Form } from './kinds.ts';

export interface Breed {
  readonly species: string;
  readonly form: Form;
  /** Mean days from hatch to grown at the usual temperature, and temperature below which nothing grows. */
  readonly daysToGrown: number;
  readonly thresholdC: number;
  /** Spread among siblings, standard deviation of the logarithm. */
  readonly logSd: number;
  /** Body length by share of the way to grown, straight in the logarithm between. */
  readonly lengths: readonly (readonly [share: number, mm: number])[];
  readonly deathsPerDay: number;
  /** Days it lives once grown; 0: pupates, and is food no more. */
  readonly grownDays: number;
}

/** Temperature at which the days are told. */
export const USUAL_C = 26;

export const BREEDS = {
  cricket: {
    species: 'acheta-domesticus',
    form: 'cricket',
    daysToGrown: 70,
    thresholdC: 12.1,
    logSd: 0.12,
    lengths: [
      [0, 2.2],
      [0.17, 3.5],
      [0.3, 6],
      [0.45, 9],
      [0.61, 12.5],
      [0.79, 17],
      [1, 20],
    ],
    deathsPerDay: 0.02,
    grownDays: 67,
  },
  roach: {
    species: 'blaptica-dubia',
    form: 'roach',
    daysToGrown: 213,
    thresholdC: 16.5,
    logSd: 0.2,
    lengths: [
      [0, 4.5],
      [1, 42],
    ],
    deathsPerDay: 0.001,
    grownDays: 460,
  },
  mealworm: {
    species: 'tenebrio-molitor',
    form: 'mealworm',
    daysToGrown: 110,
    thresholdC: 11.9,
    logSd: 0.12,
    lengths: [
      [0, 2.2],
      [0.285, 4.6],
      [0.57, 9.5],
      [0.86, 19.5],
      [1, 28],
    ],
    deathsPerDay: 0.001,
    grownDays: 0,
  },
} as const satisfies Record<Form, Breed>;

/** Length classes of equal ratio, so that prey is found by its length without being sorted. */
export const BANDS = 160;
const SHORTEST_MM = 1.5;
const BAND_LOG = Math.log(48 / SHORTEST_MM) / BANDS;

export const bandOf = (mm: number): number =>
  Math.max(0, Math.min(BANDS - 1, Math.floor(Math.log(mm / SHORTEST_MM) / BAND_LOG)));

/** Middle length of each band, mm. */
export const BAND_MM = Float64Array.from(
  { length: BANDS },
  (_, band) => SHORTEST_MM * Math.exp((band + 0.5) * BAND_LOG),
);

/** Steps of the way to grown at which a band is looked up. */
export const STEPS = 1024;

/** Band of each step of the way to grown, the last for the grown. */
export const bandsOf = ({ lengths }: Breed): Uint8Array =>
  Uint8Array.from({ length: STEPS + 1 }, (_, step) => bandOf(lengthAt(lengths, step / STEPS)));

function lengthAt(lengths: Breed['lengths'], share: number): number {
  const above = Math.max(
    1,
    lengths.findIndex(([s]) => s >= share),
  );
  const [s0, mm0] = lengths[above - 1] as readonly [number, number];
  const [s1, mm1] = lengths[above] as readonly [number, number];
  return mm0 * (mm1 / mm0) ** ((share - s0) / (s1 - s0));
}

/** Share of the way to grown at which a length is reached; 1 for what is longer than the grown. */
export function shareAt({ lengths }: Breed, mm: number): number {
  const above = lengths.findIndex(([, each]) => each >= mm);
  if (above < 0) return 1;
  if (above === 0) return 0;
  const [s0, mm0] = lengths[above - 1] as readonly [number, number];
  const [s1, mm1] = lengths[above] as readonly [number, number];
  return s0 + ((s1 - s0) * Math.log(mm / mm0)) / Math.log(mm1 / mm0);
}
