/** What the keeper does, in the groups by which the history is looked through. */

/** Acts that may write of many at once: undone as a whole, not from one record. */
export const OF_MANY: readonly string[] = [
  'record-evening',
  'record-morning',
  'import-rows',
  'edit-animals',
  'lend',
  'arrange-shelf',
  'arrange-shelves',
  'empty-demo',
  'place-order',
  'order-came',
];

interface VerbGroup {
  readonly value: string;
  readonly label: string;
  readonly verbs: readonly string[];
}

const VERB_GROUPS: readonly VerbGroup[] = [
  { value: 'rounds', label: 'Rounds', verbs: ['record-evening', 'record-morning'] },
  {
    value: 'moults',
    label: 'Moults and sizes',
    verbs: ['record-moult', 'record-premoult', 'record-measure', 'record-matured'],
  },
  {
    value: 'animals',
    label: 'Animals',
    verbs: [
      'add-animal',
      'edit-animal',
      'edit-animals',
      'split-group',
      'arrange-shelf',
      'arrange-shelves',
      'empty-demo',
    ],
  },
  {
    value: 'leaving',
    label: 'Deaths, leaving and coming back',
    verbs: ['record-died', 'take-away', 'bring-back', 'lend', 'came-back'],
  },
  {
    value: 'bins',
    label: 'Bins',
    verbs: [
      'add-bin',
      'edit-bin',
      'close-bin',
      'count-bin',
      'look-bin',
      'weigh-bin',
      'see-size',
      'see-cup',
      'start-cup',
      'discard',
      'move',
      'take-in',
      'harvest',
      'cull',
      'retire',
      'split-bin',
      'merge-bins',
      'clean-out',
      'quarantine',
      'rest-bin',
      'place-bin',
      'cold-store',
      'found-dead',
      'see-adults',
      'sex-adults',
      'die-off',
    ],
  },
  {
    value: 'deliveries',
    label: 'Orders and deliveries',
    verbs: [
      'place-order',
      'place-orders',
      'order-late',
      'order-came',
      'recount-delivery',
      'cancel-order',
      'expect-delivery',
      'delivery-came',
      'cancel-delivery',
    ],
  },
  {
    value: 'suppliers',
    label: 'Suppliers and offers',
    verbs: ['add-supplier', 'edit-supplier', 'close-supplier', 'add-offer', 'edit-offer', 'close-offer'],
  },
  {
    value: 'plans',
    label: 'Sacs and other plans',
    verbs: [
      'plan-change',
      'edit-change',
      'cancel-change',
      'note-sac',
      'pull-sac',
      'hatch-sac',
      'settle-sac',
      'end-sac',
    ],
  },
  {
    value: 'book',
    label: 'The Book',
    verbs: [
      'edit-rule',
      'edit-kind',
      'reset-rule',
      'rename-kind',
      'add-kind',
      'remove-kind',
      'edit-numbers',
      'reset-numbers',
    ],
  },
  { value: 'lists', label: 'Lists brought in', verbs: ['import-rows'] },
  {
    value: 'settings',
    label: 'Settings and rooms',
    verbs: ['edit-settings', 'first-room', 'add-room', 'edit-room', 'remove-room', 'read-temperatures'],
  },
];

const OTHER = 'other';
export const GROUP_OPTIONS = [...VERB_GROUPS, { value: OTHER, label: 'Anything else' }].map(
  ({ value, label }) => ({ value, label }),
);

/** Which verbs a chosen group asks for; none for no group. */
export function verbsOf(value: string) {
  if (value === OTHER) return { otherThan: VERB_GROUPS.flatMap(({ verbs }) => verbs) };
  const verbs = VERB_GROUPS.find((group) => group.value === value)?.verbs;
  return verbs === undefined ? {} : { verbs };
}
