/** The things the keeper can change, as rows, and which columns hold them. */
import type { ChangedKind, LifeStage, Sex } from '../husbandry/animals/index.ts';
import type { DayNumber } from '../husbandry/calendar.ts';
import type { BinRole, Space, Where } from '../husbandry/larder/index.ts';
import type { Cents, Offer, Supplier } from '../husbandry/orders/index.ts';
import type { ChangedNumbers } from '../husbandry/own-numbers.ts';
import type { PlannedChange, Room, SacRecord, TempSeries } from '../husbandry/snapshot.ts';
import type { Mm } from '../husbandry/units.ts';

export interface RoomRow extends Room {
  readonly series: TempSeries | null;
  /** Belongs to the demo room and goes when it is emptied. */
  readonly demo: boolean;
  /** Removed: nothing may be put there. */
  readonly closed: boolean;
}

export interface AnimalRow {
  readonly code: string;
  readonly name: string;
  readonly kind: string;
  readonly count: number;
  readonly sex: Sex;
  readonly matured: boolean;
  readonly gaugeMm: Mm;
  /** Day the gauge holds for: measured, moulted or entered. */
  readonly gaugeDay: DayNumber;
  readonly gaugeAssumed: boolean;
  readonly room: string;
  readonly shelf: string;
  readonly shelfPosition: number;
  readonly stageOverride: LifeStage | null;
  /** The keeper's own mark on the enclosure. */
  readonly label: string;
  readonly notes: string;
  readonly leftReason: 'died' | 'sold' | 'given away' | 'lost' | 'lent' | 'entered by mistake' | null;
  readonly leftDay: DayNumber | null;
  readonly demo: boolean;
  /** Day it hatched or was born, where known. */
  readonly hatchedDay: DayNumber | null;
  /** Day it came to live here, where known. */
  readonly hereSince: DayNumber | null;
  /** Code of the group it was taken out of. */
  readonly cameFrom: string | null;
  /** Who has it while it is lent. */
  readonly lentTo: string | null;
  /** Day it is expected back while it is lent. */
  readonly backDay: DayNumber | null;
}

export interface BinRow {
  readonly code: string;
  readonly name: string;
  readonly species: string;
  readonly role: BinRole;
  readonly room: string;
  readonly capacity: number | null;
  readonly keepAdults: boolean;
  readonly notes: string;
  /** No longer in use. */
  readonly closed: boolean;
  readonly demo: boolean;
  /** Its own temperatures, where it has a heater, a cooler or a fridge. */
  readonly ownC: Where['ownC'];
  /** How large it is, in what its species is crowded by. */
  readonly space: Space | null;
  /** Where its stock came from, in the keeper's words. */
  readonly origin: string;
  /** New stock kept apart until this day. */
  readonly quarantineUntil: DayNumber | null;
  /** Left alone until this day. */
  readonly restsUntil: DayNumber | null;
}

export interface DeliveryRow {
  readonly code: string;
  readonly species: string;
  readonly bin: string;
  readonly heads: number;
  readonly fromMm: Mm;
  readonly toMm: Mm;
  readonly day: DayNumber;
  readonly state: 'expected' | 'arrived' | 'cancelled';
  readonly demo: boolean;
  /** The order it is part of, the offer it was ordered from, packs and their price; null where it was expected by itself. */
  readonly purchase: string | null;
  readonly offer: string | null;
  readonly packs: number | null;
  readonly cents: Cents | null;
}

export interface SupplierRow extends Omit<Supplier, 'tooLateOn'> {
  /** Hours from the door within which dead prey is to be claimed; null: nothing is said. */
  readonly claimHours: number | null;
  readonly notes: string;
  /** Not bought from any more. */
  readonly closed: boolean;
  readonly demo: boolean;
}

export interface OfferRow extends Offer {
  /** Not to be had any more. */
  readonly closed: boolean;
  readonly demo: boolean;
}

/** An order with a supplier; what is in it are deliveries. */
export interface PurchaseRow {
  readonly code: string;
  readonly supplier: string;
  readonly placedDay: DayNumber;
  readonly sentDay: DayNumber;
  /** Day it was to come when it was ordered; the deliveries tell the day it is expected now. */
  readonly dueDay: DayNumber;
  readonly postageCents: Cents;
  readonly state: 'placed' | 'arrived' | 'cancelled';
  readonly notes: string;
  readonly demo: boolean;
}

export interface PlannedChangeRow {
  readonly code: string;
  readonly kind: PlannedChange['kind'];
  readonly animalKind: string;
  readonly fromDay: DayNumber;
  readonly toDay: DayNumber;
  readonly chance: number;
  readonly count: number;
  readonly gaugeMm: Mm;
  readonly room: string;
  readonly animal: string | null;
  readonly cancelled: boolean;
  readonly demo: boolean;
  readonly sac: SacRecord | null;
}

