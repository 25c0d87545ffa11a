/** The faults that are seeded, each a small change a tired hand could make, and the tests that should notice. */

export interface Fault {
  readonly name: string;
  readonly file: string;
  readonly from: string;
  readonly to: string;
  /** Test files or folders to run. */
  readonly tests: readonly string[];
}

const ENGINE = ['tests/husbandry', 'tests/reference', 'tests/maths'];
const KEPT = ['tests/actions', 'tests/store', 'tests/web'];
const supply = (file: string) => `src/husbandry/supply/${file}.ts`;
const larder = (file: string) => `src/husbandry/larder/${file}.ts`;
const appetite = (file: string) => `src/husbandry/appetite/${file}.ts`;

export const faults: readonly Fault[] = [
  {
    name: 'temperature ignored',
    file: 'src/husbandry/prey/rate.ts',
    from: 'meanOverSineDay(rateCurve(span), temp.minC, temp.maxC)',
    to: 'meanOverSineDay(rateCurve(span), 25, 25)',
    tests: ENGINE,
  },
  {
    name: 'hard stop ignored',
    file: 'src/husbandry/prey/rate.ts',
    from: 'if (span.hardStopC && weekMeanC <= span.hardStopC.value) return 0;',
    to: '',
    tests: ENGINE,
  },
  {
    name: 'night forgotten',
    file: 'src/husbandry/rooms.ts',
    from: 'minC: Math.min(room.dayTempC, room.nightTempC)',
    to: 'minC: room.dayTempC',
    tests: ENGINE,
  },
  {
    name: 'moult ignored',
    file: appetite('meals'),
    from: 'moultUpTo(meals, i, day);',
    to: '',
    tests: ENGINE,
  },
  {
    name: 'window not moved after a moult',
    file: appetite('rows'),
    from: 'gaugeMm *= rule.moult?.lengthFactor.value ?? 1;',
    to: 'gaugeMm *= 1;',
    tests: ENGINE,
  },
  {
    name: 'wait after a moult is 0',
    file: appetite('rule-table'),
    from: 'wait: ints(({ waitAfterMoultDays }) => Math.ceil(waitAfterMoultDays.value))',
    to: 'wait: ints(() => 0)',
    tests: ENGINE,
  },
  {
    name: 'refusal taken for a meal',
    file: appetite('meals'),
    from: 'if (accepted) {',
    to: 'if (accepted || day >= 0) {',
    tests: ENGINE,
  },
  {
    name: 'absence ignored',
    file: 'src/husbandry/calendar.ts',
    from: '!calendar.absences.some((absence) => absence.from <= day && day <= absence.to)',
    to: 'calendar.absences.length >= 0',
    tests: ENGINE,
  },
  {
    name: 'feeding weekdays ignored',
    file: 'src/husbandry/calendar.ts',
    from: 'calendar.feedingWeekdays[weekday(day)] === true',
    to: 'calendar.feedingWeekdays.length > 0',
    tests: ENGINE,
  },
  {
    name: 'weekday off by one',
    file: 'src/husbandry/calendar.ts',
    from: 'const THURSDAY = 3;',
    to: 'const THURSDAY = 4;',
    tests: ['tests/husbandry', 'tests/actions', 'tests/intake'],
  },
  {
    name: 'mean for quantile',
    file: supply('summary'),
    from: 'low: sortedQuantile(sorted, BAND.low),',
    to: 'low: sortedQuantile(sorted, BAND.mid),',
    tests: ENGINE,
  },
  {
    name: 'no spread in a lot',
    file: larder('lot'),
    from: 'const width = lot.toMm - lot.fromMm;',
    to: 'const width = (lot.toMm - lot.fromMm) * 0;',
    tests: ENGINE,
  },
  {
    name: 'no spread of development',
    file: larder('chain'),
    from: 'const total = 1 / species.immatureCv.value ** 2;',
    to: 'const total = 4 / species.immatureCv.value ** 2;',
    tests: ENGINE,
  },
  {
    name: 'deaths doubled',
    file: larder('rates'),
    from: 'return { exit, advance: exit * survival ** (1 / k) };',
    to: 'return { exit, advance: exit * survival ** (2 / k) };',
    tests: ENGINE,
  },
  {
    name: 'deaths of a bin forgotten',
    file: supply('larder'),
    from: 'larder.heads[q] = heads * kept;',
    to: 'larder.heads[q] = heads;',
    tests: ENGINE,
  },
  {
    name: 'holding loss forgotten',
    file: larder('state'),
    from: "life.bin.role === 'holding' ? life.chain.species.holdingLossPerDay.value : 0",
    to: '0',
    tests: ENGINE,
  },
  {
    name: 'hatching share forgotten',
    file: larder('rates'),
    from: 'laying.femaleShare.value * laying.hatchShare.value',
    to: 'laying.femaleShare.value',
    tests: ENGINE,
  },
  {
    name: 'prey does not grow',
    file: supply('larder'),
    from: 'const offset = age * cohort.slices;',
    to: 'const offset = 0 * age * cohort.slices;',
    tests: ENGINE,
  },
  {
    name: 'late parcel ignored',
    file: supply('draws'),
    from: 'if (chance <= 0) return cohort.arrives;',
    to: 'if (chance <= 1) return cohort.arrives;',
    tests: ENGINE,
  },
  {
    name: 'doubt of the count ignored',
    file: supply('draws'),
    from: 'return Math.exp(sd * z - (sd * sd) / 2);',
    to: 'return 1;',
    tests: ENGINE,
  },
  {
    name: 'mass by square of length',
    file: 'src/husbandry/units.ts',
    from: 'export const LENGTH_TO_MASS = 3;',
    to: 'export const LENGTH_TO_MASS = 2;',
    tests: ENGINE,
  },
  {
    name: 'prey up to twice the window',
    file: 'src/husbandry/prey/matching.ts',
    from: 'maxMm: longest,',
    to: 'maxMm: longest * 2,',
    tests: [...ENGINE, 'tests/facts'],
  },
  {
    name: 'hard prey for the young',
    file: 'src/husbandry/prey/matching.ts',
    from: ' || (rule.refusesHard && species.traits.hard)',
    to: '',
    tests: [...ENGINE, 'tests/facts'],
  },
  {
    name: 'robust served first',
    file: supply('menu'),
    from: 'const RANK = { fragile: 0, ordinary: 1, robust: 2 }',
    to: 'const RANK = { fragile: 2, ordinary: 1, robust: 0 }',
    tests: ENGINE,
  },
  {
    name: 'smallest prey first',
    file: supply('allocate'),
    from: 'if ((share[c] as number) <= nearest) continue;',
    to: 'if (best >= 0 && (share[c] as number) >= nearest) continue;',
    tests: ENGINE,
  },
  {
    name: 'prey eaten twice',
    file: supply('allocate'),
    from: 'larder.heads[slice] = (larder.heads[slice] as number) - heads;',
    to: '',
    tests: ENGINE,
  },
  {
    name: 'missed counted every day',
    file: supply('serve'),
    from: 'meals.counted[i] = now;',
    to: '',
    tests: ENGINE,
  },
  {
    name: 'grace forgotten',
    file: appetite('meal-state'),
    from: '(meals.rangeTo[i] as number) + (roster.rules.grace[rule] as number)',
    to: '(meals.rangeTo[i] as number)',
    tests: ENGINE,
  },
  {
    name: 'draws keyed by place in the list',
    file: appetite('meal-start'),
    from: 'joinKeys(replicateKey, meals.roster.key[i] as number)',
    to: 'joinKeys(replicateKey, i)',
    tests: ENGINE,
  },
  {
    name: 'worst act chosen',
    file: supply('acts'),
    from: 'a.dangers - b.dangers || a.missedMeals - b.missedMeals',
    to: 'b.dangers - a.dangers || b.missedMeals - a.missedMeals',
    tests: ENGINE,
  },
  {
    name: 'danger does not outrank',
    file: supply('sunday'),
    from: "if (safe < facts.policy.lastsFrom.value) return 'runs short';",
    to: '',
    tests: ENGINE,
  },
  {
    name: 'offered prey stays in the bin',
    file: larder('replay'),
    from: 'takeBetween(chain, state.heads, event).left',
    to: 'state.heads',
    tests: [...ENGINE, ...KEPT],
  },
  {
    name: 'stale verdict after a write',
    file: 'src/store/kept.ts',
    from: "where key = ? and revision = ? and engine = ?',",
    to: "where key = ? and revision <= ? and engine = ?',",
    tests: KEPT,
  },
  {
    name: 'entries of an undone act still count',
    file: 'src/store/turns.ts',
    from: "'update entry set voided = ? where act in (",
    to: "'update entry set voided = ? where false and act in (",
    tests: KEPT,
  },
  {
    name: 'undo not in the journal',
    file: 'src/store/turns.ts',
    from: "select ?, 'act', cast(value as text), ?, ? from json_each(?) order by key",
    to: "select ?, 'act', cast(value as text), ?, ? from json_each(?) where false order by key",
    tests: KEPT,
  },
  {
    name: 'back into a removed room',
    file: 'src/store/undo.ts',
    from: 'if (await tx.ask(placeGone(',
    to: 'if (false && await tx.ask(placeGone(',
    tests: KEPT,
  },
  {
    name: 'lent animal forgotten by its room',
    file: 'src/actions/in-use.ts',
    from: "(left_day is null or left_reason = 'lent')",
    to: 'left_day is null',
    tests: KEPT,
  },
];
