/** An answer to a bulk order as its page shows it, or why there is none. */
import { counted, money } from '../../../views/format.ts';
import type { BulkShown } from '../../../views/pages/bulk-answer.tsx';
import { offerWords } from '../../../views/pages/bulk-words.ts';
import { paths } from '../../../views/paths.ts';
import { recordOf } from '../../husbandry/orders/index.ts';
import type { BulkAnswer, BulkNone } from '../../husbandry/plan/index.ts';
import type { SettledBulk } from './bulk-asked.ts';
import { bulkSources } from './bulk-sources.ts';
import { marketIn } from './supplier-views.ts';
import type { Visit } from './visit.ts';

export function shownBulk(found: BulkAnswer | BulkNone | null, here: Visit, settled: SettledBulk): BulkShown {
  const { snapshot, names, unit, shell } = here;
  const { offer, supplier, question } = settled;
  if (found === null || typeof found === 'string')
    return { state: 'none', sentence: noneWords(found, here, settled), again: paths.suppliers };
  return {
    state: 'told',
    told: {
      answer: found,
      offer,
      supplier,
      weeks: question.weeks,
      names,
      unit,
      today: shell.today,
      currency: marketIn(snapshot).purse.currency,
      sources: bulkSources(
        offer,
        { supplier, record: recordOf(supplier, marketIn(snapshot).arrivals, snapshot.facts.policy) },
        snapshot.facts,
      ),
    },
  };
}

/** Why no count can be named. */
function noneWords(
  why: BulkNone | null,
  { snapshot, names }: Visit,
  { offer, supplier, question }: SettledBulk,
): string {
  const what = offerWords(offer, names);
  const weeks = counted(question.weeks, 'week');
  if (why === 'cannot come')
    return `${supplier.name} sends nothing that comes within ${weeks}: look further ahead, or see when they send.`;
  if (why === 'under minimum')
    return `Nobody here eats enough ${what} for an order of ${money(supplier.minimumCents, marketIn(snapshot).purse.currency)}, the least ${supplier.name} sends.`;
  return `Nobody here eats ${what} in these ${weeks}: that size or that prey fits nobody’s rule, so none would be eaten however many came.`;
}
