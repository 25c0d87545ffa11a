/** What is true of one world and of no other: how its species differ from what is said of them, its weather, its evenings. */
import { keyOf, logNormal, normal, uniform } from './dice.ts';
import { FORMS, type Form, KINDS, type KindName } from './kinds.ts';
import { BREEDS, type Breed, USUAL_C } from './prey.ts';

export interface BreedTruth {
  /** Times as fast, and as deadly, as is said. */
  readonly speed: number;
  readonly hazard: number;
  /** Days at the usual temperature that growth up to the morning of each day is worth. */
  readonly grownBy: Float64Array;
}

export interface Truth {
  readonly key: number;
  readonly days: number;
  readonly tempC: Float64Array;
  /** 1 on evenings on which nobody feeds. */
  readonly skipped: Uint8Array;
  readonly generosity: number;
  readonly breeds: Readonly<Record<Form, BreedTruth>>;
  /** Times as long between moults as is said. */
  readonly moultPace: Readonly<Record<KindName, number>>;
}

const SKIPPED = 0.12;
const PART = { temp: 1, evening: 2, breed: 3, kind: 4, keeper: 5 } as const;

let last: { readonly seed: number; readonly truth: Truth } | null = null;

/** What is true of a world; of the last one asked for it is the very same, with all the lives drawn for it. */
export function truthOf(seed: number, days: number): Truth {
  if (last?.seed !== seed || last.truth.days !== days) last = { seed, truth: drawn(seed, days) };
  return last.truth;
}

function drawn(seed: number, days: number): Truth {
  const key = keyOf(0x51ed270b, seed);
  const evenings = keyOf(key, PART.evening);
  const tempC = temperatures(keyOf(key, PART.temp), days);
  const breeds = FORMS.map((form, f) => {
    const own = keyOf(keyOf(key, PART.breed), f);
    const speed = logNormal(own, 0, 0.15);
    return [form, { speed, hazard: logNormal(own, 1, 0.3), grownBy: growth(BREEDS[form], tempC) }] as const;
  });
  const paces = (Object.keys(KINDS) as KindName[]).map(
    (kind, k) => [kind, logNormal(keyOf(key, PART.kind), k, 0.15)] as const,
  );
  return {
    key,
    days,
    tempC,
    skipped: Uint8Array.from({ length: days }, (_, day) => Number(uniform(evenings, day) < SKIPPED)),
    generosity: logNormal(keyOf(key, PART.keeper), 0, 0.12),
    breeds: Object.fromEntries(breeds) as Truth['breeds'],
    moultPace: Object.fromEntries(paces) as Truth['moultPace'],
  };
}

/** A season of its own and slow weather within it. */
function temperatures(key: number, days: number): Float64Array {
  const swing = 0.5 + uniform(key, 0);
  const phase = uniform(key, 1);
  const temps = new Float64Array(days);
  let weather = 0;
  for (let day = 0; day < days; day += 1) {
    weather = 0.95 * weather + 0.2 * normal(key, 10 + day);
    temps[day] = USUAL_C + swing * Math.sin(2 * Math.PI * (day / 364 + phase)) + weather;
  }
  return temps;
}

function growth({ thresholdC }: Breed, tempC: Float64Array): Float64Array {
  const grownBy = new Float64Array(tempC.length + 1);
  for (let day = 0; day < tempC.length; day += 1) {
    const worth = Math.max(0, (tempC[day] as number) - thresholdC) / (USUAL_C - thresholdC);
    grownBy[day + 1] = (grownBy[day] as number) + worth;
  }
  return grownBy;
}
