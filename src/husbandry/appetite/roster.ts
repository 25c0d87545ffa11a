/** The collection laid out in arrays for the meal calendar: one row an animal (or group alike), one column a moult step. */

import { keyOfCode } from '../../maths/random.ts';
import { eaterOf, type StageRule } from '../animals/index.ts';
import { NEVER } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { type Generosity, generosityOf } from './generosity.ts';
import { type DemandGroup, type GroupMember, groupsOf } from './groups.ts';
import { learnedInterval } from './learned.ts';
import {
  appetiteOf,
  cycleLogMean,
  cyclePassed,
  lastMeal,
  lastTended,
  notBefore,
  premoultDay,
} from './on-record.ts';
import { type Row, rowsOf } from './rows.ts';
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
  /** Of the keeper, as far as the meals on record tell. */
  readonly generosity: Generosity;
  readonly rules: RuleTable;
  readonly groups: readonly DemandGroup[];
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
    generosity: generosityOf(rows, snapshot.facts.policy),
    rules,
    groups,
  };
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
