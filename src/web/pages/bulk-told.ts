/** An answer to a bulk order as its page shows it, or why there is none. */
import { counted, money } from '../../../views/format.ts';
import { preyName } from '../../../views/names.ts';
import type { BulkShown } from '../../../views/pages/bulk-answer.tsx';
import { offerWords } from '../../../views/pages/bulk-words.ts';
import { paths } from '../../../views/paths.ts';
import { dispatchesOf } from '../../husbandry/orders/index.ts';
import type { BulkAnswer } from '../../husbandry/plan/index.ts';
import { DAYS_PER_WEEK } from '../../husbandry/units.ts';
import type { SettledBulk } from './bulk-asked.ts';
import { bulkSources } from './bulk-sources.ts';
import { marketIn } from './supplier-views.ts';
import type { Visit } from './visit.ts';

export function shownBulk(answer: BulkAnswer | null, here: Visit, settled: SettledBulk): BulkShown {
  const { snapshot, names, unit, shell } = here;
  const { offer, supplier, question } = settled;
  if (answer === null) return { state: 'none', sentence: noneWords(here, settled), again: paths.suppliers };
  return {
    state: 'told',
    told: {
      answer,
      offer,
      supplier,
      weeks: question.weeks,
      names,
      unit,
      today: shell.today,
      currency: marketIn(snapshot).purse.currency,
      sources: bulkSources(offer, supplier, snapshot.facts),
    },
  };
}

/** Why no count can be named. */
function noneWords({ snapshot, names }: Visit, { offer, supplier, question }: SettledBulk): string {
  const { weather, purse } = marketIn(snapshot);
  const last = snapshot.today + question.weeks * DAYS_PER_WEEK;
  const comes = dispatchesOf(supplier, { from: snapshot.today, to: last }, weather)[0]?.comes;
  const what = offerWords(offer, names);
  if (comes === undefined || comes >= last)
    return `${supplier.name} sends nothing that comes within ${counted(question.weeks, 'week')}: look further ahead, or see when they send.`;
  if (supplier.minimumCents > 0)
    return `Nobody here eats enough ${what} for an order of ${money(supplier.minimumCents, purse.currency)}, the least ${supplier.name} sends.`;
  return `Nobody here eats ${what} in these ${counted(question.weeks, 'week')}: ${preyName(names.species, offer.species)} of that size fit nobody’s rule, so none would be eaten however many came.`;
}
