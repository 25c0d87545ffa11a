/** Props of the pages of orders: a late parcel, one that comes on its day, a box that fell short, and the record. */
import { policy } from '../../src/facts/policy.ts';
import { senderOf } from '../../src/husbandry/orders/index.ts';
import type { NewOrderProps } from '../../views/pages/order-new.tsx';
import type { BoxShown, ComingOrder, OrdersProps } from '../../views/pages/orders-shown.ts';
import { offerWith, supplierWith } from './market.ts';
import { sizes } from './view-bins.ts';
import { forms, names, shell, TODAY } from './view-fixtures.ts';

const currency = 'EUR';
const farm = supplierWith({
  name: 'Hof Schabenau',
  transitDays: 2,
  cutOffDays: 1,
  cutOffTime: '12:00',
  minimumCents: 1000,
});
const shop = supplierWith({ code: 'S2', name: 'The corner shop', kind: 'shop' });
const into = [
  { value: 'B1', label: 'Cricket box 1', group: 'A bin' },
  { value: 'B2', label: 'Roach tub (kept apart)', group: 'A bin' },
  { value: 'new:R1', label: 'Spare room', group: 'A new bin in' },
];

const late: ComingOrder = {
  code: 'O7',
  from: 'Hof Schabenau',
  kind: 'parcel',
  sentDay: TODAY - 3,
  dueDay: TODAY - 1,
  day: TODAY - 1,
  postageCents: 590,
  lines: [
    { code: 'D9', species: 'acheta', heads: 500, fromMm: 3, toMm: 4.5, bin: 'B1', packs: 1, cents: 850 },
    { code: 'D10', species: 'dubia', heads: 50, fromMm: 14, toMm: 18, bin: 'B2', packs: 2, cents: 1180 },
  ],
};
const onItsDay: ComingOrder = {
  ...{ code: 'O8', from: 'Grille & Co', kind: 'parcel', sentDay: TODAY - 2, postageCents: 0 },
  ...{ dueDay: TODAY, day: TODAY },
  lines: [
    { code: 'D12', species: 'acheta', heads: 1000, fromMm: 10.5, toMm: 15, bin: 'B1', packs: 4, cents: 2360 },
  ],
};

const short = {
  key: 'spiderlings',
  name: 'spiderlings',
  urgency: 'fragile',
  window: { minMm: 1.5, idealMm: 2.2, killFirstAboveMm: null, maxMm: 3.1 },
  animals: ['A4'],
  heads: 24,
  from: TODAY + 5,
  chance: 0.83,
  chanceBefore: 0.06,
  instead: [{ bin: 'B3', species: 'hydei', heads: 143 }],
} as const;

const box: BoxShown = {
  order: 'O8',
  from: 'Grille & Co',
  came: TODAY,
  claim: { day: TODAY + 1, time: '14:30', hours: 24 },
  dead: [{ delivery: 'D8', bin: 'B1', dead: 210, cold: true }],
  answer: { revision: 12, days: 28, replicates: 60, short: [short] },
  again: [
    { supplier: farm, next: { orderBy: TODAY + 1, sent: TODAY + 2, comes: TODAY + 4 }, inTime: true },
    { supplier: shop, next: { orderBy: TODAY + 1, sent: TODAY + 1, comes: TODAY + 1 }, inTime: true },
  ],
  act: 'Cut prey for the spiderlings: start with Sling tray 2.',
};

const boxOf = (dead: number, daysLate: number, over = 0) => ({
  supplier: 'S1',
  ordered: 500,
  alive: 500 + over - dead,
  dead,
  due: 100,
  came: 100 + daysLate,
  counted: true,
});

export const ordersProps: OrdersProps = {
  shell: { ...shell, path: '/orders' },
  unit: 'mm',
  forms,
  names,
  currency,
  coming: [late, onItsDay],
  singles: [
    { code: 'D11', species: 'hydei', bin: 'B3', lot: { heads: 40, fromMm: 3, toMm: 3 }, day: TODAY + 2 },
  ],
  firstOut: { name: 'small juveniles', fromMm: 4, toMm: 7, day: TODAY + 3, chance: 0.31 },
  boxes: [box],
  came: [
    {
      code: 'O6',
      from: 'Grille & Co',
      due: TODAY - 1,
      came: TODAY,
      lines: [
        {
          ...{ species: 'acheta', ordered: 500, fromMm: 3, toMm: 4.5 },
          came: {
            species: 'acheta',
            bin: 'B1',
            alive: 290,
            dead: 210,
            fromMm: 6,
            toMm: 9,
            counted: 'sample',
            give: 14,
          },
        },
        {
          ...{ species: 'dubia', ordered: 0, fromMm: 14, toMm: 18 },
          came: {
            species: 'dubia',
            bin: 'B2',
            alive: 10,
            dead: 0,
            fromMm: 14,
            toMm: 18,
            counted: 'whole',
            give: null,
          },
        },
      ],
    },
  ],
  senders: [
    {
      ...{ code: 'S1', name: 'Grille & Co', own: { lossShare: null, overCountShare: 0.05 } },
      record: senderOf([boxOf(4, 0, 30), boxOf(210, 1), boxOf(0, 0, 12)], policy),
      usual: senderOf([], policy),
    },
  ],
  sellers: true,
  sizes,
  into,
  apartDays: 7,
};

export const nothingOrderedProps: OrdersProps = {
  ...ordersProps,
  ...{ coming: [], singles: [], firstOut: null, boxes: [], came: [], senders: [], sellers: false },
};

export const newOrderProps: NewOrderProps = {
  ...{ shell: { ...shell, path: '/orders/new' }, unit: 'mm', forms, names, currency },
  suppliers: [farm, shop],
  chosen: {
    supplier: farm,
    offers: [
      {
        ...offerWith({ species: 'acheta', size: '1/8 in', fromMm: 3, toMm: 4.5, packHeads: 500 }),
        into,
        proposed: 'B1',
      },
      {
        ...offerWith({
          ...{ code: 'F2', species: 'dubia', fromMm: 14, toMm: 18, packHeads: 25, mostPacks: 20 },
          prices: [
            { fromPacks: 1, packCents: 590 },
            { fromPacks: 4, packCents: 490 },
          ],
        }),
        into,
        proposed: 'B1',
      },
    ],
    parcels: [-1, 1, 2].map((day) => ({
      orderBy: TODAY + day,
      sent: TODAY + day + 1,
      comes: TODAY + day + 3,
    })),
  },
};
