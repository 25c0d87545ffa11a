/** A colony in whole animals, week by week: who grows, dies, is born and takes a breeder's place. */
import { barren, columnAfter } from '../../maths/chain-step.ts';
import { dayKey, joinKeys, purposes, uniform } from '../../maths/random.ts';
import { dayOfChain } from '../../maths/uniformise.ts';
import { type Moves, moved, movesOf, poissonQuantile, roundedNormal } from '../../maths/whole-draws.ts';
import type { Chain } from '../larder/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { adultAgeWeeks, type Breeding } from './breeding.ts';

/** What is the same in every replicate. */
export interface HerdLaws {
  readonly chain: Chain;
  readonly firstAdult: number;
  readonly femaleShare: number;
  readonly retireWeeks: number;
  readonly adultAgeWeeks: Float64Array;
  /** A week's moves of one head, and where those born in it are at its end. */
  readonly moves: Moves;
  readonly born: Moves;
  /** Hatched young one female has in a week that she begins in a substage, deaths in it counted; and how they come. */
  readonly youngPerWeek: Float64Array;
  readonly brood: { readonly hatched: number; readonly cv: number } | null;
}

export interface Herd {
  /** Heads that are no breeders, by sex and substage: females in the first half, males in the second. */
  heads: Int32Array;
  /** Substage of each breeder, females first; VACANT where nobody is. */
  readonly breeders: Int32Array;
  readonly females: number;
  readonly ageWeeks: Float64Array;
  /** Share of the time to her next brood that has passed, of each female. */
  readonly brooding: Float64Array;
}

export const VACANT = -1;

export function herdLaws(breeding: Breeding): HerdLaws {
  const { chain, rates, femaleShare } = breeding;
  const still = barren(rates);
  const { laying } = chain.species;
  const newborn = new Float64Array(chain.size);
  for (let day = 0; day < DAYS_PER_WEEK; day++)
    columnAfter(still, rates.birthInto, day).forEach((share, j) => {
      newborn[j] = (newborn[j] as number) + share / DAYS_PER_WEEK;
    });
  return {
    chain,
    firstAdult: breeding.firstAdult,
    femaleShare,
    retireWeeks: breeding.retireWeeks,
    adultAgeWeeks: adultAgeWeeks(breeding),
    moves: movesOf(Array.from({ length: chain.size }, (_, from) => columnAfter(still, from, DAYS_PER_WEEK))),
    born: movesOf([newborn]),
    youngPerWeek: rates.birth.map((_, j) =>
      j < breeding.firstAdult ? 0 : bornInWeek(breeding, j) / femaleShare,
    ),
    brood: laying?.brood
      ? { hatched: laying.brood.young.value * laying.hatchShare.value, cv: laying.brood.youngCv.value }
      : null,
  };
}

/** Births of one adult in a week, not those of her young. */
function bornInWeek({ chain, rates, firstAdult }: Breeding, substage: number): number {
  let heads: Float64Array = new Float64Array(chain.size);
  heads[substage] = 1;
  let born = 0;
  for (let day = 0; day < DAYS_PER_WEEK; day++) {
    const next = dayOfChain(heads, rates);
    born += next.born;
    heads = next.heads.fill(0, 0, firstAdult);
  }
  return born;
}

const OF = purposes('growth', 'breeder', 'brood', 'phase', 'place', 'sex');
/** One week of growth, deaths and births; vacant places are filled from those that are adult and no breeders. */
export function weekOfHerd(laws: HerdLaws, herd: Herd, key: number): void {
  grow(laws, herd, joinKeys(key, OF.growth));
  bear(laws, herd, key);
  ageBreeders(laws, herd, joinKeys(key, OF.breeder));
  fillPlaces(laws, herd, joinKeys(key, OF.phase));
}

/** Heads of one substage draw under a key of their own, so that one more leaves the others' fates as they are. */
function grow({ chain, moves }: HerdLaws, herd: Herd, key: number): void {
  const next = new Int32Array(herd.heads.length);
  for (let at = 0; at < next.length; at++) {
    const substage = at % chain.size;
    const sex = at - substage;
    const own = joinKeys(key, at);
    for (let i = herd.heads[at] as number; i > 0; i--) {
      const to = moved(moves, substage, uniform(own, i));
      if (to >= 0) next[sex + to] = (next[sex + to] as number) + 1;
    }
  }
  herd.heads = next;
}

function ageBreeders({ moves, retireWeeks }: HerdLaws, { breeders, ageWeeks }: Herd, key: number): void {
  breeders.forEach((substage, slot) => {
    if (substage === VACANT) return;
    ageWeeks[slot] = (ageWeeks[slot] as number) + 1;
    const retires = (ageWeeks[slot] as number) > retireWeeks;
    breeders[slot] = retires ? VACANT : moved(moves, substage, uniform(key, slot));
  });
}

/** Without a male there are no young, but in species that need none. */
function bear(laws: HerdLaws, herd: Herd, key: number): void {
  const { breeders, females } = herd;
  const males = breeders.subarray(females);
  if (males.length > 0 && males.every((substage) => substage === VACANT)) return;
  for (let slot = 0; slot < females; slot++) {
    const substage = breeders[slot] as number;
    if (substage === VACANT) continue;
    const own = joinKeys(joinKeys(key, OF.brood), slot);
    addYoung(laws, herd, { count: youngOf(laws, herd, { slot, substage, key: own }), key: own });
  }
}

/** Broods come at even intervals, of varying size; without broods young come singly. */
function youngOf(
  { brood, youngPerWeek }: HerdLaws,
  { brooding }: Herd,
  { slot, substage, key }: { slot: number; substage: number; key: number },
): number {
  const mean = youngPerWeek[substage] as number;
  if (!brood) return poissonQuantile(uniform(key, OF.brood), mean);
  let young = 0;
  let ripe = (brooding[slot] as number) + mean / brood.hatched;
  for (; ripe >= 1; ripe--)
    young += roundedNormal(uniform(dayKey(key, Math.floor(ripe)), OF.brood), brood.hatched, brood.cv);
  brooding[slot] = ripe;
  return young;
}

function addYoung(
  { chain, born, femaleShare }: HerdLaws,
  { heads }: Herd,
  { count, key }: { count: number; key: number },
): void {
  const place = joinKeys(key, OF.place);
  const sex = joinKeys(key, OF.sex);
  for (let i = 0; i < count; i++) {
    const to = moved(born, 0, uniform(place, i));
    if (to < 0) continue;
    const at = to + (uniform(sex, i) < femaleShare ? 0 : chain.size);
    heads[at] = (heads[at] as number) + 1;
  }
}

/** The youngest adults come first. A female's first brood is as far off as any: the chain lays from the first day on. */
function fillPlaces({ chain, firstAdult, adultAgeWeeks: ages }: HerdLaws, herd: Herd, key: number): void {
  const { breeders, females, heads, brooding, ageWeeks } = herd;
  breeders.forEach((now, slot) => {
    if (now !== VACANT) return;
    const sex = slot < females ? 0 : chain.size;
    let substage = firstAdult;
    while (substage < chain.size && heads[sex + substage] === 0) substage++;
    if (substage === chain.size) return;
    heads[sex + substage] = (heads[sex + substage] as number) - 1;
    breeders[slot] = substage;
    ageWeeks[slot] = ages[substage] as number;
    if (slot < females) brooding[slot] = uniform(key, slot);
  });
}
