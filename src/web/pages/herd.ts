/** Who lives here, each with what the list can be searched and narrowed by. */
import { type Animal, eaterOf, type Kind, ruleOf, type StageRule } from '../../husbandry/animals/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { nextMealOf, reasonToWait } from '../../husbandry/supply/index.ts';
import type { Mm } from '../../husbandry/units.ts';
import type { AnimalMark } from '../../store/index.ts';

export const TRAITS = [
  'due',
  'late',
  'premoult',
  'hardening',
  'refused',
  'measure',
  'fragile',
  'group',
] as const;
export type Trait = (typeof TRAITS)[number];

export interface Seen {
  readonly animal: Animal;
  readonly kind: Kind;
  readonly rule: StageRule;
  readonly meal: ReturnType<typeof nextMealOf>;
  /** Why it must be left alone, or null. */
  readonly waits: string | null;
  readonly referenceMm: Mm;
  readonly traits: ReadonlySet<Trait>;
  /** Everything written of it, in small letters. */
  readonly text: string;
}

/** In the order of the walk. */
export function herdOf(snapshot: Snapshot, marks: readonly AnimalMark[]): readonly Seen[] {
  const markOf = new Map(marks.map((mark) => [mark.code, mark]));
  const rooms = new Map(snapshot.rooms.map(({ code, name }) => [code, name]));
  return snapshot.animals.map((animal) => {
    const kind = snapshot.facts.kinds.get(animal.kind) as Kind;
    const rule = ruleOf(kind, animal);
    const meal = nextMealOf(snapshot, animal);
    const waits = reasonToWait(meal, snapshot.today);
    const mark = markOf.get(animal.code);
    const looked = { animal, rule, meal, waits, mark, today: snapshot.today };
    return {
      ...{ animal, kind, rule, meal, waits },
      referenceMm: eaterOf(kind, animal).referenceMm,
      traits: new Set(TRAITS.filter((trait) => HAS[trait](looked))),
      text: textOf({ animal, kind, rule, mark, room: rooms.get(animal.room) ?? '' }),
    };
  });
}

interface Looked extends Pick<Seen, 'animal' | 'rule' | 'meal' | 'waits'> {
  readonly mark: AnimalMark | undefined;
  readonly today: number;
}

const hardens = ({ animal, rule, today }: Looked): boolean =>
  animal.lastMoult !== null && animal.lastMoult.found + Math.ceil(rule.waitAfterMoultDays.value) > today;

const SEVERAL = 2;

const HAS: Readonly<Record<Trait, (looked: Looked) => boolean>> = {
  due: ({ waits, meal, today }) => waits === null && (meal.tonight || meal.evening === today),
  late: ({ waits, meal, today }) => waits === null && today > meal.to,
  premoult: (looked) => looked.waits !== null && !hardens(looked),
  hardening: hardens,
  refused: ({ animal }) => animal.refusalsInRow >= SEVERAL,
  measure: wantsMeasuring,
  fragile: ({ rule }) => rule.urgency === 'fragile',
  group: ({ animal }) => animal.count > 1,
};

/** Never measured, or so long ago that it has most likely moulted since: its kind's mean cycle has passed. */
function wantsMeasuring({ animal, rule, mark, today }: Looked): boolean {
  if (animal.gaugeAssumed) return true;
  return mark !== undefined && rule.moult !== null && today - mark.gaugeDay > rule.moult.meanDays.value;
}

interface Written extends Pick<Seen, 'animal' | 'kind' | 'rule'> {
  readonly mark: AnimalMark | undefined;
  readonly room: string;
}

const textOf = ({ animal, kind, rule, mark, room }: Written): string =>
  [
    animal.code,
    animal.name,
    mark?.label,
    kind.commonName,
    kind.name,
    rule.words[0] ?? rule.stage,
    room,
    animal.shelf,
    mark?.notes,
  ]
    .join(' ')
    .toLowerCase();
