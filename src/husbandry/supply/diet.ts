/** What an animal eats by its rule: which prey, how often, how much a week, and whether that is what its kind needs. */
import { type Animal, type Eater, eaterOf, type Kind, ruleOf, type StageRule } from '../animals/index.ts';
import { learnedInterval } from '../appetite/index.ts';
import {
  type LengthWindow,
  type PreySpecies,
  type TradeSizes,
  tradeSizes,
  windowFor,
} from '../prey/index.ts';
import type { Facts } from '../snapshot.ts';
import { DAYS_PER_WEEK, LENGTH_TO_MASS, type Mg } from '../units.ts';

export interface TradePrey extends TradeSizes {
  readonly species: PreySpecies;
}

export interface Diet {
  readonly kind: Kind;
  readonly rule: StageRule;
  readonly eater: Eater;
  /** For the staple; null where no prey in the Book suits. */
  readonly window: LengthWindow | null;
  /** Prey sold in the sizes it takes; null where no size sold is its best. */
  readonly trade: TradePrey | null;
  /** Days between meals: its own where it has a record. */
  readonly interval: { readonly min: number; readonly max: number };
  /** Of one head, if every meal is taken on time: items of the ideal size, and their live mass. */
  readonly itemsPerWeek: number;
  readonly mgPerWeek: Mg;
  /** That mass over its own. */
  readonly weeklyShare: number;
  readonly enough: 'too little' | 'right' | 'too much';
}

interface Known {
  readonly facts: Facts;
  /** Species kept here, which come first. */
  readonly kept: ReadonlySet<string>;
}

const middle = ([least, most]: readonly [number, number]): number => (least + most) / 2;

/**
 * Items a week = mean items of a meal x 7 / mean days between meals; mass a week = items x prey mass at the ideal
 * length; its share of own mass lies below, in or above the stage's weekly need. The prey is of the form named first.
 */
export function dietOf(animal: Animal, { facts, kept }: Known): Diet | null {
  const kind = facts.kinds.get(animal.kind);
  if (kind === undefined) return null;
  const rule = ruleOf(kind, animal);
  const eater = eaterOf(kind, animal);
  const menu = menuFor(rule, eater, { facts, kept });
  const interval = learnedInterval(rule, animal, facts.policy);
  const itemsPerWeek = (middle(rule.mealItems.value) * DAYS_PER_WEEK) / middle([interval.min, interval.max]);
  const [staple] = menu;
  const itemMg =
    staple === undefined ? 0 : staple.species.massPerCubicMm.value * staple.window.idealMm ** LENGTH_TO_MASS;
  const mgPerWeek = itemsPerWeek * itemMg;
  const weeklyShare = mgPerWeek / eater.massMg;
  return {
    ...{ kind, rule, eater, interval, itemsPerWeek, mgPerWeek, weeklyShare },
    window: staple?.window ?? null,
    trade: tradeOf(menu),
    enough: against(weeklyShare, rule.weeklyNeed.value),
  };
}

interface Dish {
  readonly species: PreySpecies;
  readonly window: LengthWindow;
}

/** What suits, in the order the rule names its forms; of one form, what is kept here first. */
function menuFor(rule: StageRule, eater: Eater, { facts, kept }: Known): readonly Dish[] {
  const rank = ({ species }: Dish): number =>
    2 * rule.accepts.indexOf(species.form) + (kept.has(species.code) ? 0 : 1);
  return [...facts.species.values()]
    .flatMap((species) => {
      const window = windowFor(rule, eater, species);
      return window === null ? [] : [{ species, window }];
    })
    .toSorted((a, b) => rank(a) - rank(b));
}

/** The first whose best length is sold; else the first with a size that is taken at all. */
function tradeOf(menu: readonly Dish[]): TradePrey | null {
  const sold = menu.flatMap(({ species, window }): (TradePrey & { readonly isBest: boolean })[] => {
    const sizes = tradeSizes(window, species.sizeClasses.value);
    const { best } = sizes;
    if (best === null) return [];
    const isBest = best.fromMm <= window.idealMm && window.idealMm <= best.toMm;
    return [{ species, ...sizes, isBest }];
  });
  return sold.find(({ isBest }) => isBest) ?? sold[0] ?? null;
}

function against(share: number, [least, most]: readonly [number, number]): Diet['enough'] {
  if (share < least) return 'too little';
  return share > most ? 'too much' : 'right';
}
