/** The rows of a roster: every animal, and every one that is planned to come, with its sizes over the next moults. */
import { type Animal, type Kind, NOTHING_ON_RECORD, ruleOf, type StageRule } from '../animals/index.ts';
import { meanOfDay } from '../prey/index.ts';
import { roomTemp } from '../rooms.ts';
import type { PlannedChange, Snapshot } from '../snapshot.ts';

export interface Row {
  readonly animal: Animal;
  readonly kind: Kind;
  readonly steps: readonly { readonly rule: StageRule; readonly gaugeMm: number }[];
  readonly tempC: number;
  readonly change: PlannedChange | null;
  readonly leaving: PlannedChange | null;
}

export function rowsOf(snapshot: Snapshot, steps: number): Row[] {
  const { facts, changes } = snapshot;
  const sales = new Map(changes.filter(({ kind }) => kind === 'sale').map((sale) => [sale.animal, sale]));
  const here = snapshot.animals.map((animal) =>
    rowOf(snapshot, { animal, steps, change: null, leaving: sales.get(animal.code) ?? null }),
  );
  const coming = changes
    .filter((change) => facts.kinds.has(change.animalKind) && isToCome(change))
    .map((change) => rowOf(snapshot, { animal: arrivalOf(change), steps, change, leaving: null }));
  return [...here, ...coming];
}

/** Heads that will stay here: of a sac the share that is kept. */
export const headsKept = ({ count, sac }: PlannedChange): number => Math.round(count * (sac?.shareKept ?? 1));

/** Whether it brings somebody who is not here yet: a sac that came to nothing, or has settled, does not. */
const isToCome = (change: PlannedChange): boolean =>
  change.kind !== 'sale' &&
  headsKept(change) > 0 &&
  (change.sac?.ended ?? change.sac?.settled ?? null) === null;

/** The young or arrivals of a planned change as a group of animals fed the day before they are here. */
const arrivalOf = (change: PlannedChange): Animal => ({
  code: change.code,
  name: change.code,
  kind: change.animalKind,
  count: headsKept(change),
  sex: 'unsexed',
  matured: false,
  gaugeMm: change.gaugeMm,
  gaugeAssumed: true,
  room: change.room,
  shelf: '',
  ...NOTHING_ON_RECORD,
  stageOverride: null,
});

interface RowInput {
  readonly animal: Animal;
  readonly steps: number;
  readonly change: PlannedChange | null;
  readonly leaving: PlannedChange | null;
}

/** One animal's row. */
export function rowOf(snapshot: Snapshot, { animal, steps, change, leaving }: RowInput): Row {
  const kind = snapshot.facts.kinds.get(animal.kind);
  if (!kind) throw new Error(`animal ${animal.code} has the unknown kind ${animal.kind}`);
  return {
    animal,
    kind,
    change,
    leaving,
    tempC: meanOfDay(roomTemp(snapshot.rooms, animal.room)),
    steps: sizesAhead(kind, animal, steps),
  };
}

/** Gauge and rule now and after each further moult. */
function sizesAhead(kind: Kind, animal: Animal, steps: number): Row['steps'] {
  const ahead: { rule: StageRule; gaugeMm: number }[] = [];
  let { gaugeMm } = animal;
  for (let step = 0; step < steps; step++) {
    const rule = ruleOf(kind, {
      ...animal,
      gaugeMm,
      stageOverride: step === 0 ? animal.stageOverride : null,
    });
    ahead.push({ rule, gaugeMm });
    gaugeMm *= rule.moult?.lengthFactor.value ?? 1;
  }
  return ahead;
}
