/** The market of a snapshot: suppliers that are still bought from, what they still offer, and what the keeper says of money and weather. */
import {
  type Arrival,
  atTime,
  type Market,
  type Offer,
  type Spent,
  type Supplier,
  type TimeOfDay,
} from '../husbandry/orders/index.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import { type OfferRow, rowsOf, type Settings, type SupplierRow } from '../store/index.ts';

const OPEN_IN_ORDER = { where: 'closed = 0', order: 'cast(substr(code, 2) as integer)' };

export const marketRows = {
  suppliers: rowsOf('supplier', OPEN_IN_ORDER),
  offers: rowsOf('offer', OPEN_IN_ORDER),
};

interface Found {
  readonly suppliers: readonly SupplierRow[];
  readonly offers: readonly OfferRow[];
  readonly arrivals: readonly Arrival[];
  readonly spent: readonly Spent[];
  readonly settings: Pick<Settings, 'purse' | 'weather'>;
}

/** Suppliers still bought from, as they stand at a time. */
export const suppliersAt = (rows: readonly SupplierRow[], now: TimeOfDay): Supplier[] =>
  rows.map((row) => atTime(supplierOf(row), now));

/** Offers of suppliers no longer bought from, and of prey that is not in the Book, are left out. */
export function marketOf(
  { suppliers, offers, arrivals, spent, settings }: Found,
  { species }: Facts,
  now: TimeOfDay,
): Market {
  const open = new Set(suppliers.map(({ code }) => code));
  return {
    suppliers: suppliersAt(suppliers, now),
    offers: offers.filter((offer) => open.has(offer.supplier) && species.has(offer.species)).map(offerOf),
    arrivals,
    weather: settings.weather,
    purse: settings.purse,
    spent,
  };
}

const supplierOf = ({
  claimHours: _,
  notes: _notes,
  closed: _closed,
  demo: _demo,
  ...supplier
}: SupplierRow): Supplier => supplier;

const offerOf = ({ closed: _, demo: _demo, ...offer }: OfferRow): Offer => offer;
