/** Meals of each day or week as a block; what is not met stands hatched on what is. */
import { missingFill } from './hatches.tsx';
import { place } from './ruler.tsx';

type Scale = (value: number) => number;

interface MealBlocksProps {
  /** Of the chart, which holds the hatch. */
  readonly id: string;
  readonly wanted: readonly number[];
  readonly unmet: readonly number[];
  /** From the first day or week on, and from none on. */
  readonly x: Scale;
  readonly y: Scale;
  /** Space left beside each block. */
  readonly gap: number;
}

export const MealBlocks = ({ id, wanted, unmet, x, y, gap }: MealBlocksProps) => (
  <g>
    {wanted.map((all, i) => {
      const short = Math.min(all, unmet[i] ?? 0);
      const [left, width] = [place(x(i) + gap), place(x(i + 1) - x(i) - 2 * gap)];
      const [top, met] = [place(y(all)), place(y(all - short))];
      return (
        <>
          <rect x={left} width={width} y={met} height={place(y(0) - met)} class="demand" />
          {met > top ? (
            <rect
              x={left}
              width={width}
              y={top}
              height={place(met - top)}
              fill={missingFill(id)}
              class="missing"
            />
          ) : null}
        </>
      );
    })}
  </g>
);
