/** Props of the pages of suppliers and offers: a sender of parcels held by the cold, another, and a shop. */
import { speciesByCode } from '../../src/facts/prey/index.ts';
import type { Offer } from '../../src/husbandry/orders/index.ts';
import type { OfferFormProps } from '../../views/pages/offer-form.tsx';
import type { MoneyProps } from '../../views/pages/settings-money.tsx';
import type { SupplierProps } from '../../views/pages/supplier.tsx';
import type { SupplierFormProps } from '../../views/pages/supplier-form.tsx';
import type { SuppliersProps } from '../../views/pages/suppliers.tsx';
import { offerWith, supplierWith } from './market.ts';
import { sizes as sizeOptions } from './view-bins.ts';
import { forms, names, shell, TODAY } from './view-fixtures.ts';

const currency = 'EUR';
const unit = 'mm' as const;
const sizesOf = (code: string) => speciesByCode.get(code)!;
const sizes = new Map([
  ['acheta', sizesOf('acheta-domesticus')],
  ['dubia', sizesOf('blaptica-dubia')],
  ['tenebrio', sizesOf('tenebrio-molitor')],
]);

const mail = supplierWith({
  name: 'Grille & Co',
  transitDays: 2,
  dispatchWeekdays: [true, true, true, false, false, false, false],
  cutOffDays: 0,
  cutOffTime: '12:00',
  holidays: [{ from: TODAY + 31, to: TODAY + 42 }],
  postage: { flatCents: 590, perKgCents: 0, freeFromCents: 6000 },
  minimumCents: 1000,
  overCountShare: 0.05,
  coldBelowC: 0,
  heatAboveC: 30,
  holdDays: 7,
});
const farm = supplierWith({ code: 'S2', name: 'Hof Schabenau', transitDays: 3, cutOffDays: 1 });
const shop = supplierWith({
  code: 'S3',
  name: 'The corner shop',
  kind: 'shop',
  dispatchWeekdays: [true, true, true, true, true, true, false],
});

const offers: readonly Offer[] = [
  offerWith({ species: 'acheta', size: '1/8 in', fromMm: 3, toMm: 4.5, packHeads: 500 }),
  offerWith({
    code: 'F2',
    species: 'acheta',
    size: 'medium',
    fromMm: 10.5,
    toMm: 15,
    packHeads: 250,
    prices: [
      { fromPacks: 1, packCents: 690 },
      { fromPacks: 4, packCents: 590 },
      { fromPacks: 10, packCents: 490 },
    ],
    mostPacks: 20,
  }),
  offerWith({ code: 'F3', species: 'dubia', size: 'medium', fromMm: 14, toMm: 18, packHeads: 25 }),
  offerWith({ code: 'F4', species: 'tenebrio', size: '', fromMm: 17, toMm: 22, packHeads: 1000 }),
];
const sent = (orderBy: number) => ({
  orderBy: TODAY + orderBy,
  sent: TODAY + orderBy,
  comes: TODAY + orderBy + 2,
});
const held = {
  next: [15, 16, 17, 22, 23].map(sent),
  held: [{ sent: TODAY + 1, leaves: TODAY + 8 }],
  weeks: 8,
};

export const suppliersProps: SuppliersProps = {
  shell,
  unit,
  names,
  currency,
  sizes,
  suppliers: [
    { supplier: mail, offers, chances: held },
    { supplier: farm, offers: [], chances: { next: [0, 1].map(sent), held: [], weeks: 8 } },
    {
      supplier: shop,
      offers: [offerWith({ code: 'F9', supplier: 'S3', species: 'acheta', packHeads: 40 })],
      chances: { next: [1, 2].map(sent), held: [], weeks: 8 },
    },
  ],
};

export const supplierProps: SupplierProps = {
  shell,
  forms,
  unit,
  names,
  currency,
  sizes,
  supplier: { ...mail, claimHours: 24, notes: 'Ring before ordering more than ten packs.' },
  offers,
  chances: held,
  deliveryWeekdays: [false, true, true, false, true, false, false],
  cautions: [{ species: 'acheta', text: 'A virus kills whole bins of it: keep new stock apart.' }],
};

export const supplierFormProps: SupplierFormProps = {
  shell,
  currency,
  supplier: supplierProps.supplier,
  revision: 12,
  forms: {
    ...forms,
    refused: {
      form: 'supplier',
      values: { cutOffTime: '25:00' },
      problems: { cutOffTime: '"25:00" is not a time of day; write it as 09:00 or 14:30.' },
    },
  },
};

export const offerFormProps: OfferFormProps = {
  shell,
  forms,
  unit,
  currency,
  supplier: mail,
  offer: offers[1]!,
  species: [
    { value: 'acheta', label: 'House crickets' },
    { value: 'dubia', label: 'Dubia roaches' },
  ],
  sizes: sizeOptions,
  size: 'medium',
  revision: 12,
};

export const moneyProps: Omit<MoneyProps, 'forms'> = {
  purse: { currency, hourCents: 1200, weekMostCents: null },
  currencies: [
    { value: 'GBP', label: 'British Pound (GBP)' },
    { value: 'EUR', label: 'Euro (EUR)' },
  ],
  weather: [{ from: TODAY, to: TODAY + 6, tempC: -4 }],
  planWeeks: 12,
};
