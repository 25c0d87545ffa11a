/** What goes unused: prey that outgrows everyone here or dies in its bin before it is eaten. */
import type { BinAnswer } from '../../src/husbandry/supply/index.ts';
import { counted, expected } from '../format.ts';
import { paths } from '../paths.ts';

interface LeftoversProps {
  readonly bins: readonly BinAnswer[];
  readonly days: number;
}

export const Leftovers = ({ bins, days }: LeftoversProps) => {
  const wasted = bins
    .filter(({ outgrown, died }) => outgrown >= 1 || died >= 1)
    .toSorted((a, b) => b.outgrown + b.died - a.outgrown - a.died);
  if (wasted.length === 0) return null;
  return (
    <section aria-labelledby="unused">
      <h2 id="unused">What outgrows or dies unused</h2>
      <table class="compact">
        <thead>
          <tr>
            <th scope="col">Bin</th>
            <th scope="col" class="number">
              Outgrown
            </th>
            <th scope="col" class="number">
              Dies
            </th>
            <th scope="col" class="number">
              Eaten
            </th>
          </tr>
        </thead>
        <tbody>
          {wasted.map(({ code, name, outgrown, died, eaten }) => (
            <tr>
              <th scope="row">
                <a href={paths.bin(code)}>{name}</a>
              </th>
              <td class="number">{expected(outgrown)}</td>
              <td class="number">{expected(died)}</td>
              <td class="number">{expected(eaten)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="note">
        Over the next {counted(days, 'day')}. Outgrown: alive at the end and too large for every animal here.
      </p>
    </section>
  );
};
