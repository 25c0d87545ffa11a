/**
 * Small problems drawn at random, by number: prey that grows, dies and is eaten in two windows, some of it killed first,
 * parcels paid before they come, and now and then all else a plan knows: minimum orders, free postage, price breaks, cups,
 * room, breeders, budgets, pools, shares that are capped, a value at the end.
 */
import type {
  Fare,
  PlanEater,
  PlanPack,
  PlanParcel,
  PlanPlace,
  PlanPool,
  PlanProblem,
  PlanStart,
} from '../../../src/husbandry/plan/problem.ts';
import { dayKey, mix32, uniform } from '../../../src/maths/random.ts';

interface Dice {
  /** A whole number from least to most. */
  readonly roll: (least: number, most: number) => number;
  /** A broken one, to hundredths: no share of heads is too small for the programme to count. */
  readonly share: (least: number, most: number) => number;
  /** True so often. */
  readonly hit: (chance: number) => boolean;
}

const STEPS = 100;

function diceOf(number: number): Dice {
  const key = mix32(number + 1);
  let drawn = 0;
  const next = () => uniform(dayKey(key, drawn++), 1);
  return {
    roll: (least, most) => least + Math.floor(next() * (most - least + 1)),
    share: (least, most) => Math.round(STEPS * (least + next() * (most - least))) / STEPS,
    hit: (chance) => next() < chance,
  };
}

const NODES = 3;

export function smallProblem(number: number): PlanProblem {
  const dice = diceOf(number);
  const periods = dice.roll(2, 4);
  const placeCount = dice.roll(1, 2);
  const places = times(placeCount, (p) => placeFrom(dice, periods, p === 0));
  const eaters = times(2, (e) => eaterFrom(dice, { periods, placeCount, e }));
  const parcels = times(dice.roll(1, 3), (i) => parcelFrom(dice, { periods, placeCount, i }));
  const cups = dice.hit(0.25) ? [startFrom(dice, periods)] : [];
  return {
    periods,
    places,
    eaters,
    parcels,
    starts: cups,
    rests: [],
    pools: dice.hit(0.4) ? [poolFrom(dice, eaters[0]!, periods)] : [],
    budget: Float64Array.from({ length: periods }, () =>
      dice.hit(0.3) ? dice.roll(20, 90) : Number.POSITIVE_INFINITY,
    ),
    wholeUntil: periods,
  };
}

