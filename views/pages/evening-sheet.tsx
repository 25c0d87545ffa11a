/** The evening on paper: what to take out first, then shelf by shelf who gets what, with boxes for what went otherwise. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { ROUND_CAUTION } from '../cautions.ts';
import { counted, longDay, yearOf } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { Sheet, SheetTable, ShelfRows, WhoCells } from '../partials/sheet.tsx';
import { paths } from '../paths.ts';

interface Who {
  readonly code: string;
  readonly name: string;
}

export type SheetRow = Who &
  (
    | {
        readonly kind: 'feed';
        readonly late: boolean;
        readonly heads: number;
        readonly prey: string;
        readonly lengths: string;
        readonly bin: string;
        /** What is done to the prey first: 'kill first', 'kill, cut into 2'; else empty. */
        readonly first: string;
      }
    | { readonly kind: 'nothing' }
    | { readonly kind: 'leave'; readonly reason: string }
  );

/** Prey of one bin and size. */
export interface PickingLine {
  readonly bin: string;
  readonly binName: string;
  readonly heads: number;
  /** 'medium house crickets'. */
  readonly prey: string;
  readonly lengths: string;
  /** Heads to be killed first, and heads to be cut. */
  readonly killed: number;
  readonly cut: number;
}

export interface EveningSheetProps {
  readonly shell: Shell;
  readonly day: DayNumber;
  readonly feedingDay: boolean;
  /** In the order of the walk. */
  readonly shelves: readonly { readonly shelf: string; readonly rows: readonly SheetRow[] }[];
  readonly picking: readonly PickingLine[];
}

export const EveningSheetPage = ({ shell, day, feedingDay, shelves, picking }: EveningSheetProps) => {
  const rows = shelves.flatMap((each) => each.rows);
  const date = `${longDay(day)} ${yearOf(day)}`;
  return (
    <Sheet shell={shell} title={`Evening sheet, ${date}`} links={linksOf(day)}>
      <header class="sheet-head">
        <p class="sheet-date">{date}</p>
        <h1>{headline(rows)}</h1>
        {feedingDay ? null : <p>This is not one of your feeding days.</p>}
      </header>
      {picking.length === 0 ? null : <Picking picking={picking} />}
      {rows.length === 0 ? null : <EveningTable shelves={shelves} running={`Evening of ${date}`} />}
    </Sheet>
  );
};

function headline(rows: readonly SheetRow[]): string {
  const many = (kind: SheetRow['kind']) => rows.filter((row) => row.kind === kind).length;
  if (many('feed') === 0) return 'Nobody eats this evening';
  const alone = many('leave');
  return `${counted(many('feed'), 'animal eats', 'animals eat')}${alone === 0 ? '' : `, ${alone} left alone`}`;
}

const linksOf = (day: DayNumber) => [
  { href: paths.tonight, label: "Tonight's round" },
  { href: paths.blankSheet(7), label: 'A blank sheet for the week' },
  { href: paths.keyInOf(civilDate(day)), label: 'Key a sheet in' },
];

const Picking = ({ picking }: { picking: readonly PickingLine[] }) => (
  <section class="picking" aria-labelledby="picking">
    <h2 id="picking">Take out first</h2>
    <ul>
      {picking.map(({ bin, binName, heads, prey, lengths, killed, cut }) => (
        <li>
          <span class="sheet-box" aria-hidden="true" />
          <b class="heads">{heads}</b> {prey}, {lengths}{' '}
          <span class="from">
            from {bin} {binName}
          </span>
          {killed > 0 ? <em>kill {killed} first</em> : null}
          {cut > 0 ? <em>kill and cut {cut}</em> : null}
        </li>
      ))}
    </ul>
    <p class="sheet-caution">{ROUND_CAUTION} Tick only what went otherwise than printed.</p>
  </section>
);

const BOXES = ['not fed', 'premoult', 'moulted', 'dead'] as const;
const COLUMNS = 5 + BOXES.length;

const EveningTable = ({ shelves, running }: Pick<EveningSheetProps, 'shelves'> & { running: string }) => (
  <SheetTable running={running} columns={COLUMNS} class="evening" head={<EveningHead />}>
    {shelves.map(({ shelf, rows }) => (
      <ShelfRows shelf={shelf} columns={COLUMNS}>
        {rows.map((row) => (
          <tr class={`is-${row.kind}`}>
            <WhoCells {...row} />
            <WhatCells row={row} />
            {BOXES.map((label) => (
              <td class="sheet-tick">
                {row.kind === 'leave' && label !== 'moulted' && label !== 'dead' ? null : (
                  <span class="sheet-box">
                    <span class="unseen">{label}</span>
                  </span>
                )}
              </td>
            ))}
            <td class="sheet-other" />
          </tr>
        ))}
      </ShelfRows>
    ))}
  </SheetTable>
);

const EveningHead = () => (
  <tr>
    <th scope="col" class="sheet-code">
      code
    </th>
    <th scope="col">who</th>
    <th scope="col">gets</th>
    <th scope="col" class="sheet-bin">
      bin
    </th>
    {BOXES.map((label) => (
      <th scope="col" class="sheet-tick">
        {label}
      </th>
    ))}
    <th scope="col" class="sheet-other">
      other
    </th>
  </tr>
);

const WhatCells = ({ row }: { row: SheetRow }) => {
  if (row.kind === 'leave')
    return (
      <td colspan={2} class="sheet-leave">
        <b>Do not feed:</b> {row.reason}
      </td>
    );
  if (row.kind === 'nothing') return <td colspan={2}>nothing in the larder fits</td>;
  return (
    <>
      <td>
        <b class="heads">{row.heads}</b> {row.prey}, <span class="whole">{row.lengths}</span>
        {row.first === '' ? null : <em>{row.first}</em>}
        {row.late ? <small>late</small> : null}
      </td>
      <td class="sheet-bin">{row.bin}</td>
    </>
  );
};
