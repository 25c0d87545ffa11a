/** Where every page lives and where every form posts: the one list the pages and the server share. */

const at = (base: string, code: string, act?: string): string =>
  `${base}/${encodeURIComponent(code)}${act === undefined ? '' : `/${act}`}`;

export type BinAct =
  | 'count'
  | 'look'
  | 'weigh'
  | 'size'
  | 'cup-look'
  | 'dead'
  | 'adults'
  | 'sexed'
  | 'die-off'
  | 'harvest'
  | 'cull'
  | 'discard'
  | 'move'
  | 'retire'
  | 'split'
  | 'merge'
  | 'clean-out'
  | 'place'
  | 'cold'
  | 'quarantine'
  | 'rest'
  | 'close'
  | 'edit';
/** What may be done with the numbers of a prey species or of the method. */
export type NumberAct = 'numbers' | 'reset';
/** What may be done with a kind of the Book. */
export type KindAct = 'rule' | 'rule-effect' | 'edit' | 'edit-effect' | 'rename' | 'reset' | 'remove';
export type SacAct = 'pulled' | 'hatched' | 'settled' | 'ended' | 'edit' | 'cancel';
export type AnimalAct =
  | 'moulted'
  | 'measured'
  | 'matured'
  | 'premoult'
  | 'died'
  | 'edit'
  | 'split'
  | 'heads'
  | 'came-back'
  | 'left';
/** What may be done with many animals at once. */
export type HerdAct = 'move' | 'stage' | 'kind' | 'gone' | 'lend' | 'died';
export type SettingsAct =
  | 'feeding'
  | 'deliveries'
  | 'absences'
  | 'absences/remove'
  | 'rooms'
  | 'rooms/remove'
  | 'rooms/temperatures'
  | 'changes'
  | 'changes/edit'
  | 'changes/remove'
  | 'units'
  | 'purse'
  | 'plan'
  | 'weather'
  | 'weather/remove'
  | 'theme';

/** What may be done with a supplier. */
export type SupplierAct = 'holidays' | 'holidays/remove' | 'close';

/** An absence asked about: dates as YYYY-MM-DD, and whether those who only miss a meal are fed too. */
interface DaysAway {
  readonly from: string;
  readonly to: string;
  readonly also?: boolean;
}
const daysIn = ({ from, to, also = false }: DaysAway): string =>
  `from=${encodeURIComponent(from)}&to=${encodeURIComponent(to)}${also ? '&also=on' : ''}`;

/** What becomes of an order. */
export type OrderAct = 'came' | 'late' | 'cancelled';