export interface SettingRow {
  readonly key: string;
  readonly value: unknown;
}

export interface Rows {
  readonly kind: ChangedKind;
  readonly numbers: ChangedNumbers;
  readonly room: RoomRow;
  readonly animal: AnimalRow;
  readonly bin: BinRow;
  readonly supplier: SupplierRow;
  readonly offer: OfferRow;
  readonly purchase: PurchaseRow;
  readonly delivery: DeliveryRow;
  readonly planned_change: PlannedChangeRow;
  readonly setting: SettingRow;
}
export type Noun = keyof Rows;

type Column = 'plain' | 'flag' | 'json';
type Columns<T> = { readonly [Name in keyof T]-?: Column };

/** Columns by noun; the first names the row. A row naming another comes after it in this list. */
export const columnsOf: { readonly [N in Noun]: Columns<Rows[N]> } = {
  kind: { code: 'plain', base: 'plain', changes: 'json' },
  numbers: { code: 'plain', changes: 'json' },
  room: {
    code: 'plain',
    name: 'plain',
    dayTempC: 'plain',
    nightTempC: 'plain',
    demo: 'flag',
    closed: 'flag',
    series: 'json',
  },
  animal: {
    code: 'plain',
    name: 'plain',
    kind: 'plain',
    count: 'plain',
    sex: 'plain',
    matured: 'flag',
    gaugeMm: 'plain',
    gaugeDay: 'plain',
    gaugeAssumed: 'flag',
    room: 'plain',
    shelf: 'plain',
    shelfPosition: 'plain',
    stageOverride: 'plain',
    label: 'plain',
    notes: 'plain',
    leftReason: 'plain',
    leftDay: 'plain',
    demo: 'flag',
    hatchedDay: 'plain',
    hereSince: 'plain',
    cameFrom: 'plain',
    lentTo: 'plain',
    backDay: 'plain',
  },
  bin: {
    code: 'plain',
    name: 'plain',
    species: 'plain',
    role: 'plain',
    room: 'plain',
    capacity: 'plain',
    keepAdults: 'flag',
    notes: 'plain',
    closed: 'flag',
    demo: 'flag',
    ownC: 'json',
    space: 'json',
    origin: 'plain',
    quarantineUntil: 'plain',
    restsUntil: 'plain',
  },
  supplier: {
    code: 'plain',
    name: 'plain',
    kind: 'plain',
    transitDays: 'plain',
    dispatchWeekdays: 'json',
    cutOffDays: 'plain',
    cutOffTime: 'plain',
    holidays: 'json',
    postage: 'json',
    minimumCents: 'plain',
    lossShare: 'plain',
    overCountShare: 'plain',
    coldBelowC: 'plain',
    heatAboveC: 'plain',
    holdDays: 'plain',
    claimHours: 'plain',
    notes: 'plain',
    closed: 'flag',
    demo: 'flag',
  },
  offer: {
    code: 'plain',
    supplier: 'plain',
    species: 'plain',
    size: 'plain',
    fromMm: 'plain',
    toMm: 'plain',
    packHeads: 'plain',
    prices: 'json',
    mostPacks: 'plain',
    closed: 'flag',
    demo: 'flag',
  },
  purchase: {
    code: 'plain',
    supplier: 'plain',
    placedDay: 'plain',
    sentDay: 'plain',
    dueDay: 'plain',
    postageCents: 'plain',
    state: 'plain',
    notes: 'plain',
    demo: 'flag',
  },
  delivery: {
    code: 'plain',
    species: 'plain',
    bin: 'plain',
    heads: 'plain',
    fromMm: 'plain',
    toMm: 'plain',
    day: 'plain',
    state: 'plain',
    demo: 'flag',
    purchase: 'plain',
    offer: 'plain',
    packs: 'plain',
    cents: 'plain',
  },
  planned_change: {
    code: 'plain',
    kind: 'plain',
    animalKind: 'plain',
    fromDay: 'plain',
    toDay: 'plain',
    chance: 'plain',
    count: 'plain',
    gaugeMm: 'plain',
    room: 'plain',
    animal: 'plain',
    cancelled: 'flag',
    demo: 'flag',
    sac: 'json',
  },
  setting: { key: 'plain', value: 'json' },
};

export const nouns = Object.keys(columnsOf) as readonly Noun[];

/** The name of a row within its noun. */
export const nameOf = (row: Rows[Noun]): string => ('code' in row ? row.code : row.key);
