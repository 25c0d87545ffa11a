/** Who sells prey to the demo room: two senders of parcels and a shop, all invented, with what they offer in euros. */

interface DemoOffer {
  readonly species: string;
  readonly size: string;
  readonly lengths: readonly [fromMm: number, toMm: number];
  readonly packHeads: number;
  /** A pack costs this; and from so many packs on, less. */
  readonly pack: string;
  readonly from?: Readonly<Record<number, string>>;
}

interface DemoSeller {
  readonly name: string;
  readonly kind: 'parcel' | 'shop';
  /** Weekdays, by the days ahead of the day the demo is made on. */
  readonly sendsDaysAhead: readonly number[];
  readonly transitDays: number;
  readonly cutOffDays: number;
  readonly cutOffTime?: string;
  readonly postageFlat?: string;
  readonly postagePerKg?: string;
  readonly postageFreeFrom?: string;
  readonly minimum?: string;
  readonly coldBelowC?: number;
  readonly heatAboveC?: number;
  readonly holdDays?: number;
  readonly claimHours?: number;
  readonly notes?: string;
  readonly offers: readonly DemoOffer[];
}

const CRICKET = 'acheta-domesticus';
const BANDED = 'gryllodes-sigillatus';
const BLACK = 'gryllus-bimaculatus';
const DUBIA = 'blaptica-dubia';
const MEALWORM = 'tenebrio-molitor';

const BY_MAIL: readonly DemoOffer[] = [
  { species: CRICKET, size: 'pinhead', lengths: [2, 3], packHeads: 500, pack: '5.90', from: { 3: '4.90' } },
  { species: CRICKET, size: 'micro', lengths: [3, 4.5], packHeads: 500, pack: '6.20', from: { 3: '5.30' } },
  { species: CRICKET, size: 'small', lengths: [4.5, 7.5], packHeads: 500, pack: '7.40', from: { 3: '6.50' } },
  {
    species: CRICKET,
    size: 'medium',
    lengths: [10.5, 15],
    packHeads: 250,
    pack: '6.90',
    from: { 2: '6.20', 6: '5.40' },
  },
  { species: CRICKET, size: 'large', lengths: [15, 20], packHeads: 100, pack: '4.60', from: { 4: '3.90' } },
  { species: BANDED, size: 'medium', lengths: [9, 15], packHeads: 250, pack: '8.20', from: { 4: '7.30' } },
  { species: BLACK, size: 'large', lengths: [15, 20], packHeads: 50, pack: '4.40' },
  {
    species: MEALWORM,
    size: 'medium',
    lengths: [17, 22],
    packHeads: 1000,
    pack: '5.80',
    from: { 3: '4.90' },
  },
];

const ROACHES: readonly DemoOffer[] = [
  { species: DUBIA, size: 'extra small', lengths: [3, 6], packHeads: 200, pack: '9.90', from: { 3: '8.40' } },
  { species: DUBIA, size: 'small', lengths: [6, 12], packHeads: 100, pack: '7.90', from: { 3: '6.90' } },
  { species: DUBIA, size: 'medium', lengths: [12, 19], packHeads: 50, pack: '8.50', from: { 4: '7.20' } },
  { species: DUBIA, size: 'large', lengths: [19, 34], packHeads: 25, pack: '8.90' },
  { species: MEALWORM, size: 'small', lengths: [13, 17], packHeads: 500, pack: '3.80' },
];

const IN_TUBS: readonly DemoOffer[] = [
  { species: CRICKET, size: 'small', lengths: [4.5, 7.5], packHeads: 80, pack: '3.29' },
  { species: CRICKET, size: 'medium', lengths: [10.5, 15], packHeads: 45, pack: '3.29' },
  { species: CRICKET, size: 'large', lengths: [15, 20], packHeads: 25, pack: '3.29' },
  { species: MEALWORM, size: 'medium', lengths: [17, 22], packHeads: 120, pack: '2.49' },
];

export const SELLERS: readonly DemoSeller[] = [
  {
    name: 'Futterhof Zirpenau',
    kind: 'parcel',
    sendsDaysAhead: [2, 3, 6],
    transitDays: 2,
    cutOffDays: 1,
    cutOffTime: '12:00',
    postageFlat: '5.90',
    postageFreeFrom: '60',
    minimum: '10',
    coldBelowC: 0,
    heatAboveC: 30,
    holdDays: 7,
    claimHours: 24,
    offers: BY_MAIL,
  },
  {
    name: 'Kerfpost Ulmgrund',
    kind: 'parcel',
    sendsDaysAhead: [3],
    transitDays: 2,
    cutOffDays: 2,
    postageFlat: '4.50',
    postagePerKg: '1.80',
    minimum: '15',
    coldBelowC: 5,
    heatAboveC: 33,
    claimHours: 12,
    notes: 'Packs well: hardly one dead in a year.',
    offers: ROACHES,
  },
  {
    name: 'Laden am Kiesweg',
    kind: 'shop',
    sendsDaysAhead: [0, 1, 2, 3, 4, 5],
    transitDays: 0,
    cutOffDays: 0,
    notes: 'Twenty minutes by bicycle. Tubs are small; ask for fresh ones.',
    offers: IN_TUBS,
  },
];
