/** Cells of a sheet keyed in, as the rows a round by taps would send. */
import { z } from 'zod';
import { NOTHING_SHOWN } from '../../../views/offer-text.ts';
import { type Done, loadSnapshot, recordEvening } from '../../actions/index.ts';
import { parseCivilDate } from '../../husbandry/calendar.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, type Result } from '../../husbandry/result.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import type { House } from './house.ts';
import { type Beside, type Cell, readCell } from './key-cell.ts';
import { type Row, rowsOf, type Sheet } from './round-rows.ts';
import type { RoundReply } from './round-told.ts';
import { shownOffer } from './shown-offer.ts';

type Asked = Readonly<Record<string, unknown>>;

/** Fields of the rows: each cell read, or the sentence that stands beside it. */
export function cellFields(asked: Asked, { bins }: Snapshot): Readonly<Record<string, z.ZodType>> {
  const codes = bins.map(({ code }) => code);
  const fields = Object.keys(asked).flatMap((name): [string, z.ZodType][] => {
    if (name.startsWith('offer:')) return [[name, shownOffer]];
    if (!name.startsWith('cell:')) return [];
    const shown = asked[name.replace('cell:', 'offer:')];
    return [[name, cellField({ bins: codes, proposed: shown !== undefined && shown !== NOTHING_SHOWN })]];
  });
  return Object.fromEntries(fields);
}

const cellField = (beside: Beside) =>
  z.string().transform((typed, context): Cell => {
    const cell = readCell(typed, beside);
    if (cell.ok) return cell.value;
    context.addIssue({ code: 'custom', message: cell.problem.sentence });
    return z.NEVER;
  });

/** What is wrong with a row is said beside its cell. */
export const besideCells = (animals: readonly string[]): Readonly<Record<string, string>> =>
  Object.fromEntries(
    animals.flatMap((code) => ['bin', 'heads', 'offer'].map((field) => [`${field}:${code}`, `cell:${code}`])),
  );

/** What the form holds: the cells as `cell:<animal>`, and what each was shown as `offer:<animal>`. */
export interface Keyed extends Readonly<Record<string, unknown>> {
  readonly day: string;
  readonly animal: readonly string[];
}

export async function recordCells(
  house: House,
  keyed: Keyed,
  formId: string | undefined,
): Promise<Result<Done<RoundReply>>> {
  const { context } = house;
  const day = parseCivilDate(keyed.day);
  if (!day.ok) return day;
  const rows = await rowsOf(house, await loadSnapshot(context, day.value), sheetOf(keyed));
  if (!rows.ok) return rows;
  if (rows.value.length === 0) return err(problem('nobody-named', 'Nothing is written in any cell.'));
  return recordEvening(context, { day: keyed.day, rows: rows.value.map((row) => told(row, keyed)), formId });
}

const cellOf = (keyed: Keyed, animal: string): Cell => (keyed[`cell:${animal}`] as Cell | undefined) ?? {};

/** The sheet as marks and fields of the round. */
function sheetOf(keyed: Keyed): Sheet {
  const { day, animal } = keyed;
  const marked = (mark: Cell['mark']) => animal.filter((code) => cellOf(keyed, code).mark === mark);
  const fields = animal.flatMap((code) => {
    const { heads, bin } = cellOf(keyed, code);
    const offer = keyed[`offer:${code}`];
    return [
      ...(offer === undefined ? [] : [[`offer:${code}`, offer]]),
      ...(heads === undefined ? [] : [[`heads:${code}`, heads]]),
      ...(bin === undefined ? [] : [[`bin:${code}`, { bin }]]),
    ];
  });
  return {
    day,
    animal,
    notFed: [],
    premoult: marked('premoult'),
    moulted: marked('moulted'),
    died: marked('died'),
    ...Object.fromEntries(fields),
  };
}

/** With what became of it, where the cell says so. */
function told(row: Row, keyed: Keyed): Row {
  const { became } = cellOf(keyed, row.animal);
  return became === undefined || row.outcome !== 'offered' ? row : { ...row, became, bulk: false };
}
