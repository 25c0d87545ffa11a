/** What an act changed of an animal or a bin, field by field, in words. */
import { type LengthUnit, lengthText, recordDay } from '../../../views/format.ts';
import type { Names } from '../../../views/names.ts';
import type { Kind } from '../../husbandry/animals/index.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { AnimalRow, BinRow, RowChange } from '../../store/index.ts';

export interface ChangeTelling {
  readonly names: Names;
  readonly unit: LengthUnit;
  /** Kinds by code; a kind not among them is told by its code. */
  readonly kinds?: ReadonlyMap<string, Kind>;
  /** Day of the act. */
  readonly day: DayNumber;
  /** The act's own lines say these already. */
  readonly said: { readonly size: boolean; readonly death: boolean; readonly maturity: boolean };
}

/** 'moved from Shelf A to Shelf B', 'size 34 mm to 40 mm'; none when nothing a keeper sees has changed. */
export function changedWords(change: RowChange, telling: ChangeTelling): readonly string[] {
  if (change.after === null) return [];
  if (change.noun === 'bin')
    return change.before === null ? [] : binWords(change.before, change.after, telling);
  return change.before === null
    ? newWords(change.after, telling)
    : animalWords(change.before, change.after, telling);
}

const newWords = ({ cameFrom }: AnimalRow, { names }: ChangeTelling): readonly string[] =>
  cameFrom === null ? ['moved in'] : [`taken out of ${names.animals.get(cameFrom) ?? cameFrom}`];

type Clause = (before: AnimalRow, after: AnimalRow, telling: ChangeTelling) => string | null;

const animalWords = (before: AnimalRow, after: AnimalRow, telling: ChangeTelling): readonly string[] =>
  CLAUSES.flatMap((clause) => clause(before, after, telling) ?? []);

/** A clause of one field, when it differs. */
const differing =
  <K extends keyof AnimalRow>(field: K, words: (from: AnimalRow[K], to: AnimalRow[K]) => string): Clause =>
  (before, after) =>
    before[field] === after[field] ? null : words(before[field], after[field]);

const kindChanged: Clause = (before, after, { kinds, day }) => {
  if (before.kind === after.kind) return null;
  const name = (code: string) => kinds?.get(code)?.name ?? code;
  return `was ${name(before.kind)} until ${recordDay(day)}, ${name(after.kind)} from then on`;
};

const moved: Clause = (before, after, { names }) => {
  if (before.room === after.room && before.shelf === after.shelf) return null;
  const sameRoom = before.room === after.room;
  const place = ({ room, shelf }: AnimalRow) => {
    const name = names.rooms.get(room) ?? room;
    if (shelf === '') return sameRoom ? 'no shelf' : name;
    return sameRoom ? shelf : `${name}, ${shelf}`;
  };
  return `moved from ${place(before)} to ${place(after)}`;
};

const sized: Clause = (before, after, { unit, said }) => {
  if (said.size || before.gaugeMm === after.gaugeMm) return null;
  const assumed = after.gaugeAssumed ? ' (not measured)' : '';
  return `size ${lengthText(before.gaugeMm, unit)} to ${lengthText(after.gaugeMm, unit)}${assumed}`;
};

const counted: Clause = (before, after, { said }) =>
  said.death || before.count === after.count ? null : `heads ${before.count} to ${after.count}`;

const matured: Clause = (before, after, { said }) => {
  if (said.maturity || before.matured === after.matured) return null;
  return after.matured ? 'matured' : 'no longer held to be matured';
};

const left: Clause = (before, after, { said }) => {
  if (before.leftReason === after.leftReason) return null;
  if (after.leftReason === null)
    return before.leftReason === 'lent' ? `back from ${before.lentTo}` : 'here again';
  if (after.leftReason === 'died') return said.death ? null : 'died';
  if (after.leftReason !== 'lent') return after.leftReason;
  return `lent to ${after.lentTo}${after.backDay === null ? '' : `, back by ${recordDay(after.backDay)}`}`;
};

const onDay = (words: string) => (_: DayNumber | null, day: DayNumber | null) =>
  day === null ? `${words}: not known` : `${words} ${recordDay(day)}`;

const CLAUSES: readonly Clause[] = [
  kindChanged,
  differing('name', (from, to) => `name “${from}” to “${to}”`),
  moved,
  sized,
  counted,
  differing('sex', (from, to) => `${from} to ${to}`),
  matured,
  differing('stageOverride', (_, to) => (to === null ? 'fed by size again' : `fed as ${to}`)),
  differing('label', (from, to) => `own mark “${from}” to “${to}”`),
  differing('notes', (_, to) => (to === '' ? 'notes taken away' : `notes: “${to}”`)),
  differing('hatchedDay', onDay('hatched')),
  differing('hereSince', onDay('here since')),
  left,
];

function binWords(before: BinRow, after: BinRow, { names }: ChangeTelling): readonly string[] {
  const room = (code: string) => names.rooms.get(code) ?? code;
  return [
    ...(before.name === after.name ? [] : [`name “${before.name}” to “${after.name}”`]),
    ...(before.room === after.room ? [] : [`moved from ${room(before.room)} to ${room(after.room)}`]),
    ...(before.capacity === after.capacity ? [] : [`room for ${after.capacity ?? 'not said how many'}`]),
    ...(before.quarantineUntil === after.quarantineUntil ? [] : [apartWords(after)]),
    ...(before.restsUntil === after.restsUntil ? [] : [restWords(after)]),
    ...(before.notes === after.notes ? [] : [`notes: “${after.notes}”`]),
    ...(before.closed === after.closed ? [] : [after.closed ? 'no longer in use' : 'in use again']),
  ];
}

const restWords = ({ restsUntil: until }: BinRow): string =>
  until === null ? 'no longer left alone' : `left alone until ${recordDay(until)}`;

const apartWords = ({ quarantineUntil: until }: BinRow): string =>
  until === null ? 'no longer kept apart' : `kept apart until ${recordDay(until)}`;
