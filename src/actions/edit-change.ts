/** Changes what was said of a planned change: its days, heads, size and chance; of a sac also what is kept. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import type { PlannedChangeRow } from '../store/index.ts';
import { asOf, chance, civilDay, formId, gaugeMm, heads, someText } from './fields.ts';
import { findRow } from './find.ts';
import { action } from './perform.ts';
import { forwards, noSacDates, notBeforeLaid } from './sac-dates.ts';
import { said } from './said.ts';
import { unlessChanged } from './unless-changed.ts';

const schema = z.strictObject({
  change: someText,
  from: civilDay.optional(),
  to: civilDay.optional(),
  count: heads.optional(),
  gaugeMm: gaugeMm.optional(),
  chance: chance.optional(),
  shareKept: chance.optional(),
  asOf,
  formId,
});
type Given = z.output<typeof schema>;

export const editChange = action({
  verb: 'edit-change',
  schema,
  body: async ({ tx }, given) => {
    const found = await findRow(tx, 'planned_change', given.change);
    if (!found.ok) return found;
    const same = await unlessChanged(tx, { noun: 'planned_change', code: given.change, asOf: given.asOf });
    if (!same.ok) return same;
    const row = changedRow(found.value, given);
    const right = whatIsWrong(row);
    if (!right.ok) return right;
    const who = row.animal ?? `${row.count}`;
    return ok({
      summary: `Changed the plan: ${row.kind} of ${who}, ${spokenDay(row.fromDay)} to ${spokenDay(row.toDay)}`,
      puts: { planned_change: [row] },
      reply: null,
    });
  },
});

function changedRow(row: PlannedChangeRow, given: Given): PlannedChangeRow {
  const { from, to, shareKept, count, gaugeMm: size, chance: likely } = given;
  const sac = row.kind === 'sac' ? (row.sac ?? noSacDates) : null;
  return {
    ...row,
    ...said({ fromDay: from, toDay: to, count, gaugeMm: size, chance: likely }),
    sac: sac === null ? null : { ...sac, ...said({ shareKept }) },
  };
}

function whatIsWrong({ cancelled, code, fromDay, toDay, sac }: PlannedChangeRow): Result<null> {
  if (cancelled) return err(problem('change-cancelled', `"${code}" is no longer planned.`, 'change'));
  const inOrder = forwards({ from: fromDay, to: toDay }, 'to');
  return inOrder.ok && sac !== null ? notBeforeLaid(sac, fromDay, 'from') : inOrder;
}
