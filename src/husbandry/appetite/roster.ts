/** The collection laid out in arrays for the meal calendar: one row an animal (or group alike), one column a moult step. */

import { normalCdf } from '../../maths/normal.ts';
import { keyOfCode } from '../../maths/random.ts';
import type { Animal } from '../animals/animal.ts';
import type { Kind, StageRule } from '../animals/kind.ts';
import { eaterOf, ruleOf } from '../animals/stage.ts';
import { NEVER } from '../calendar.ts';
import { meanOfDay } from '../prey/rate.ts';
import { roomTemp } from '../rooms.ts';
import type { PlannedChange, Snapshot } from '../snapshot.ts';
import { type DemandGroup, type GroupMember, groupsOf } from './groups.ts';
import { learnedInterval } from './learned.ts';
import { logSd } from './log-normal.ts';
import { type RuleTable, ruleTable } from './rule-table.ts';

export interface Roster {
  readonly animals: number;
  readonly steps: number;
  readonly codes: readonly string[];
  readonly key: Int32Array;
  /** Heads in the row. */
  readonly heads: Int32Array;
  /** Row of the rule table, group, interval and cycle at [animal * steps + step]. */
  readonly rule: Int32Array;
  readonly group: Int32Array;
  readonly intervalMin: Int32Array;
  readonly intervalMax: Int32Array;
  /** Mean of the log of the moult cycle at the room's temperature; NaN: moults no more. */
  readonly cycleLogMean: Float64Array;
  /** Share of moult cycles shorter than the time since the last moult. */
  readonly cyclePassed: Float64Array;
  /** Days from today, negative in the past, of the last meal taken; NEVER when unknown. */
  readonly lastTaken: Int32Array;
  /** Day prey was last offered, or the animal was hard again after its moult, if later; NEVER when unknown. */
  readonly lastTended: Int32Array;
  /** First day for an offer after a refusal or an evening already fed; NEVER when free. */
  readonly notBefore: Int32Array;
  /** Day of the last moult, NEVER when unknown. */
  readonly lastMoult: Int32Array;
  /** Day premoult was seen, NEVER when it was not. */
  readonly premoult: Int32Array;
  /** Days between which the animal arrives or leaves, and the chance that it does. */
  readonly arrivesFrom: Int32Array;
  readonly arrivesTo: Int32Array;
  readonly arrivesChance: Float64Array;
  readonly leavesFrom: Int32Array;
  readonly leavesTo: Int32Array;
  readonly leavesChance: Float64Array;
  /** Multiplier of acceptance learned from the animal's own record. */
  readonly appetite: Float64Array;
  readonly rules: RuleTable;
  readonly groups: readonly DemandGroup[];
}

interface Row {
  readonly animal: Animal;
  readonly kind: Kind;
  readonly steps: readonly { readonly rule: StageRule; readonly gaugeMm: number }[];
  readonly tempC: number;
  readonly change: PlannedChange | null;
  readonly leaving: PlannedChange | null;
}

/** Lays out a snapshot's animals and planned changes, following `steps` sizes each. */
export function rosterOf(snapshot: Snapshot, steps: number): Roster {
  const rows = rowsOf(snapshot, steps).sort((a, b) => (a.animal.code < b.animal.code ? -1 : 1));
  const members: GroupMember[] = rows.flatMap((row) =>
    row.steps.map(({ rule, gaugeMm }, step) => ({
      animal: row.animal.code,
      now: step === 0 && row.change === null,
      kind: row.kind,
      rule,
      eater: eaterOf(row.kind, { gaugeMm, matured: row.animal.matured }),
    })),
  );
  const { groups, groupOfMember } = groupsOf(members, snapshot.facts);
  const rules = ruleTable(
    rows.flatMap((row) => row.steps.map(({ rule }) => rule)),
    snapshot.facts.policy.acceptancePhases.value,
  );
  return {
    ...whoIs(rows),
    steps,
    ...filled(snapshot, { rows, steps, rules }),
    group: groupOfMember,
    rules,
    groups,
  };
}

function rowsOf(snapshot: Snapshot, steps: number): Row[] {
  const { facts, changes } = snapshot;
  const sales = new Map(changes.filter(({ kind }) => kind === 'sale').map((sale) => [sale.animal, sale]));
  const here = snapshot.animals.map((animal) =>
    rowOf(snapshot, { animal, steps, change: null, leaving: sales.get(animal.code) ?? null }),
  );
  const coming = changes
    .filter(({ kind, animalKind }) => kind !== 'sale' && facts.kinds.has(animalKind))
    .map((change) => rowOf(snapshot, { animal: arrivalOf(change), steps, change, leaving: null }));
  return [...here, ...coming];
}

/** The young or arrivals of a planned change as a group of animals fed the day before they are here. */
const arrivalOf = (change: PlannedChange): Animal => ({
  code: change.code,
  name: change.code,
  kind: change.animalKind,
  count: change.count,
  sex: 'unsexed',
  matured: false,
  gaugeMm: change.gaugeMm,
  gaugeAssumed: true,
  room: change.room,
  shelf: '',
  lastOffered: null,
  lastOutcome: null,
  lastTaken: null,
  lastMoult: null,
  premoultSeen: null,
  intervalsOnRecord: [],
  offersOnRecord: 0,
  takenOnRecord: 0,
  stageOverride: null,
});

interface RowInput {
  readonly animal: Animal;
  readonly steps: number;
  readonly change: PlannedChange | null;
  readonly leaving: PlannedChange | null;
}

