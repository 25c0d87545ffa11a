/** The animals of the demo room as they were when its history begins: invented, each measured as its kind is. */
import type { Sex } from '../src/husbandry/animals/index.ts';
import type { ShelfName } from './places.ts';

/** Some animals of one kind on one shelf; sizes in mm as the kind is measured. */
export interface Lodgers {
  readonly kind: string;
  readonly shelf: ShelfName;
  readonly sex?: Sex;
  /** Heads in each record, when they are kept as a group of n alike. */
  readonly count?: number;
  readonly matured?: boolean;
  /** Name and size. */
  readonly animals: readonly (readonly [name: string, gaugeMm: number])[];
}

/** Numbered animals of one name. */
const numbered = (name: string, ...sizes: readonly number[]) =>
  sizes.map((gaugeMm, at) => [`${name} ${at + 1}`, gaugeMm] as const);

const RACK_A: readonly Lodgers[] = [
  {
    kind: 'brachypelma-hamorii',
    shelf: 'Rack A, upper shelf',
    sex: 'female',
    animals: [
      ['Ember', 142],
      ['Paprika', 136],
      ['Brick', 131],
    ],
  },
  { kind: 'brachypelma-hamorii', shelf: 'Rack A, upper shelf', animals: numbered('Cinder', 78, 84, 92) },
  {
    kind: 'grammostola-pulchra',
    shelf: 'Rack A, upper shelf',
    sex: 'female',
    animals: [
      ['Coal', 165],
      ['Velvet', 158],
      ['Onyx', 154],
    ],
  },
  { kind: 'grammostola-pulchra', shelf: 'Rack A, upper shelf', animals: numbered('Soot', 88, 96, 104) },
  {
    kind: 'grammostola-pulchripes',
    shelf: 'Rack A, upper shelf',
    sex: 'female',
    animals: [
      ['Saffron', 196],
      ['Barley', 188],
    ],
  },
  { kind: 'grammostola-pulchripes', shelf: 'Rack A, upper shelf', animals: numbered('Maize', 108, 122) },
  {
    kind: 'tliltocatl-albopilosus',
    shelf: 'Rack A, lower shelf',
    sex: 'female',
    animals: [
      ['Woolly', 138],
      ['Thistle', 133],
      ['Burdock', 129],
    ],
  },
  {
    kind: 'tliltocatl-albopilosus',
    shelf: 'Rack A, lower shelf',
    sex: 'male',
    matured: true,
    animals: [['Rambler', 126]],
  },
  {
    kind: 'tliltocatl-albopilosus',
    shelf: 'Rack A, lower shelf',
    animals: numbered('Curly', 38, 41, 44, 47, 52, 56),
  },
  {
    kind: 'lasiodora-parahybana',
    shelf: 'Rack A, lower shelf',
    sex: 'female',
    animals: [
      ['Boulder', 214],
      ['Crag', 206],
    ],
  },
  {
    kind: 'lasiodora-parahybana',
    shelf: 'Rack A, lower shelf',
    animals: numbered('Pebble', 62, 68, 74, 81),
  },
  {
    kind: 'acanthoscurria-geniculata',
    shelf: 'Rack A, lower shelf',
    sex: 'female',
    animals: [
      ['Zebra', 184],
      ['Magpie', 178],
    ],
  },
  {
    kind: 'acanthoscurria-geniculata',
    shelf: 'Rack A, lower shelf',
    animals: numbered('Stripe', 58, 66, 92, 101),
  },
];

const RACK_B: readonly Lodgers[] = [
  {
    kind: 'chromatopelma-cyaneopubescens',
    shelf: 'Rack B, upper shelf',
    sex: 'female',
    animals: [
      ['Kingfisher', 134],
      ['Bottle', 129],
      ['Heron', 127],
    ],
  },
  {
    kind: 'chromatopelma-cyaneopubescens',
    shelf: 'Rack B, upper shelf',
    animals: numbered('Marble', 36, 42, 49, 73),
  },
  {
    kind: 'caribena-versicolor',
    shelf: 'Rack B, upper shelf',
    sex: 'female',
    animals: [
      ['Orchard', 128],
      ['Plum', 124],
    ],
  },
  {
    kind: 'caribena-versicolor',
    shelf: 'Rack B, upper shelf',
    animals: numbered('Damson', 34, 39, 45, 71),
  },
  {
    kind: 'psalmopoeus-irminia',
    shelf: 'Rack B, upper shelf',
    sex: 'female',
    animals: [
      ['Lantern', 132],
      ['Tinder', 126],
    ],
  },
  {
    kind: 'psalmopoeus-irminia',
    shelf: 'Rack B, upper shelf',
    animals: numbered('Spark', 41, 48, 69),
  },
  {
    kind: 'poecilotheria-regalis',
    shelf: 'Rack B, lower shelf',
    sex: 'female',
    animals: [
      ['Lichen', 168],
      ['Bark', 161],
      ['Moth', 158],
    ],
  },
  {
    kind: 'poecilotheria-regalis',
    shelf: 'Rack B, lower shelf',
    animals: numbered('Twig', 54, 63, 92, 97),
  },
  {
    kind: 'pterinochilus-murinus',
    shelf: 'Rack B, lower shelf',
    sex: 'female',
    animals: [
      ['Rust', 128],
      ['Kiln', 124],
    ],
  },
  {
    kind: 'pterinochilus-murinus',
    shelf: 'Rack B, lower shelf',
    animals: numbered('Clay', 33, 46, 72),
  },
  {
    kind: 'monocentropus-balfouri',
    shelf: 'Rack B, lower shelf',
    sex: 'female',
    animals: [
      ['Harbour', 136],
      ['Lagoon', 131],
    ],
  },
  {
    kind: 'monocentropus-balfouri',
    shelf: 'Rack B, lower shelf',
    count: 6,
    animals: [['Island group', 46]],
  },
];