export const paths = {
  sunday: '/',
  /** The picture of a coming week, alone. */
  weeks: '/weeks',
  /** The act that helps most, alone. */
  act: '/act',
  /** A room of one's own in three steps. */
  start: '/start',
  startAnimal: '/start/animal',
  startRoom: '/start/room',
  startFeeding: '/start/feeding',
  startBin: '/start/bin',
  tonight: '/tonight',
  /** The round shown again with other prey; nothing is written. */
  tonightPreview: '/tonight/preview',
  tonightOf: (day: string): string => `/tonight?day=${encodeURIComponent(day)}`,
  morning: '/morning',
  sheet: '/tonight/sheet',
  sheetOf: (day: string): string => `/tonight/sheet?day=${day}`,
  blankSheet: (days: number): string => `/tonight/sheet?blank=1&days=${days}`,
  keyIn: '/tonight/key-in',
  keyInOf: (day: string): string => `/tonight/key-in?day=${day}`,
  walk: '/walk',
  /** The order as moved so far, not kept yet. */
  walkMoved: '/walk/moved',
  walkShelf: '/walk/shelf',
  walkShelfMoved: '/walk/shelf/moved',
  walkShelfOf: (room: string, shelf: string): string =>
    `/walk/shelf?${new URLSearchParams({ room, shelf }).toString()}`,
  animals: '/animals',
  /** Those late for a meal, the longest first. */
  lateAnimals: '/animals?show=late&order=meal',
  newAnimal: '/animals/new',
  /** Many animals at once: chosen in the list, one act, looked over and done. */
  changeAnimals: '/animals/change',
  herdAct: (act: HerdAct): string => `/animals/change/${act}`,
  animal: (code: string): string => at('/animals', code),
  editAnimal: (code: string): string => at('/animals', code, 'edit'),
  animalAct: (code: string, act: AnimalAct): string => at('/animals', code, act),
  larder: '/larder',
  /** A colony to be started; with `begin` in the address it is answered. */
  colonyStart: '/larder/colony-start',
  colonyStartOf: (species: string): string => `/larder/colony-start?species=${encodeURIComponent(species)}`,
  /** The answer alone. */
  colonyAnswer: '/larder/colony-start/answer',
  newBin: '/larder/new',
  newCup: (species: string): string => `/larder/new?cup=${encodeURIComponent(species)}`,
  bin: (code: string): string => at('/larder', code),
  /** The bin with its coming weeks worked out. */
  binWhole: (code: string): string => `${at('/larder', code)}?wait=1`,
  /** The bin with the form of an act open and filled in. */
  beginBinAct: (code: string, act: BinAct, values: Readonly<Record<string, string>>): string =>
    `${at('/larder', code)}?${new URLSearchParams({ ...values, begin: act })}#${act}`,
  editBin: (code: string): string => at('/larder', code, 'edit'),
  binAct: (code: string, act: BinAct): string => at('/larder', code, act),
  /** What to order, harvest, cull and start; weeks and wishes are in its address. */
  plan: '/plan',
  /** How far it is, or the plan itself, for the page that is there already. */
  planProgress: '/plan/progress',
  planCancel: '/plan/cancel',
  planApply: '/plan/apply',
  /** Plans beside the plan; what is supposed is in the address. */
  whatIf: '/plan/what-if',
  whatIfAnswers: '/plan/what-if/answers',
  whatIfCancel: '/plan/what-if/cancel',
  /** The order form with a parcel of the plan in it: packs by offer. */
  newOrderOf: (parcel: { supplier: string; sent: string; packs: ReadonlyMap<string, number> }): string => {
    const query = new URLSearchParams({ supplier: parcel.supplier, sent: parcel.sent });
    for (const [offer, packs] of parcel.packs) query.set(`offer.${offer}`, `${packs}`);
    return `/orders/new?${query}`;
  },
  /** What a head that is eaten costs against the packs ordered; offer and weeks are in its address. */
  bulk: '/bulk',
  bulkOf: ({ offer, weeks }: { offer: string; weeks?: number }): string => {
    const query = new URLSearchParams({ offer, ...(weeks === undefined ? {} : { weeks: `${weeks}` }) });
    return `/bulk?${query}`;
  },
  /** The answer alone. */
  bulkAnswer: '/bulk/answer',
  newDelivery: '/deliveries',
  arrived: (code: string): string => at('/deliveries', code, 'arrived'),
  /** The dead of a box looked at again. */
  lookAgain: (code: string): string => at('/deliveries', code, 'again'),
  orders: '/orders',
  /** With what a box that fell short means worked out. */
  ordersWhole: (order: string) => `/orders?wait=1#box-${order}`,
  /** That part alone. */
  boxAnswer: (order: string): string => at('/orders', order, 'box'),
  newOrder: '/orders/new',
  /** What it comes to, alone. */
  newOrderTotal: '/orders/new/total',
  newOrderFrom: (supplier: string): string => `/orders/new?supplier=${encodeURIComponent(supplier)}`,
  orderAct: (code: string, act: OrderAct): string => at('/orders', code, act),
  cancelDelivery: (code: string): string => at('/deliveries', code, 'cancelled'),
  suppliers: '/suppliers',
  newSupplier: '/suppliers/new',
  supplier: (code: string): string => at('/suppliers', code),
  editSupplier: (code: string): string => at('/suppliers', code, 'edit'),
  supplierAct: (code: string, act: SupplierAct): string => at('/suppliers', code, act),
  /** The form of an offer of this supplier. */
  newOffer: (supplier: string): string => at('/suppliers', supplier, 'offers'),
  editOffer: (code: string): string => at('/offers', code, 'edit'),
  closeOffer: (code: string): string => at('/offers', code, 'close'),
  more: '/more',
  book: '/book',
  prey: (code: string): string => at('/book/prey', code),
  /** The prey with the form of a group of its numbers open. */
  changePrey: (code: string, group: string): string =>
    `${at('/book/prey', code)}?change=${encodeURIComponent(group)}#change`,
  preyAct: (code: string, act: NumberAct): string => at('/book/prey', code, act),
  /** How everything is worked out; a topic has its own place. */
  method: '/book/method',
  methodOn: (topic: string): string => `/book/method#${topic}`,
  changeMethod: (group: string): string => `/book/method?change=${encodeURIComponent(group)}#change`,
  methodAct: (act: NumberAct): string => `/book/method/${act}`,
  newKind: '/book/kinds/new',
  /** The form that makes a kind, beginning with the numbers of this one. */
  newKindFrom: (code: string): string => `/book/kinds/new?from=${encodeURIComponent(code)}`,
  kind: (code: string): string => at('/book/kinds', code),
  /** The kind with one of its forms open: a stage's, or 'kind'. */
  changeKind: (code: string, what: string): string =>
    `${at('/book/kinds', code)}?change=${encodeURIComponent(what)}#change`,
  kindAct: (code: string, act: KindAct): string => at('/book/kinds', code, act),
  away: '/away',
  awayOn: (days: DaysAway): string => `/away?${daysIn(days)}`,
  awaySheetPage: '/away/sheet',
  awaySheet: (days: DaysAway): string => `/away/sheet?${daysIn(days)}`,
  sacs: '/sacs',
  sacAct: (code: string, act: SacAct): string => at('/sacs', code, act),
  settings: '/settings',
  settingsAct: (act: SettingsAct): string => `/settings/${act}`,
  import: '/import',
  importCheck: '/import/check',
  importConfirm: '/import/confirm',
  startDemo: '/demo/start',
  removeDemo: '/demo/remove',
  help: '/help',
  /** The Sunday answer as data, for programs. */
  check: '/api/check.json',
  undo: (id: string): string => at('/undo', id),
  history: '/history',
  gone: '/gone',
  bringBack: '/gone/back',
  labels: '/labels',
  login: '/login',
  logout: '/logout',
  stylesheets: ['/assets/style.css'],
  scripts: ['/assets/htmx.js', '/assets/sheets.js'],
  /** Scripts that import others. */
  modules: ['/assets/app.js'],
} as const;
