/** The order that is on its way to the demo room: pinheads, and the next size for when they are eaten. */
import { type Context, placeOrder } from '../src/actions/index.ts';
import { civilDate, type DayNumber } from '../src/husbandry/calendar.ts';
import type { Result } from '../src/husbandry/result.ts';
import { rowsOf } from '../src/store/index.ts';
import { type Codes, codeOf } from './codes.ts';
import type { BinName } from './larder.ts';
import { SELLERS } from './sellers.ts';

const SENT_IN_DAYS = 2;
/** A pack of each, by the size its seller calls it. */
const LINES: readonly (readonly [size: string, bin: BinName])[] = [
  ['pinhead', 'Pinhead tub'],
  ['micro', 'Small cricket box'],
];

export async function orderAhead(then: Context, codes: Codes, today: DayNumber): Promise<Result<unknown>> {
  const [mail] = await then.store.ask(
    rowsOf('supplier', { where: 'demo = 1 and name = ?', args: [SELLERS[0]?.name ?? ''] }),
  );
  const supplier = mail?.code ?? '';
  const offers = await then.store.ask(rowsOf('offer', { where: 'supplier = ?', args: [supplier] }));
  return placeOrder(then, {
    supplier,
    sentDay: civilDate(today + SENT_IN_DAYS),
    lines: LINES.map(([size, bin]) => ({
      offer: offers.find((each) => each.size === size)?.code ?? '',
      packs: 1,
      bin: codeOf(codes.bins, bin),
    })),
    demo: true,
  });
}
