/** A bulk order as it is asked for in an address: which offer, how many weeks; or a sentence about what cannot be. */
import type { FormEntry } from '../../../views/partials/form.tsx';
import type { Market, Offer, Supplier } from '../../husbandry/orders/index.ts';
import type { BulkQuestion } from '../../husbandry/plan/index.ts';
import { weeksIn } from './plan-asked.ts';

/** A question that can be asked, with what it is about. */
export interface SettledBulk {
  readonly question: BulkQuestion;
  readonly offer: Offer;
  readonly supplier: Supplier;
}

export interface AskedBulk {
  readonly entry: FormEntry;
  /** Null until an offer is chosen, and where something is wrong. */
  readonly settled: SettledBulk | null;
}

interface Known {
  readonly market: Market;
  readonly weeksUsual: number;
  /** The offer named was here once. */
  readonly isClosed: boolean;
}

export function bulkAskedIn(query: URLSearchParams, { market, weeksUsual, isClosed }: Known): AskedBulk {
  const code = query.get('offer');
  const typed = query.get('weeks');
  const weeks = weeksIn(typed, weeksUsual);
  const offer = market.offers.find((each) => each.code === code);
  const supplier = market.suppliers.find((each) => each.code === offer?.supplier);
  const isAsked = code !== null && code !== '';
  const problems = {
    ...(isAsked && (offer === undefined || supplier === undefined) ? { offer: notSold(code, isClosed) } : {}),
    ...(weeks.ok ? {} : { weeks: weeks.sentence }),
  };
  const entry = {
    name: 'bulk',
    formId: '',
    values: { offer: offer?.code ?? '', weeks: typed?.trim() || `${weeksUsual}` },
    problems,
  };
  if (!offer || !supplier || !weeks.ok) return { entry, settled: null };
  return { entry, settled: { question: { offer: offer.code, weeks: weeks.weeks }, offer, supplier } };
}

const notSold = (code: string, isClosed: boolean): string =>
  isClosed
    ? `"${code}" is an offer that is closed: it can no longer be ordered. Choose one from the list.`
    : `"${code}" is no offer written down here; choose one from the list.`;
