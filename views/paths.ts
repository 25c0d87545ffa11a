/** Where every page lives and where every form posts: the one list the pages and the server share. */

const at = (base: string, code: string, act?: string): string =>
  `${base}/${encodeURIComponent(code)}${act === undefined ? '' : `/${act}`}`;

export type AnimalAct = 'moulted' | 'measured' | 'matured' | 'premoult' | 'died' | 'left' | 'edit';
export type BinAct = 'count' | 'look' | 'weigh' | 'size' | 'discard' | 'move' | 'cup-look' | 'close' | 'edit';
export type SettingsAct =
  | 'feeding'
  | 'deliveries'
  | 'absences'
  | 'absences/remove'
  | 'rooms'
  | 'rooms/remove'
  | 'changes'
  | 'changes/remove'
  | 'units'
  | 'theme';

export const paths = {
  sunday: '/',
  tonight: '/tonight',
  morning: '/morning',
  animals: '/animals',
  newAnimal: '/animals/new',
  animal: (code: string): string => at('/animals', code),
  editAnimal: (code: string): string => at('/animals', code, 'edit'),
  animalAct: (code: string, act: AnimalAct): string => at('/animals', code, act),
  larder: '/larder',
  newBin: '/larder/new',
  bin: (code: string): string => at('/larder', code),
  editBin: (code: string): string => at('/larder', code, 'edit'),
  binAct: (code: string, act: BinAct): string => at('/larder', code, act),
  newDelivery: '/deliveries',
  arrived: (code: string): string => at('/deliveries', code, 'arrived'),
  cancelDelivery: (code: string): string => at('/deliveries', code, 'cancelled'),
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
  history: '/history',
  gone: '/gone',
  bringBack: '/gone/back',
  labels: '/labels',
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
    'sunday',
    'round',
    'phone',
    'print',
    'history',
  ].map((name) => `/assets/${name}.css`),
  scripts: ['/assets/htmx.js', '/assets/app.js'],
} as const;
