/** What every chart shares: a title that is the finding, a description, and the same numbers as a table. */
import type { Child } from 'hono/jsx';

interface DrawingProps {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  /** Where the drawing begins; below 0 it reaches above its frame. */
  readonly top?: number;
  readonly class?: string;
  readonly children?: Child;
}

/** An SVG with its name and description for those who do not see it. */
export const Drawing = ({
  id,
  title,
  description,
  width,
  height,
  top = 0,
  class: look = '',
  children,
}: DrawingProps) => (
  <svg
    class={`drawing ${look}`}
    viewBox={`0 ${Math.floor(top)} ${width} ${Math.ceil(height - top)}`}
    role="img"
    aria-labelledby={`${id}-title ${id}-desc`}
  >
    <title id={`${id}-title`}>{title}</title>
    <desc id={`${id}-desc`}>{description}</desc>
    {children}
  </svg>
);

export interface NumbersTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The chart's numbers, behind a disclosure; the first column heads its rows. */
export const Numbers = ({ caption, head, rows }: NumbersTable) => (
  <details class="numbers">
    <summary>The numbers</summary>
    <div class="scroller">
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {head.map((cell) => (
              <th scope="col">{cell}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([first, ...rest]) => (
            <tr>
              <th scope="row">{first}</th>
              {rest.map((cell) => (
                <td>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  </details>
);
