/** Schema 9: suppliers, what they offer, and orders; a delivery tells the order it is part of. */
import type { Migration } from './migration.ts';

export const market: Migration = {
  version: 9,
  statements: [
    `create table supplier (
       code text primary key, name text not null, kind text not null, transit_days integer not null,
       dispatch_weekdays text not null, cut_off_days integer not null, cut_off_time text, holidays text not null,
       postage text not null, minimum_cents integer not null, loss_share real, over_count_share real,
       cold_below_c real, heat_above_c real, hold_days integer, claim_hours integer, notes text not null,
       closed integer not null, demo integer not null) strict`,
    `create table offer (
       code text primary key, supplier text not null references supplier (code), species text not null,
       size text not null, from_mm real not null, to_mm real not null, pack_heads integer not null,
       prices text not null, most_packs integer, closed integer not null, demo integer not null) strict`,
    'create index offer_supplier on offer (supplier)',
    `create table purchase (
       code text primary key, supplier text not null references supplier (code), placed_day integer not null,
       sent_day integer not null, due_day integer not null, postage_cents integer not null,
       state text not null, notes text not null, demo integer not null) strict`,
    'create index purchase_supplier on purchase (supplier)',
    'alter table delivery add column purchase text references purchase (code)',
    'alter table delivery add column offer text references offer (code)',
    'alter table delivery add column packs integer',
    'alter table delivery add column cents integer',
    'create index delivery_purchase on delivery (purchase)',
    'create index delivery_offer on delivery (offer)',
    `create index entry_delivery on entry (details ->> '$.delivery')
       where voided = 0 and details ->> '$.delivery' is not null`,
    ...['before', 'after'].map(
      (image) => `update change set ${image} = json_insert(${image}, '$.purchase', null, '$.offer', null,
       '$.packs', null, '$.cents', null) where noun = 'delivery'`,
    ),
  ],
};
