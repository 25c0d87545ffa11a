/** Who and what is gone, a line each: what it was, why it went, and when. */
import { kindNameOf, type Names, preyName } from '../../../views/names.ts';
import type { GoneLine } from '../../../views/pages/gone.tsx';
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { Facts } from '../../husbandry/snapshot.ts';
import type {
  AnimalRow,
  BinRow,
  DeathInGroup,
  DeliveryRow,
  Noun,
  PlannedChangeRow,
  PurchaseRow,
  RoomRow,
} from '../../store/index.ts';

export interface Telling {
  readonly names: Names;
  readonly kinds: Facts['kinds'];
  readonly suppliers: ReadonlyMap<string, string>;
  /** Day on which each went, by noun and code. */
  readonly days: ReadonlyMap<string, DayNumber>;
}

const named = (names: Names['animals'], code: string): string => names.get(code) ?? code;
const wentOn = ({ days }: Telling, noun: Noun, code: string): DayNumber | null =>
  days.get(`${noun} ${code}`) ?? null;

export const animalLine = (
  { code, leftReason, leftDay, count }: AnimalRow,
  { names }: Telling,
): GoneLine => ({
  what: 'animal',
  code,
  name: named(names.animals, code),
  why: leftReason ?? '',
  day: leftDay,
  ...(count > 1 ? { count } : {}),
});

export const deathLine = ({ animal, heads, day }: DeathInGroup, { names }: Telling): GoneLine => ({
  what: 'animal',
  code: animal,
  name: named(names.animals, animal),
  why: 'died',
  day,
  heads,
});

export const binLine = ({ code }: BinRow, telling: Telling): GoneLine => ({
  what: 'bin',
  code,
  name: named(telling.names.bins, code),
  why: 'taken out of use',
  day: wentOn(telling, 'bin', code),
});

export const roomLine = ({ code, name }: RoomRow, telling: Telling): GoneLine => ({
  what: 'room',
  code,
  name,
  why: 'removed',
  day: wentOn(telling, 'room', code),
});

export const orderLine = ({ code, heads, species, bin }: DeliveryRow, telling: Telling): GoneLine => ({
  what: 'delivery',
  code,
  name: `${heads} ${preyName(telling.names.species, species, heads)} for ${named(telling.names.bins, bin)}`,
  why: 'not coming',
  day: wentOn(telling, 'delivery', code),
});

export const purchaseLine = ({ code, supplier }: PurchaseRow, telling: Telling): GoneLine => ({
  what: 'purchase',
  code,
  name: `The order from ${named(telling.suppliers, supplier)}`,
  why: 'not coming',
  day: wentOn(telling, 'purchase', code),
});

const PLANS = { sac: 'Sac', arrival: 'Arrival', sale: 'Sale' } as const;

export const planLine = (
  { code, kind, count, animalKind }: PlannedChangeRow,
  telling: Telling,
): GoneLine => ({
  what: 'planned_change',
  code,
  name: `${PLANS[kind]} of ${count}, ${kindNameOf(telling.kinds, animalKind)}`,
  why: 'no longer planned',
  day: wentOn(telling, 'planned_change', code),
});