const SPIDERLINGS: readonly Lodgers[] = [
  {
    kind: 'brachypelma-hamorii',
    shelf: 'Spiderling cabinet',
    animals: numbered('Knee', 13, 14, 15, 16, 17, 19, 21, 23),
  },
  {
    kind: 'grammostola-pulchra',
    shelf: 'Spiderling cabinet',
    animals: numbered('Ash', 14, 15, 17, 18, 20, 24),
  },
  {
    kind: 'grammostola-pulchripes',
    shelf: 'Spiderling cabinet',
    animals: numbered('Golden', 12, 13, 15, 17, 19, 22, 26, 31),
  },
  {
    kind: 'davus-pentaloris',
    shelf: 'Spiderling cabinet',
    animals: numbered('Tiger', 6.5, 7, 7, 7.5, 8, 9),
  },
  {
    kind: 'tliltocatl-albopilosus',
    shelf: 'Spiderling cabinet',
    count: 40,
    animals: [['Sac of forty', 6.5]],
  },
  {
    kind: 'caribena-versicolor',
    shelf: 'Spiderling cabinet',
    animals: numbered('Sloe', 16, 18, 19, 22),
  },
];

const BACK_ROOM: readonly Lodgers[] = [
  {
    kind: 'phidippus-regius',
    shelf: 'Window rack',
    sex: 'female',
    animals: [
      ['Button', 15],
      ['Burr', 14],
      ['Sequin', 14.5],
    ],
  },
  {
    kind: 'phidippus-regius',
    shelf: 'Window rack',
    count: 50,
    animals: [['Jumper tray', 3.5]],
  },
  { kind: 'phidippus-regius', shelf: 'Window rack', sex: 'male', animals: numbered('Toggle', 8, 9) },
  {
    kind: 'heteropoda-venatoria',
    shelf: 'Window rack',
    animals: [
      ['Dash', 24],
      ['Shutter', 22],
    ],
  },
  { kind: 'heteropoda-venatoria', shelf: 'Window rack', animals: numbered('Skitter', 11, 12, 14) },
  {
    kind: 'hierodula-membranacea',
    shelf: 'Window rack',
    sex: 'female',
    animals: [
      ['Fern', 84],
      ['Reed', 80],
    ],
  },
  { kind: 'hierodula-membranacea', shelf: 'Window rack', animals: numbered('Sedge', 55, 58) },
  {
    kind: 'hierodula-membranacea',
    shelf: 'Window rack',
    count: 30,
    animals: [['Nymph tub', 18]],
  },
  {
    kind: 'phyllocrania-paradoxa',
    shelf: 'Window rack',
    animals: numbered('Leaf', 20, 22, 31, 44),
  },
  {
    kind: 'pandinus-imperator',
    shelf: 'Floor rack',
    animals: [
      ['Anvil', 156],
      ['Slate', 148],
      ['Flint', 96],
      ['Cobble', 88],
    ],
  },
  {
    kind: 'scolopendra-subspinipes',
    shelf: 'Floor rack',
    animals: [
      ['Chain', 164],
      ['Link', 92],
    ],
  },
  {
    kind: 'damon-diadema',
    shelf: 'Floor rack',
    animals: [
      ['Compass', 34],
      ['Sundial', 31],
      ['Pointer', 18],
      ['Needle', 16],
    ],
  },
];

export const LODGERS: readonly Lodgers[] = [...RACK_A, ...RACK_B, ...SPIDERLINGS, ...BACK_ROOM];
