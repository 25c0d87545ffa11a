/** What the pages of suppliers show of each: when its next parcels leave and come, and what the weather holds back. */
import type { Chances } from '../../../views/supplier-words.ts';
import { dispatchesOf, heldUntil, isHeldOn, noMarket, type Supplier } from '../../husbandry/orders/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { DAYS_PER_WEEK } from '../../husbandry/units.ts';

const WEEKS_SHOWN = 8;

/** The market as it stands. */
export const marketIn = ({ market = noMarket }: Snapshot) => market;

/** The chances to order from today on. */
export function chancesOf(supplier: Supplier, snapshot: Snapshot): Chances {
  const { today } = snapshot;
  const { weather } = marketIn(snapshot);
  const range = { from: today, to: today + WEEKS_SHOWN * DAYS_PER_WEEK };
  const next = dispatchesOf(supplier, range, weather);
  const before = next[0]?.sent ?? range.to;
  const held = dispatchesOf(supplier, { from: today, to: before })
    .filter(({ sent }) => isHeldOn(supplier, sent, weather))
    .map(({ sent }) => ({ sent, leaves: heldUntil(supplier, sent, weather) }));
  return { next, held, weeks: WEEKS_SHOWN };
}
