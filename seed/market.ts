/** Writes down who sells prey to the demo room, and what they offer. */
import { addOffer, addSupplier, type Context } from '../src/actions/index.ts';
import type { DayNumber } from '../src/husbandry/calendar.ts';
import { ok, type Result } from '../src/husbandry/result.ts';
import { SELLERS } from './sellers.ts';
import { weekdaysOf } from './weekdays.ts';

/** As of the context's day; weekdays of sending are told from the day the demo is made on. */
export async function addSellers(then: Context, today: DayNumber): Promise<Result<null>> {
  for (const { offers, sendsDaysAhead, ...seller } of SELLERS) {
    const dispatchWeekdays = weekdaysOf(today, sendsDaysAhead);
    const added = await addSupplier(then, { ...seller, dispatchWeekdays, demo: true });
    if (!added.ok) return added;
    for (const offer of offers) {
      const offered = await offerOf(then, added.value.reply.supplier, offer);
      if (!offered.ok) return offered;
    }
  }
  return ok(null);
}

type DemoOffer = (typeof SELLERS)[number]['offers'][number];

const offerOf = (then: Context, supplier: string, { lengths, pack, from = {}, ...goods }: DemoOffer) =>
  addOffer(then, {
    ...goods,
    supplier,
    fromMm: lengths[0],
    toMm: lengths[1],
    prices: [
      { fromPacks: 1, pack },
      ...Object.entries(from).map(([fromPacks, cheaper]) => ({ fromPacks, pack: cheaper })),
    ],
    demo: true,
  });
