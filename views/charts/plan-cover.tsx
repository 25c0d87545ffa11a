/** Cover lines of a plan: for each demand group what is wanted and eaten week by week, and what stands ready after it. */
import type { GroupCover, PlanAnswer } from '../../src/husbandry/plan/index.ts';
import { counted, expected, sentenceCase } from '../format.ts';
import { Numbers, type NumbersTable } from './figure.tsx';
import { coversByName, sum } from './plan-covers.ts';
import { CoverPanel } from './plan-panel.tsx';

/** Panels drawn; the others stand in a table. */
const MOST_PANELS = 6;

export const PlanCover = ({ plan }: { plan: PlanAnswer }) => {
  const groups = coversByName(plan.cover);
  const others = groups.slice(MOST_PANELS);
  return groups.length === 0 ? null : (
    <section aria-labelledby="plan-cover" class="plan-cover">
      <h2 id="plan-cover">What stands ready for whom</h2>
      <p>
        Blocks: prey wanted each week; red hatch: missed. Line: prey that fits and stands ready after the
        week’s meals, shared with others who eat the same; dashed: what should stand ready against bad luck.
        Where far more stands ready than is wanted, the line leaves the top and its place is dotted.
      </p>
      <div class="plan-panels">
        {groups.slice(0, MOST_PANELS).map((group, i) => (
          <CoverPanel id={`plan-cover-${i}`} group={group} plan={plan} />
        ))}
      </div>
      {others.length === 0 ? null : <Numbers {...othersTable(others)} />}
    </section>
  );
};

const othersTable = (others: readonly GroupCover[]): NumbersTable => ({
  caption: `The other ${counted(others.length, 'group')}, over all weeks`,
  head: ['Group', 'Wanted', 'Late', 'Missed'],
  rows: others.map(({ name, wanted, late, missed }) => [
    sentenceCase(name),
    ...[wanted, late, missed].map((values) => expected(sum(values))),
  ]),
});
