/** What the page of orders is given. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { ExpectedDelivery } from '../../src/husbandry/larder/index.ts';
import type { Again, Cents, ClaimBy, SenderRecord } from '../../src/husbandry/orders/index.ts';
import type { BoxAnswer } from '../../src/husbandry/supply/index.ts';
import type { LengthUnit } from '../format.ts';
import type { Shell } from '../layout.tsx';
import type { Names } from '../names.ts';
import type { Option, PageForms } from '../partials/form.tsx';

/** A line of an order that is on its way. */
export interface ComingLine {
  readonly code: string;
  readonly species: string;
  readonly heads: number;
  readonly fromMm: number;
  readonly toMm: number;
  readonly bin: string;
  readonly packs: number | null;
  readonly cents: Cents | null;
}

export interface ComingOrder {
  readonly code: string;
  /** Who sends it. */
  readonly from: string;
  readonly kind: 'parcel' | 'shop';
  readonly sentDay: DayNumber;
  /** Day it was to come, and day it is expected now. */
  readonly dueDay: DayNumber;
  readonly day: DayNumber;
  readonly postageCents: Cents;
  readonly lines: readonly ComingLine[];
}

/** Who runs out first, where an order is late. */
export interface FirstOut {
  readonly name: string;
  readonly fromMm: number;
  readonly toMm: number;
  readonly day: DayNumber;
  readonly chance: number;
}

export interface OrdersProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly names: Names;
  readonly currency: string;
  /** The soonest first. */
  readonly coming: readonly ComingOrder[];
  /** Deliveries that are no part of an order. */
  readonly singles: readonly ExpectedDelivery[];
  /** Asked only where an order is late; null where nobody runs out. */
  readonly firstOut: FirstOut | null;
  /** Boxes of the last days that were not as ordered, the latest first. */
  readonly boxes: readonly BoxShown[];
  readonly came: readonly CameOrder[];
  readonly senders: readonly SenderShown[];
  /** Whether anybody sells prey. */
  readonly sellers: boolean;
  /** Sizes of every species, and the bins and rooms prey can go into. */
  readonly sizes: readonly Option[];
  readonly into: readonly Option[];
  /** Days for which new stock is kept apart. */
  readonly apartDays: number;
}

/** A line whose dead may be looked at again. */
export interface DeadLine {
  readonly delivery: string;
  readonly bin: string;
  readonly dead: number;
  /** The box was cold when they were counted. */
  readonly cold: boolean;
}

export interface BoxShown {
  /** Code of its order. */
  readonly order: string;
  readonly from: string;
  readonly came: DayNumber;
  /** With the hours a claim may take; null where nothing died, or the supplier says nothing of claims, or it is too late. */
  readonly claim: (ClaimBy & { readonly hours: number }) | null;
  readonly dead: readonly DeadLine[];
  /** Null until it is worked out. */
  readonly answer: BoxAnswer | null;
  /** Parcels that could still be ordered, where somebody goes short. */
  readonly again: readonly Again[];
  /** The act that helps most, where Sunday's check has found it. */
  readonly act: string | null;
}

export interface CameLineShown {
  readonly species: string;
  readonly ordered: number;
  readonly fromMm: number;
  readonly toMm: number;
  /** As it came: the species of the bin it went into. */
  readonly came: {
    readonly species: string;
    readonly bin: string;
    readonly alive: number;
    readonly dead: number;
    readonly fromMm: number;
    readonly toMm: number;
    readonly counted: 'whole' | 'part' | 'sample' | 'weighed' | 'label';
    readonly give: number | null;
  };
}

export interface CameOrder {
  readonly code: string;
  readonly from: string;
  readonly due: DayNumber;
  readonly came: DayNumber;
  readonly lines: readonly CameLineShown[];
}

export interface SenderShown {
  readonly code: string;
  readonly name: string;
  readonly record: SenderRecord;
  /** The keeper's own word, which stands before what was learned. */
  readonly own: { readonly lossShare: number | null; readonly overCountShare: number | null };
  /** Of a supplier nobody knows. */
  readonly usual: SenderRecord;
}