const times = <T>(count: number, make: (i: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => make(i));

/** Some stay as they are, some grow, some die. */
function passFrom(dice: Dice): Float64Array[] {
  const pass = times(NODES, () => new Float64Array(NODES));
  for (let from = 0; from < NODES; from++) {
    const alive = dice.share(0.5, 1);
    const grows = from + 1 < NODES ? dice.share(0, 1) : 0;
    pass[from]![from] = alive * (1 - grows);
    if (from + 1 < NODES) pass[from + 1]![from] = alive * grows;
  }
  return pass;
}

const placeFrom = (dice: Dice, periods: number, isFirst: boolean): PlanPlace => ({
  key: isFirst ? 'first' : 'second',
  nodes: NODES,
  passes: times(periods - 1, () => passFrom(dice)),
  comes: times(periods, (t) =>
    Float64Array.from({ length: NODES }, () => (t === 0 || dice.hit(0.2) ? dice.roll(0, 3) : 0)),
  ),
  keepCents: dice.hit(0.7) ? dice.share(0, 1.5) : 0,
  room: dice.hit(0.25) ? { footprint: Float64Array.of(0.5, 1, 2), most: dice.roll(4, 20) } : null,
  floor:
    isFirst && dice.hit(0.2)
      ? {
          counts: Float64Array.of(0, 0.5, 1),
          least: new Float64Array(periods).fill(dice.roll(1, 4)),
          cents: dice.roll(1, 15),
        }
      : null,
});

/** The first eats small prey, the second large; either takes the next size killed first. */
function eaterFrom(
  dice: Dice,
  { periods, placeCount, e }: { periods: number; placeCount: number; e: number },
): PlanEater {
  const capped = dice.hit(0.3);
  const fare = times(placeCount, (place): Fare[] => {
    const items = [0.5, 1, 1.5][dice.roll(0, 2)]!;
    const cap = capped && place === 0 ? 0 : -1;
    return [
      { place, node: e, items, cents: 0, cap, ripeness: e + 0.2 * place },
      {
        place,
        node: e + 1,
        items: items * 1.5,
        cents: dice.share(0.5, 4),
        cap,
        ripeness: e + 1 + 0.2 * place,
      },
    ];
  }).flat();
  return {
    key: e === 0 ? 'small eaters' : 'large eaters',
    urgency: e === 0 ? 'fragile' : 'robust',
    wanted: Float64Array.from({ length: periods }, () => (dice.hit(0.8) ? dice.roll(1, 9) : 0)),
    lateMost: Float64Array.from({ length: periods }, () => dice.roll(0, 4)),
    lateCents: dice.share(0.5, 5),
    missedCents: dice.share(10, 60),
    fare,
    caps: capped ? [{ share: dice.share(0.2, 0.8), cents: dice.share(0.5, 6) }] : [],
    end: {
      cents: dice.share(0.5, 4),
      weekly: dice.hit(0.5) ? dice.roll(1, 4) : 0,
      fare: fare.map(({ place, node, items }) => {
        const until = dice.roll(1, 3);
        return { place, node, items: items * dice.share(0.6, 1.2), span: dice.roll(1, until), until };
      }),
    },
  };
}

function parcelFrom(
  dice: Dice,
  { periods, placeCount, i }: { periods: number; placeCount: number; i: number },
): PlanParcel {
  const period = dice.roll(0, periods - 1);
  const hasFree = dice.hit(0.35);
  const key = `S${i}@${period}`;
  return {
    key,
    period,
    paid: Math.max(0, period - dice.roll(0, 2)),
    postageCents: dice.hit(0.8) ? dice.roll(1, 15) : 0,
    labourCents: dice.hit(0.5) ? dice.roll(1, 5) : 0,
    minimumCents: dice.hit(0.3) ? dice.roll(15, 50) : 0,
    freeFromCents: hasFree ? dice.roll(20, 60) : null,
    packs: times(i === 0 ? dice.roll(1, 2) : 1, (j) =>
      packFrom(dice, dice.roll(0, placeCount - 1), `O${i}${j}@${period}`),
    ),
  };
}

function packFrom(dice: Dice, place: number, key: string): PlanPack {
  const cents = dice.roll(6, 30);
  const second = dice.roll(2, 3);
  return {
    key,
    place,
    breaks: [
      { fromPacks: 1, cents },
      ...(dice.hit(0.4) ? [{ fromPacks: second, cents: Math.round(cents * dice.share(0.5, 0.95)) }] : []),
    ],
    least: dice.hit(0.08) ? 1 : 0,
    most: dice.roll(1, 4),
    lineCents: dice.hit(0.2) ? dice.roll(1, 6) : 0,
    weightCents: dice.hit(0.4) ? dice.roll(1, 4) : 0,
    brings: Float64Array.from({ length: NODES }, (_, n) => (n < 2 ? dice.share(0, 6) : 0)),
  };
}

const startFrom = (dice: Dice, periods: number): PlanStart => ({
  key: 'cup',
  period: 0,
  paid: 0,
  place: 0,
  cents: dice.roll(3, 12),
  least: 0,
  most: dice.roll(1, 2),
  brings: times(periods, (t) => Float64Array.of(t === 0 ? 0 : dice.share(0, 4), 0, 0)),
});

const poolFrom = (dice: Dice, { fare }: PlanEater, periods: number): PlanPool => ({
  key: 'ready',
  fare,
  least: Float64Array.from({ length: periods }, () => dice.roll(0, 4)),
  cents: dice.share(1, 10),
});
