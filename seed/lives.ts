/** What happened to single animals of the demo room, by day before today: moults, measures, premoult and a death. */
import {
  type Context,
  recordDied,
  recordMeasure,
  recordMoult,
  recordPremoult,
} from '../src/actions/index.ts';
import { ok, type Result } from '../src/husbandry/result.ts';
import { type Codes, codeOf } from './codes.ts';

type LifeEvent = { readonly daysAgo: number; readonly animal: string } & (
  | { readonly what: 'moulted'; readonly gaugeMm?: number }
  | { readonly what: 'measured'; readonly gaugeMm: number }
  | { readonly what: 'premoult' | 'died' }
);

const LIVES: readonly LifeEvent[] = [
  { daysAgo: 24, what: 'moulted', animal: 'Curly 2' },
  { daysAgo: 21, what: 'moulted', animal: 'Stripe 1', gaugeMm: 67 },
  { daysAgo: 20, what: 'measured', animal: 'Boulder', gaugeMm: 216 },
  { daysAgo: 17, what: 'died', animal: 'Twig 1' },
  { daysAgo: 15, what: 'moulted', animal: 'Golden 4' },
  { daysAgo: 14, what: 'moulted', animal: 'Leaf 2' },
  { daysAgo: 12, what: 'measured', animal: 'Golden 4', gaugeMm: 20 },
  { daysAgo: 10, what: 'died', animal: 'Nymph tub' },
  { daysAgo: 8, what: 'moulted', animal: 'Marble 2' },
  { daysAgo: 6, what: 'premoult', animal: 'Soot 1' },
  { daysAgo: 5, what: 'measured', animal: 'Pebble 3', gaugeMm: 75 },
  { daysAgo: 3, what: 'premoult', animal: 'Thistle' },
  { daysAgo: 2, what: 'moulted', animal: 'Ash 3' },
];

/** Writes down what happened to animals on a day. */
export async function recordLives(then: Context, codes: Codes, daysAgo: number): Promise<Result<null>> {
  for (const event of LIVES.filter((each) => each.daysAgo === daysAgo)) {
    const done = await recordLife(then, codeOf(codes.animals, event.animal), event);
    if (!done.ok) return done;
  }
  return ok(null);
}

function recordLife(then: Context, animal: string, event: LifeEvent): Promise<Result<unknown>> {
  switch (event.what) {
    case 'moulted':
      return recordMoult(then, {
        animal,
        ...(event.gaugeMm === undefined ? {} : { gaugeMm: event.gaugeMm }),
      });
    case 'measured':
      return recordMeasure(then, { animal, gaugeMm: event.gaugeMm });
    case 'premoult':
      return recordPremoult(then, { animal });
    case 'died':
      return recordDied(then, { animal });
  }
}
