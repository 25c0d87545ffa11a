/** Colonies of a world: what is born in a week, what a crash leaves, and what is harvested. */
import { keyOf, logNormal, uniform } from './dice.ts';
import { type Larder, lengthOf, newTub, putIn, remove, stepOf, type Tub } from './larder.ts';
import type { Harvest } from './log.ts';
import { BREEDS, STEPS } from './prey.ts';
import type { ColonyPlan, Room } from './rooms.ts';
import type { Truth } from './truth.ts';

const FOR = { start: 1, births: 2, crash: 3 } as const;
const CRASH_A_WEEK = 0.004;
const CRASH_SHARE = 0.8;
const DIE_OFF_A_WEEK = 0.002;
const DIE_OFF_SHARE = 0.9;
const BIRTHS_LOG_SD = 0.25;

/** The colonies as they stand on the first day: breeders, and young of all sizes, as many as nobody has eaten. */
export function startColonies(larder: Larder, truth: Truth, { colonies }: Room): void {
  colonies.forEach((colony, c) => {
    const { lengths } = BREEDS[colony.form];
    const key = keyOf(truth.key, 2_000_000 + c);
    const grownMm = (lengths[lengths.length - 1] as readonly [number, number])[1];
    const young = Math.round(colony.adults * colony.youngPerWeek * 12);
    const tub = newTub(larder, {
      code: `colony ${c + 1}`,
      form: colony.form,
      colonyRoom: colony.room,
      key,
      book: colony.adults + young,
      looksMm: grownMm / 2,
    });
    const lots = [
      { heads: colony.adults, fromMm: grownMm, toMm: grownMm },
      { heads: young, fromMm: lengths[0][1], toMm: grownMm / 2 },
    ];
    lots.forEach((lot, n) => {
      putIn(larder, truth, { tub, lot: { ...lot, day: 0, key: keyOf(key, FOR.start) + n } });
      larder.heads.born += lot.heads;
      (larder.tubs[tub] as Tub).events.push({ day: -1, what: 'moved in', ...lot });
    });
  });
}

/** A week's births: the grown bear, the less the fuller the colony is. */
export function bear(
  larder: Larder,
  truth: Truth,
  { colonies, day }: { colonies: readonly ColonyPlan[]; day: number },
): void {
  colonies.forEach((colony, c) => {
    const tub = larder.tubs.findIndex((each) => each?.code === `colony ${c + 1}`);
    const it = larder.tubs[tub] as Tub;
    const key = keyOf(keyOf(it.key, FOR.births), day);
    const free = Math.max(0, 1 - it.alive / colony.room);
    const heads = Math.round(
      grownIn(larder, truth, tub, day) * colony.youngPerWeek * free * logNormal(key, 0, BIRTHS_LOG_SD),
    );
    const [[, bornMm]] = BREEDS[colony.form].lengths;
    putIn(larder, truth, { tub, lot: { heads, fromMm: bornMm, toMm: bornMm, day, key } });
    larder.heads.born += heads;
    it.book += heads;
  });
}

function grownIn(larder: Larder, truth: Truth, tub: number, day: number): number {
  let grown = 0;
  for (let h = 0; h < larder.count; h += 1)
    if (larder.tub[h] === tub && (larder.dies[h] as number) > day && stepOf(larder, truth, h, day) === STEPS)
      grown += 1;
  return grown;
}

/** Once a week a tub may die off, or a colony crash; the keeper sees it. */
export function crash(larder: Larder, day: number): void {
  larder.tubs.forEach((tub, t) => {
    if (!tub || tub.alive === 0) return;
    const colony = tub.colonyRoom !== null;
    const key = keyOf(keyOf(tub.key, FOR.crash), day);
    if (uniform(key, 0) >= (colony ? CRASH_A_WEEK : DIE_OFF_A_WEEK)) return;
    for (let h = 0; h < larder.count; h += 1)
      if (
        larder.tub[h] === t &&
        uniform(key, 10 + h) < (colony ? CRASH_SHARE : DIE_OFF_SHARE) &&
        (larder.dies[h] as number) > day
      )
        larder.dies[h] = day;
    const left = countAlive(larder, t, day);
    tub.book = left;
    tub.events.push({ day, what: 'died off', left });
  });
}

function countAlive(larder: Larder, tub: number, day: number): number {
  let alive = 0;
  for (let h = 0; h < larder.count; h += 1)
    if (larder.tub[h] === tub && (larder.dies[h] as number) > day) alive += 1;
  return alive;
}

/** Heads of these lengths move out of a colony into a tub of their own; no more than there are. */
export function harvest(
  larder: Larder,
  truth: Truth,
  { day, tub: code, heads, fromMm, toMm }: Harvest,
): void {
  const from = larder.tubs.findIndex((each) => each?.code === code);
  const source = larder.tubs[from];
  if (!source) return;
  const fits = (h: number) => {
    const mm = lengthOf(larder, truth, h, day);
    return larder.tub[h] === from && (larder.dies[h] as number) > day && mm >= fromMm && mm <= toMm;
  };
  const chosen = Array.from({ length: larder.count }, (_, h) => h)
    .filter(fits)
    .slice(0, Math.round(heads));
  if (chosen.length === 0) return;
  const moved = { heads: chosen.length, fromMm, toMm, day };
  const into = newTub(larder, {
    code: `h${larder.tubs.length}`,
    form: source.form,
    colonyRoom: null,
    key: keyOf(source.key, day),
    book: chosen.length,
    looksMm: (fromMm + toMm) / 2,
  });
  for (const h of chosen) larder.tub[h] = into;
  source.alive -= chosen.length;
  source.book -= chosen.length;
  source.events.push({ what: 'harvested', ...moved });
  const target = larder.tubs[into] as Tub;
  target.alive = chosen.length;
  target.events.push({ what: 'moved in', ...moved });
}

/** Takes the heads left in a tub out of the world. */
export function throwOut(larder: Larder, tub: number, day: number): void {
  for (let h = 0; h < larder.count; ) {
    if (larder.tub[h] !== tub) {
      h += 1;
      continue;
    }
    const dies = larder.dies[h] as number;
    if (dies > day) larder.heads.thrownOut += 1;
    else if (dies >= 0) larder.heads.died += 1;
    remove(larder, h);
  }
  larder.tubs[tub] = null;
}
