/** Inputs drawn for orders: placed, late, not coming, come, looked at again. */
import type * as actions from '../../../src/actions/index.ts';
import { civilDate } from '../../../src/husbandry/calendar.ts';
import type { Present } from './present.ts';

type Given<N extends keyof typeof actions> = Parameters<(typeof actions)[N]>[1];

const CRICKET = 'acheta-domesticus';
const codeIn = ({ dice, purchases }: Present, state: 'placed' | 'arrived'): string =>
  dice.pick(purchases.filter((each) => each.state === state))?.code ?? 'O99';

export const orderActs = {
  placeOrder: ({ dice, bin, room, ahead, today }: Present): Given<'placeOrder'> => ({
    supplier: 'S1',
    sentDay: dice.often(0.7) ? today() : ahead(),
    lines: Array.from({ length: dice.whole(1, 2) }, () => ({
      offer: dice.often(0.95) ? 'F1' : 'F99',
      packs: dice.whole(dice.often(0.9) ? 1 : 0, 3),
      ...(dice.often(0.6) ? { bin: bin() } : { room: room(), name: 'New crickets' }),
    })),
    demo: dice.often(0.3),
  }),
  placeOrders: (here: Present): Given<'placeOrders'> => ({
    orders: Array.from({ length: here.dice.whole(1, 2) }, () => orderActs.placeOrder(here)),
  }),
  orderLate: (here: Present): Given<'orderLate'> => ({ purchase: codeIn(here, 'placed'), day: here.ahead() }),
  cancelOrder: (here: Present): Given<'cancelOrder'> => ({ purchase: codeIn(here, 'placed') }),
  orderCame: (here: Present): Given<'orderCame'> => {
    const { dice, deliveries, purchases, past, today, bin, room } = here;
    const sent = purchases.filter((each) => each.state === 'placed' && civilDate(each.sentDay) <= today());
    const purchase = dice.pick(sent)?.code ?? codeIn(here, 'placed');
    const lines = deliveries.filter((each) => each.purchase === purchase && each.state === 'expected');
    return {
      purchase,
      day: dice.often(0.7) ? today() : past(),
      warmed: dice.often(0.5),
      apart: dice.often(0.3),
      lines: lines.map(({ code }) => ({
        delivery: code,
        came: dice.often(0.5)
          ? { how: 'label' as const }
          : { how: 'whole' as const, alive: dice.whole(0, 120) },
        dead: dice.whole(0, 9),
        ...(dice.often(0.3) ? { bin: bin() } : {}),
      })),
      extra: dice.often(0.8)
        ? []
        : [{ species: CRICKET, alive: 20, fromMm: 4, toMm: 6, room: room(), name: 'Not ordered' }],
    };
  },
  recountDelivery: ({ dice, deliveries, past }: Present): Given<'recountDelivery'> => ({
    delivery:
      dice.pick(deliveries.filter((each) => each.purchase !== null && each.state === 'arrived'))?.code ??
      'D99',
    dead: dice.whole(0, 9),
    ...(dice.often(0.2) ? { day: past() } : {}),
  }),
};
