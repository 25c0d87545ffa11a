/** Where every page lives and where every form posts: the one list the pages and the server share. */

const at = (base: string, code: string, act?: string): string =>
  `${base}/${encodeURIComponent(code)}${act === undefined ? '' : `/${act}`}`;

export type AnimalAct =
  | 'moulted'
  | 'measured'
  | 'matured'
  | 'premoult'
  | 'died'
  | 'edit'
  | 'split'
  | 'heads'
  | 'came-back';
/** What may be done with many animals at once. */
export type HerdAct = 'move' | 'stage' | 'kind' | 'gone' | 'lend' | 'died';
export type BinAct = 'count' | 'look' | 'weigh' | 'size' | 'discard' | 'move' | 'cup-look' | 'edit';
export type SettingsAct =
  | 'feeding'
  | 'deliveries'
  | 'absences'
  | 'absences/remove'
  | 'rooms'
  | 'changes'
  | 'changes/remove'
  | 'units'
  | 'theme';

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
  animals: '/animals',
  newAnimal: '/animals/new',
  /** Many animals at once: chosen in the list, one act, looked over and done. */
  changeAnimals: '/animals/change',
  herdAct: (act: HerdAct): string => `/animals/change/${act}`,
  animal: (code: string): string => at('/animals', code),
  editAnimal: (code: string): string => at('/animals', code, 'edit'),
  animalAct: (code: string, act: AnimalAct): string => at('/animals', code, act),
  kind: (code: string): string => at('/book/kinds', code),
  labels: '/labels',
  larder: '/larder',
  newBin: '/larder/new',
  bin: (code: string): string => at('/larder', code),
  editBin: (code: string): string => at('/larder', code, 'edit'),
  binAct: (code: string, act: BinAct): string => at('/larder', code, act),
  newDelivery: '/deliveries',
  arrived: (code: string): string => at('/deliveries', code, 'arrived'),
  cancelDelivery: (code: string): string => at('/deliveries', code, 'cancelled'),
  more: '/more',
  settings: '/settings',
  settingsAct: (act: SettingsAct): string => `/settings/${act}`,
  import: '/import',
  importCheck: '/import/check',
  importConfirm: '/import/confirm',
  startDemo: '/demo/start',
  removeDemo: '/demo/remove',
  /** The Sunday answer as data, for programs. */
  check: '/api/check.json',
  undo: (id: string): string => at('/undo', id),
  login: '/login',
  logout: '/logout',
  stylesheets: [
    'paper',
    'app',
    'frame',
    'buttons',
    'forms',
    'charts',
    'hues',
    'pages',
    'animal',
    'sunday',
    'round',
    'evening',
    'herd',
    'phone',
    'print',
  ].map((name) => `/assets/${name}.css`),
  scripts: ['/assets/htmx.js', '/assets/app.js'],
} as const;
