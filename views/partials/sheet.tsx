/** A sheet of paper: shown as one on the screen, and printed with nothing around it. */
import type { Child } from 'hono/jsx';
import { Document } from '../document.tsx';
import type { Shell } from '../layout.tsx';

const STYLES = ['paper', 'app', 'buttons', 'print', 'sheet'].map((name) => `/assets/${name}.css`);

interface SheetProps {
  readonly shell: Shell;
  readonly title: string;
  /** Where it leads back to, and what else can be printed. */
  readonly links: readonly { readonly href: string; readonly label: string }[];
  readonly children?: Child;
}

export const Sheet = ({ shell, title, links, children }: SheetProps) => (
  <Document title={title} theme={shell.theme} stylesheets={STYLES}>
    <header class="sheet-bar">
      <nav aria-label="Sheets">
        {links.map(({ href, label }) => (
          <a href={href}>{label}</a>
        ))}
      </nav>
      <p>
        <button type="button" class="act-here" data-print hidden>
          Print
        </button>{' '}
        <span>Print it from your browser's menu, or with Ctrl P; A4 or Letter.</span>
      </p>
    </header>
    <main class="paper-sheet" tabindex={0}>
      {children}
    </main>
  </Document>
);

interface SheetTableProps {
  /** Repeated at the head of every page. */
  readonly running: string;
  readonly columns: number;
  readonly class: string;
  readonly head: Child;
  readonly children?: Child;
}

/** A table whose first line, with the date, stands again on every page. */
export const SheetTable = ({ running, columns, class: look, head, children }: SheetTableProps) => (
  <table class={`sheet-table ${look}`}>
    <thead>
      <tr class="running">
        <td colspan={columns}>{running}</td>
      </tr>
      {head}
    </thead>
    {children}
  </table>
);

/** One shelf's rows under its name. */
export const ShelfRows = ({
  shelf,
  columns,
  children,
}: {
  shelf: string;
  columns: number;
  children?: Child;
}) => (
  <tbody>
    <tr class="sheet-shelf">
      <th colspan={columns} scope="rowgroup">
        {shelf}
      </th>
    </tr>
    {children}
  </tbody>
);

/** Code and name, the first two cells of every row. */
export const WhoCells = ({ code, name }: { code: string; name: string }) => (
  <>
    <td class="sheet-code">{code}</td>
    <th scope="row" class="sheet-name">
      {name}
    </th>
  </>
);