function rowOf(snapshot: Snapshot, { animal, steps, change, leaving }: RowInput): Row {
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

const whoIs = (rows: readonly Row[]) => ({
  animals: rows.length,
  codes: rows.map(({ animal }) => animal.code),
  key: Int32Array.from(rows, ({ animal }) => keyOfCode(animal.code)),
  heads: Int32Array.from(rows, ({ animal }) => animal.count),
});

interface Filling {
  readonly rows: readonly Row[];
  readonly steps: number;
  readonly rules: RuleTable;
}

function filled(snapshot: Snapshot, { rows, steps, rules }: Filling) {
  const today = snapshot.today;
  const ofStep = (value: (row: Row, step: number) => number) =>
    Float64Array.from({ length: rows.length * steps }, (_, i) =>
      value(rows[Math.floor(i / steps)] as Row, i % steps),
    );
  const ofRow = (value: (row: Row) => number) => Float64Array.from(rows, value);
  const since = (day: number | null | undefined) => (day === null || day === undefined ? NEVER : day - today);
  const interval = (row: Row, step: number) =>
    learnedInterval(row.steps[step]?.rule as StageRule, row.animal, snapshot.facts.policy);
  return {
    rule: Int32Array.from(ofStep((row, step) => rules.indexOf(row.steps[step]?.rule as StageRule))),
    intervalMin: Int32Array.from(ofStep((row, step) => interval(row, step).min)),
    intervalMax: Int32Array.from(ofStep((row, step) => interval(row, step).max)),
    cycleLogMean: ofStep((row, step) => cycleLogMean(row, step, snapshot)),
    cyclePassed: ofRow((row) => cyclePassed(row, snapshot)),
    lastTaken: Int32Array.from(ofRow((row) => since(lastMeal(row.animal)))),
    lastTended: Int32Array.from(ofRow((row) => lastTended(row, today))),
    notBefore: Int32Array.from(ofRow((row) => notBefore(row, today))),
    lastMoult: Int32Array.from(ofRow((row) => since(row.animal.lastMoult?.found))),
    premoult: Int32Array.from(ofRow((row) => since(premoultDay(row.animal)))),
    arrivesFrom: Int32Array.from(ofRow((row) => since(row.change?.from))),
    arrivesTo: Int32Array.from(ofRow((row) => since(row.change?.to))),
    arrivesChance: ofRow((row) => row.change?.chance ?? 1),
    leavesFrom: Int32Array.from(ofRow((row) => since(row.leaving?.from))),
    leavesTo: Int32Array.from(ofRow((row) => since(row.leaving?.to))),
    leavesChance: ofRow((row) => row.leaving?.chance ?? 0),
    appetite: ofRow((row) => appetiteOf(row, snapshot)),
  };
}

/** Premoult counts only when seen after the last moult. */
const premoultDay = ({ premoultSeen, lastMoult }: Animal): number | null =>
  premoultSeen !== null && (lastMoult === null || premoultSeen >= lastMoult.found) ? premoultSeen : null;

/** An offer nobody has spoken of yet counts as the last meal. */
const lastMeal = ({ lastOffered, lastOutcome, lastTaken }: Animal): number | null =>
  lastOutcome === 'offered' ? lastOffered : lastTaken;

/** The safe gap counts from here: an animal that refused or is hardening is not short of prey. */
function lastTended({ animal, steps }: Row, today: number): number {
  const wait = Math.ceil(steps[0]?.rule.waitAfterMoultDays.value ?? 0);
  const offered = animal.lastOffered === null ? NEVER : animal.lastOffered - today;
  const hard = animal.lastMoult === null ? NEVER : animal.lastMoult.found + wait - today;
  return Math.max(offered, Math.min(hard, 0));
}

/** After a refusal the retry wait; after an offer today, tomorrow. */
function notBefore({ animal, steps }: Row, today: number): number {
  if (animal.lastOffered === null) return NEVER;
  const offered = animal.lastOffered - today;
  if (animal.lastOutcome === 'refused') return offered + (steps[0]?.rule.retryDays.value ?? 1);
  return offered + 1;
}

/**
 * Mean of the log of the moult cycle [days]: ln(mean x Q10^((Tref - T)/10)) - s^2/2, a log-normal with that mean and
 * CV; metabolic Q10 of invertebrates about 2 (source with the value).
 */
function cycleLogMean({ steps, tempC }: Row, step: number, { facts }: Snapshot): number {
  const moult = steps[step]?.rule.moult;
  if (!moult) return Number.NaN;
  const { moultQ10, moultReferenceC, q10StepC } = facts.policy;
  const slower = moultQ10.value ** ((moultReferenceC.value - tempC) / q10StepC.value);
  return Math.log(moult.meanDays.value * slower) - logSd(moult.cv.value) ** 2 / 2;
}

function cyclePassed(row: Row, snapshot: Snapshot): number {
  const found = row.animal.lastMoult?.found;
  const moult = row.steps[0]?.rule.moult;
  if (found === undefined || !moult) return 0;
  const age = Math.max(1, snapshot.today - found);
  return normalCdf((Math.log(age) - cycleLogMean(row, 0, snapshot)) / logSd(moult.cv.value));
}

/** Acceptance on record over the kind's, each weighed by its offers; 1 without a record. */
function appetiteOf({ animal }: Row, { facts }: Snapshot): number {
  const prior = facts.policy.acceptancePriorWeight.value;
  return (animal.takenOnRecord + prior) / (animal.offersOnRecord + prior);
}
