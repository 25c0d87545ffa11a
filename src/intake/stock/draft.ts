/** Reads one row of stock: the prey, how many, how long, and when they came. */
import type { BinRole, Lot } from '../../husbandry/larder/index.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { ok } from '../../husbandry/result.ts';
import { plural, sentenceCase } from '../../husbandry/words.ts';
import { isBlank } from '../cells/blank.ts';
import { readCount } from '../cells/count.ts';
import type { DateCell } from '../cells/date-column.ts';
import { type LengthUnit, readUnit } from '../cells/length.ts';
import { readRole, soundsLikeColony } from '../cells/role.ts';
import type { StockColumn } from '../columns/words.ts';
import { dayWritten } from '../date-cells.ts';
import type { StockEntry } from '../entries.ts';
import type { SheetRow } from '../file/sheet.ts';
import type { NameMatch } from '../names/name-book.ts';
import { type Note, said, trouble } from '../reading.ts';
import { readText } from '../text.ts';
import { assumedBand, type BandRead, colonyBand, readTradeSize } from './trade-size.ts';

export interface StockDraft {
  readonly entry: StockEntry;
  readonly row: number;
  readonly notes: readonly Note[];
  readonly binGiven: boolean;
}

type StockRead =
  | { readonly kind: 'draft'; readonly draft: StockDraft }
  | { readonly kind: 'waits'; readonly notes: readonly Note[]; readonly forUnit: boolean };

interface StockWorld {
  readonly fileUnit: LengthUnit | null;
  readonly came: DateCell | undefined;
  readonly match: NameMatch<PreySpecies>;
}

/** A length written with the prey, such as "crickets 1/4 in". */
const LENGTH_WITHIN = /\d[\d./ ]*\s?(?:mm|cm|inch(?:es)?|in\b|")/i;

/** Lengths of the prey; null while their unit is not known. */
function bandOf(
  { cell }: SheetRow<StockColumn>,
  { role, notes, ...world }: StockWorld & { role: BinRole; notes: Note[] },
): BandRead | null {
  const species = world.match.item;
  const written = isBlank(cell('size')) ? (LENGTH_WITHIN.exec(cell('prey'))?.[0] ?? '') : cell('size');
  const colony = written === '' && role === 'colony' ? colonyBand(species) : null;
  const read = colony
    ? ok(colony)
    : readTradeSize(written, species, readUnit(cell('unit')) ?? world.fileUnit);
  if (!read.ok && read.problem.code === 'size-without-unit') return null;
  if (!read.ok) notes.push(trouble(read.problem));
  const band = read.ok ? read.value : assumedBand(species);
  if (band.said) notes.push(said(band.assumed ? 'size-assumed' : 'size-read', band.said));
  return band;
}

function headsOf(text: string, notes: Note[]): number | null {
  const read = isBlank(text) ? null : readCount(text);
  if (read?.ok && read.value.said) notes.push(said('count-range', read.value.said));
  if (read && !read.ok) notes.push(trouble(read.problem));
  if (read?.ok) return read.value.heads;
  notes.push(said('count-unknown', 'No count: the bin is brought in uncounted.'));
  return null;
}

const lotOf = (heads: number | null, { fromMm, toMm }: BandRead): Lot | null =>
  heads === null ? null : { heads, fromMm, toMm };

/** As the cell says, else as the name sounds; flies live in cups whatever is written, and nothing else does. */
function roleOf({ cell }: SheetRow<StockColumn>, species: PreySpecies, notes: Note[]): BinRole {
  if (species.cup !== null) return 'cup';
  const read = isBlank(cell('role')) ? null : readRole(cell('role'));
  if (read?.ok) return read.value === 'cup' ? 'colony' : read.value;
  if (read) notes.push(trouble(read.problem));
  if (!soundsLikeColony(cell('bin'))) return 'holding';
  notes.push(said('role-by-name', 'Taken as a breeding colony, by its name.'));
  return 'colony';
}

const WORD = /\p{L}{3}/u;

/** A bin without a name is called by its label, if that is a word, else by its prey. */
const nameFrom = (label: string, { commonName }: PreySpecies): string =>
  WORD.test(label) ? label : sentenceCase(plural(commonName));

export function stockDraft(row: SheetRow<StockColumn>, world: StockWorld): StockRead {
  const { cell } = row;
  const { item: species, how, said: preySaid } = world.match;
  const notes: Note[] = preySaid ? [said(`prey-by-${how}`, preySaid)] : [];
  const heads = headsOf(cell('count'), notes);
  const role = roleOf(row, species, notes);
  const came = dayWritten(world.came, cell('came'), notes);
  const band = bandOf(row, { ...world, role, notes });
  if (!band || came.open) return { kind: 'waits', notes, forUnit: !band };
  const bin = readText(cell('bin'), 'name', notes);
  const label = readText(cell('label'), 'label', notes);
  const entry: StockEntry = {
    label: label || null,
    bin: bin || nameFrom(label, species),
    species: species.code,
    role,
    lot: lotOf(heads, band),
    sizeAssumed: band.assumed,
    came: came.day,
    room: readText(cell('room'), 'place', notes),
    notes: readText(cell('notes'), 'notes', notes),
  };
  return { kind: 'draft', draft: { row: row.row, notes, binGiven: bin !== '', entry } };
}
