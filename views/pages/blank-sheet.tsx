/** A blank sheet for several evenings: everybody in the order of the walk, and room to write what was offered and what became of it. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { counted, longDay, shortDay, yearOf } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { Sheet, SheetTable, ShelfRows, WhoCells } from '../partials/sheet.tsx';
import { paths } from '../paths.ts';

export interface BlankRow {
  readonly code: string;
  readonly name: string;
  /** The evening its next meal is expected on; null when none is. */
  readonly expected: DayNumber | null;
}

export interface BlankSheetProps {
  readonly shell: Shell;
  readonly day: DayNumber;
  readonly days: number;
  /** Only those who may come due in these days. */
  readonly onlyDue: boolean;
  /** Feeding evenings; none leaves columns without a date. */
  readonly evenings: readonly DayNumber[];
  readonly shelves: readonly { readonly shelf: string; readonly rows: readonly BlankRow[] }[];
}

const UNDATED = [null, null, null];

export const BlankSheetPage = (props: BlankSheetProps) => {
  const { shell, day, days, onlyDue, shelves } = props;
  const animals = shelves.flatMap(({ rows }) => rows).length;
  const from = `${longDay(day)} ${yearOf(day)}`;
  return (
    <Sheet shell={shell} title={`Blank sheet from ${from}`} links={linksOf(props)}>
      <header class="sheet-head">
        <p class="sheet-date">
          {counted(days, 'day')} from {from}
        </p>
        <h1>
          {counted(
            animals,
            onlyDue ? 'animal that may come due' : 'animal',
            onlyDue ? 'animals that may come due' : 'animals',
          )}
        </h1>
      </header>
      <Legend />
      {animals === 0 ? null : <BlankTable {...props} running={`${counted(days, 'day')} from ${from}`} />}
    </Sheet>
  );
};

const linksOf = ({ day, days, onlyDue }: BlankSheetProps) => [
  { href: paths.tonight, label: "Tonight's round" },
  { href: paths.sheetOf(civilDate(day)), label: 'The evening sheet' },
  onlyDue
    ? { href: paths.blankSheet(days), label: 'Everybody' }
    : { href: `${paths.blankSheet(days)}&who=due`, label: 'Only who may come due' },
  { href: paths.keyInOf(civilDate(day)), label: 'Key a sheet in' },
];

const Legend = () => (
  <p class="sheet-legend">
    <b>offered</b> how many and from which bin: 3 B2; 0 not fed; p premoult; m moulted; d dead · <b>then</b> t
    taken, s ate some, r refused · <span class="sheet-dot">•</span> expected to eat
  </p>
);

const BlankTable = ({ evenings, shelves, running }: BlankSheetProps & { running: string }) => {
  const columns: readonly (DayNumber | null)[] = evenings.length === 0 ? UNDATED : evenings;
  const width = 2 + 2 * columns.length;
  return (
    <SheetTable running={running} columns={width} class="blank" head={<BlankHead columns={columns} />}>
      {shelves.map(({ shelf, rows }) => (
        <ShelfRows shelf={shelf} columns={width}>
          {rows.map((row) => (
            <tr>
              <WhoCells {...row} />
              {columns.map((evening) => (
                <>
                  <td class="sheet-write">
                    {evening !== null && evening === row.expected ? <span class="sheet-dot">•</span> : null}
                  </td>
                  <td class="sheet-then" />
                </>
              ))}
            </tr>
          ))}
        </ShelfRows>
      ))}
    </SheetTable>
  );
};

const BlankHead = ({ columns }: { columns: readonly (DayNumber | null)[] }) => (
  <>
    <tr>
      <th scope="col" rowspan={2} class="sheet-code">
        code
      </th>
      <th scope="col" rowspan={2} class="sheet-name">
        who
      </th>
      {columns.map((day) => (
        <th scope="colgroup" colspan={2} class="sheet-evening">
          {day === null ? 'date:' : shortDay(day)}
        </th>
      ))}
    </tr>
    <tr>
      {columns.map(() => (
        <>
          <th scope="col" class="sheet-write">
            offered
          </th>
          <th scope="col" class="sheet-then">
            then
          </th>
        </>
      ))}
    </tr>
  </>
);
