/** Reads one row into drafts of animals: what the row says, before it is set beside the record. */
import type { Kind, Sex } from '../../husbandry/animals/index.ts';
import type { DateCell } from '../cells/date-column.ts';
import type { LengthUnit } from '../cells/length.ts';
import type { SexPart } from '../cells/sex.ts';
import type { AnimalColumn } from '../columns/words.ts';
import { dayWritten } from '../date-cells.ts';
import type { AnimalEntry } from '../entries.ts';
import type { SheetRow } from '../file/sheet.ts';
import type { NameMatch } from '../names/name-book.ts';
import { type Note, said } from '../reading.ts';
import { readText } from '../text.ts';
import { isSure, kindText, partSexes } from './kind-cell.ts';
import { readHeads } from './sexes.ts';
import { readGauge } from './size.ts';
import { stageFacts, stageInSize, stageWritten } from './stage-facts.ts';

export interface AnimalDraft {
  readonly entry: AnimalEntry;
  readonly row: number;
  readonly notes: readonly Note[];
  /** What the row itself says, as against what was filled in. */
  readonly given: { readonly name: boolean; readonly kind: boolean; readonly count: boolean };
}

type DraftsRead =
  | { readonly kind: 'drafts'; readonly drafts: readonly AnimalDraft[] }
  | { readonly kind: 'none here'; readonly notes: readonly Note[] }
  | { readonly kind: 'waits'; readonly notes: readonly Note[]; readonly forUnit: boolean };

interface DraftWorld {
  readonly fileUnit: LengthUnit | null;
  readonly dates: { readonly fed: DateCell | undefined; readonly moulted: DateCell | undefined };
  readonly match: NameMatch<Kind>;
}

const PART_LABELS: Readonly<Record<Sex, string>> = { male: 'm', female: 'f', unsexed: 'u' };

/** A row split by sex gives names and labels of its parts that stay the same the next time. */
function partNames(name: string, label: string, part: SexPart, split: boolean) {
  if (!split) return { name, label: label || null };
  return { name: `${name} (${part.sex})`, label: (label && `${label} ${PART_LABELS[part.sex]}`) || null };
}

function placesOf({ cell }: SheetRow<AnimalColumn>, notes: Note[]) {
  return {
    shelf: readText(cell('shelf'), 'place', notes),
    room: readText(cell('room'), 'place', notes),
    notes: readText(cell('notes'), 'notes', notes),
  };
}

/** What a row's cells say, each read once for all its parts. */
function cellsRead({ cell }: SheetRow<AnimalColumn>, { match, dates, fileUnit }: DraftWorld, notes: Note[]) {
  const kind = match.item;
  const sizeIsStage = stageInSize(cell('size'), kind);
  const stageText = sizeIsStage ? cell('size') : cell('stage');
  const stage = stageWritten(stageText, kind, notes);
  const written = partSexes(cell('kind'));
  const heads = readHeads(
    { sex: cell('sex'), count: cell('count'), stage, besideKind: written.sexes },
    notes,
  );
  const fed = dayWritten(dates.fed, cell('fed'), notes);
  const moulted = dayWritten(dates.moulted, cell('moulted'), notes);
  const size = sizeIsStage ? '' : cell('size');
  const gauge = heads.none
    ? null
    : readGauge(kind, { size, unit: cell('unit'), fileUnit, stage, stageText }, notes);
  const who = readText(cell('who'), 'name', notes);
  const name =
    who || readText(kindText({ kind: written.kind, genus: cell('genus') }), 'name', notes) || kind.commonName;
  return { stage, stageText, heads, fed, moulted, gauge, who, name };
}

/** Drafts of one row: one, or one for each sex of a mixed group. */
export function draftsOf(row: SheetRow<AnimalColumn>, world: DraftWorld): DraftsRead {
  const { item: kind, how, said: kindSaid } = world.match;
  const notes: Note[] = kindSaid ? [said(`kind-by-${how}`, kindSaid)] : [];
  const { stage, stageText, heads, fed, moulted, gauge, who, name } = cellsRead(row, world, notes);
  if (heads.none) return { kind: 'none here', notes };
  if (!gauge || fed.open || moulted.open) return { kind: 'waits', notes, forUnit: !gauge };
  const label = readText(row.cell('label'), 'label', notes);
  const places = placesOf(row, notes);
  const given = { name: who !== '', kind: isSure(how), count: heads.countGiven };
  const draftOf = (part: SexPart): AnimalDraft => {
    const own = [...notes];
    const entry: AnimalEntry = {
      ...partNames(name, label, part, heads.parts.length > 1),
      ...places,
      kind: kind.code,
      count: part.count,
      sex: part.sex,
      ...stageFacts(stage, { kind, sex: part.sex, gauge, text: stageText }, own),
      gaugeMm: gauge.gaugeMm,
      gaugeAssumed: gauge.assumed,
      lastFed: fed.day,
      lastMoult: moulted.day,
    };
    return { row: row.row, notes: own, given, entry };
  };
  return { kind: 'drafts', drafts: heads.parts.map(draftOf) };
}
