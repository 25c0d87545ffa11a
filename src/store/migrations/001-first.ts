/** Schema 1: what lives here, what was done, what was seen, and the answers kept. */
import type { Migration } from './migration.ts';

const NOUNS = [
  `create table room (
     code text primary key, name text not null,
     day_temp_c real not null, night_temp_c real not null, demo integer not null default 0) strict`,
  `create table animal (
     code text primary key, name text not null, kind text not null, count integer not null check (count > 0),
     sex text not null, matured integer not null, gauge_mm real not null, gauge_day integer not null,
     gauge_assumed integer not null, room text not null references room (code), shelf text not null,
     shelf_position integer not null, stage_override text, label text not null,
     notes text not null,
     left_reason text, left_day integer, demo integer not null) strict`,
  'create index animal_room on animal (room)',
  `create table bin (
     code text primary key, name text not null, species text not null, role text not null,
     room text not null references room (code), capacity integer, keep_adults integer not null,
     notes text not null,
     closed integer not null, demo integer not null) strict`,
  'create index bin_room on bin (room)',
  `create table delivery (
     code text primary key, species text not null, bin text not null references bin (code),
     heads integer not null, from_mm real not null, to_mm real not null, day integer not null,
     state text not null, demo integer not null) strict`,
  'create index delivery_bin on delivery (bin)',
  `create table planned_change (
     code text primary key, kind text not null, animal_kind text not null, from_day integer not null,
     to_day integer not null, chance real not null, count integer not null, gauge_mm real not null,
     room text not null references room (code), animal text references animal (code),
     cancelled integer not null, demo integer not null) strict`,
  'create index planned_change_animal on planned_change (animal)',
  'create table setting (key text primary key, value text not null) strict',
  'create table counter (name text primary key, last integer not null) strict',
];

const JOURNAL = [
  `create table act (
     id integer primary key autoincrement, form_id text unique, verb text not null, summary text not null,
     written_at text not null, civil_day integer not null, reply text not null,
     undoes integer references act (id), voided_at text) strict`,
  `create table change (
     id integer primary key autoincrement, act integer not null references act (id),
     noun text not null, code text not null, before text, after text) strict`,
  'create index change_row on change (noun, code, act)',
  'create index change_act on change (act)',
  `create table entry (
     id integer primary key autoincrement, act integer not null references act (id),
     civil_day integer not null, kind text not null, animal text, bin text,
     about integer references entry (id), heads integer, from_mm real, to_mm real,
     details text not null, voided integer not null default 0) strict`,
  'create index entry_animal on entry (animal, voided, kind, civil_day, id) where animal is not null',
  'create index entry_bin on entry (bin, voided, civil_day, id) where bin is not null',
  `create index entry_counted on entry (bin, civil_day, id) where voided = 0 and kind = 'counted'`,
  'create index entry_about on entry (about, id) where voided = 0 and about is not null',
  'create index entry_act on entry (act)',
  "create index entry_evening on entry (civil_day, animal) where voided = 0 and kind = 'offered'",
];

const KEPT = [
  `create table kept (
     key text primary key, revision integer not null, engine text not null, body text not null) strict`,
  `create table password (
     id integer primary key check (id = 1), salt text not null, parameters text not null,
     hash text not null) strict`,
  `create table session (
     id_hash text primary key, started_at integer not null, used_at integer not null) strict`,
];

export const first: Migration = { version: 1, statements: [...NOUNS, ...JOURNAL, ...KEPT] };
