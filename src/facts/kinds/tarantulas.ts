/** Kept tarantulas: spans of grown females and of spiderlings at first feeding, by world, habit and growth class. */
import type { CautionCode, Kind } from '../../husbandry/animals/index.ts';
import { memory, published } from '../sourced.ts';
import { type GroupTraits, kindOf, type SizeSource } from './kind-draft.ts';
import type { Range } from './rule-draft.ts';
import { type Growth, type Habit, tarantulaStages } from './tarantula-rules.ts';

type World = 'New World' | 'Old World';

/** Name, common name, span of adult females, span at first feeding (mm), where the sizes come from, other names. */
type Row = readonly [string, string, Range, Range, SizeSource, string?];

interface Table {
  readonly world: World;
  readonly habit: Habit;
  readonly growth: Growth;
  readonly rows: readonly Row[];
}

/** Genera without urticating hairs, though of the New World. */
const HAIRLESS = ['Psalmopoeus', 'Tapinauchenius'];
/** Genera under CITES, appendix II. */
const REGULATED = ['Brachypelma', 'Tliltocatl', 'Poecilotheria'];

const tables: readonly Table[] = [
  {
    world: 'New World',
    habit: 'terrestrial',
    growth: 'slow',
    rows: [
      [
        'Brachypelma hamorii',
        'Mexican red-knee',
        [127, 152],
        [5, 7],
        'care',
        'b. smithi, brachypelma smithi, mexican redknee, red-knee',
      ],
      [
        'Brachypelma boehmei',
        'Mexican fire-leg',
        [125, 150],
        [5, 7],
        'memory',
        'mexican fireleg, mexican rustleg',
      ],
      ['Grammostola pulchra', 'Brazilian black', [150, 180], [5, 7], 'memory'],
      [
        'Grammostola pulchripes',
        'Chaco golden-knee',
        [178, 220],
        [5, 8],
        'general',
        'chaco golden knee, chaco',
      ],
      [
        'Grammostola rosea',
        'Chilean rose',
        [115, 150],
        [5, 7],
        'care',
        'g. porteri, grammostola porteri, chilean rose hair, rose hair, rosie',
      ],
      ['Grammostola vachoni', 'Grammostola vachoni', [100, 130], [5, 7], 'own'],
      ['Homoeomma chilense', 'Chilean dwarf flame', [70, 90], [4, 6], 'memory', 'chilean flame, dwarf flame'],
      ['Eupalaestrus campestratus', 'pink zebra beauty', [120, 150], [4, 6], 'memory'],
    ],
  },
  {
    world: 'New World',
    habit: 'terrestrial',
    growth: 'medium',
    rows: [
      [
        'Tliltocatl albopilosus',
        'curly hair tarantula',
        [125, 150],
        [5, 7],
        'care',
        'curly hair, curlyhair, brachypelma albopilosum, b. albopilosum',
      ],
      [
        'Tliltocatl vagans',
        'Mexican red-rump',
        [125, 150],
        [5, 7],
        'memory',
        'mexican redrump, brachypelma vagans, b. vagans',
      ],
      [
        'Megaphobema robustum',
        'Colombian giant redleg',
        [150, 180],
        [12, 18],
        'memory',
        'colombian giant red leg',
      ],
      [
        'Chromatopelma cyaneopubescens',
        'green bottle blue',
        [125, 150],
        [8, 12],
        'memory',
        'gbb, greenbottle blue',
      ],
    ],
  },
  {
    world: 'New World',
    habit: 'terrestrial',
    growth: 'fast',
    rows: [
      [
        'Lasiodora parahybana',
        'salmon pink birdeater',
        [200, 250],
        [5, 6],
        'breeder',
        'lp, salmon pink, salmon pink bird eater',
      ],
      [
        'Acanthoscurria geniculata',
        'Brazilian whiteknee',
        [175, 205],
        [6, 8],
        'memory',
        'brazilian white knee, whiteknee',
      ],
      ['Nhandu chromatus', 'Brazilian red and white', [150, 180], [5, 7], 'memory'],
      [
        'Theraphosa blondi',
        'goliath birdeater',
        [250, 300],
        [23, 27],
        'general',
        'goliath, goliath bird eater',
      ],
      ['Theraphosa stirmi', 'burgundy goliath birdeater', [230, 280], [20, 27], 'memory', 'burgundy goliath'],
      ['Pamphobeteus antinous', 'Bolivian steely-blue leg', [180, 210], [18, 25], 'memory'],
      [
        'Xenesthis immanis',
        'Colombian lesserblack',
        [180, 220],
        [18, 25],
        'memory',
        'colombian lesser black',
      ],
      ['Phormictopus cancerides', 'Hispaniolan giant', [160, 200], [7, 10], 'memory', 'haitian brown'],
      ['Davus pentaloris', 'Guatemalan tiger rump', [90, 110], [3, 5], 'memory', 'guatemalan tigerrump'],
      [
        'Hapalopus sp. Colombia',
        'pumpkin patch',
        [90, 120],
        [3, 5],
        'memory',
        'hapalopus sp. colombia large, pumpkin patch tarantula',
      ],
      ['Cyriocosmus elegans', 'Trinidad dwarf tiger', [38, 50], [3, 3.5], 'care', 'trinidad dwarf'],
    ],
  },
  {
    world: 'Old World',
    habit: 'terrestrial',
    growth: 'fast',
    rows: [
      [
        'Pterinochilus murinus',
        'orange baboon',
        [115, 150],
        [6, 10],
        'memory',
        'obt, orange baboon tarantula',
      ],
    ],
  },
  {
    world: 'New World',
    habit: 'fossorial',
    growth: 'slow',
    rows: [
      ['Aphonopelma chalcodes', 'Arizona blonde', [110, 140], [4, 6], 'memory'],
      ['Aphonopelma hentzi', 'Texas brown', [100, 130], [4, 6], 'general'],
      ['Aphonopelma seemanni', 'Costa Rican zebra', [110, 140], [4, 6], 'memory', 'costa rican zebra leg'],
    ],
  },
  {
    world: 'Old World',
    habit: 'fossorial',
    growth: 'slow',
    rows: [
      ['Pelinobius muticus', 'king baboon', [160, 200], [5, 7], 'care'],
      [
        'Selenocosmia crassipes',
        'Queensland whistling tarantula',
        [150, 220],
        [8, 12],
        'memory',
        'whistling tarantula',
      ],
    ],
  },
  {
    world: 'New World',
    habit: 'fossorial',
    growth: 'fast',
    rows: [['Ephebopus murinus', 'skeleton tarantula', [130, 150], [12, 18], 'memory', 'skeleton leg']],
  },
  {
    world: 'Old World',
    habit: 'fossorial',
    growth: 'fast',
    rows: [
      [
        'Ceratogyrus darlingi',
        'rear-horned baboon',
        [105, 130],
        [6, 9],
        'memory',
        'african rear-horned baboon',
      ],
      [
        'Harpactira pulchripes',
        'golden blue-leg baboon',
        [110, 135],
        [7, 10],
        'memory',
        'golden blue leg baboon',
      ],
      ['Hysterocrates gigas', 'Cameroon red baboon', [150, 200], [8, 12], 'memory', 'cameroon red'],
      [
        'Cyriopagopus lividus',
        'cobalt blue',
        [110, 140],
        [8, 12],
        'memory',
        'haplopelma lividum, h. lividum',
      ],
      ['Chilobrachys fimbriatus', 'Indian violet', [120, 150], [8, 12], 'memory'],
    ],
  },
  {
    world: 'New World',
    habit: 'arboreal',
    growth: 'medium',
    rows: [
      [
        'Avicularia avicularia',
        'pinktoe',
        [120, 145],
        [13, 19],
        'breeder',
        'pink toe, common pinktoe, guyana pinktoe',
      ],
      [
        'Caribena versicolor',
        'Antilles pinktoe',
        [120, 150],
        [13, 19],
        'breeder',
        'avicularia versicolor, a. versicolor, martinique pinktoe',
      ],
    ],
  },
  {
    world: 'New World',
    habit: 'arboreal',
    growth: 'fast',
    rows: [
      [
        'Psalmopoeus irminia',
        'Venezuelan suntiger',
        [120, 150],
        [13, 17],
        'memory',
        'venezuelan sun tiger, suntiger',
      ],
      ['Psalmopoeus cambridgei', 'Trinidad chevron', [140, 180], [13, 17], 'memory'],
      ['Psalmopoeus pulcher', 'Panama blonde', [130, 160], [13, 17], 'care'],
      ['Tapinauchenius spp.', 'Tapinauchenius', [95, 125], [10, 14], 'memory', 'tapinauchenius sp., tappie'],
    ],
  },
  {
    world: 'Old World',
    habit: 'arboreal',
    growth: 'fast',
    rows: [
      ['Poecilotheria regalis', 'Indian ornamental', [150, 185], [15, 20], 'general'],
      [
        'Poecilotheria metallica',
        'Gooty sapphire',
        [150, 200],
        [15, 20],
        'general',
        'gooty sapphire ornamental, gooty',
      ],
      ['Heteroscodra maculata', 'Togo starburst', [110, 135], [8, 12], 'memory', 'togo starburst baboon'],
      [
        'Omothymus violaceopes',
        'Singapore blue',
        [190, 240],
        [18, 25],
        'memory',
        'lampropelma violaceopes, l. violaceopes',
      ],
    ],
  },
  {
    world: 'Old World',
    habit: 'fossorial',
    growth: 'medium',
    rows: [
      [
        'Monocentropus balfouri',
        'Socotra Island blue baboon',
        [125, 155],
        [12, 18],
        'memory',
        'socotra island blue, balfouri',
      ],
    ],
  },
];

const traitsOf = (habit: Habit): GroupTraits => ({
  group: 'tarantula',
  gauge: 'diagonal leg span',
  bodyPerGauge: memory(
    habit === 'arboreal' ? 0.38 : 0.42,
    '1',
    '0.36-0.46 on the ground, 0.33-0.43 in trees',
    'tradeMemory',
  ),
  bodyPerGaugeMale: memory(0.33, '1', '0.28-0.38', 'tradeMemory'),
  massPerCubicMm: published(
    0.1,
    'mg per cubic mm',
    'shillington2005',
    'derived: 13.19 g at about 50 mm; Theraphosa blondi of 175 g at 130 mm gives 0.08',
  ),
  cautions: ['live prey near a moult'],
});

const cautionsOf = (genus: string, { world, habit }: Table): readonly CautionCode[] => [
  ...(world === 'Old World' ? (['venom'] as const) : []),
  ...(world === 'New World' && !HAIRLESS.includes(genus) ? (['urticating hairs'] as const) : []),
  ...(world === 'Old World' || habit === 'arboreal' ? (['escape'] as const) : []),
  ...(REGULATED.includes(genus) ? (['regulated'] as const) : []),
];

const codeOf = (name: string): string => name.toLowerCase().replaceAll('.', '').replaceAll(' ', '-');

const kindFrom = (table: Table, [name, commonName, adult, first, from, others]: Row): Kind =>
  kindOf(
    traitsOf(table.habit),
    {
      code: codeOf(name),
      name,
      commonName,
      aliases: others?.split(', ') ?? [],
      habit: `${table.world}, ${table.habit}`,
      adult,
      first,
      from,
      cautions: cautionsOf(name.split(' ')[0]!, table),
    },
    tarantulaStages(table.habit, table.growth),
  );

/** A tarantula whose kind is not in the tables; the growth class is the middle one. */
const general = (code: string, commonName: string, habit: Habit, aliases: readonly string[]): Kind =>
  kindOf(
    traitsOf(habit),
    {
      code,
      name: commonName,
      commonName,
      aliases,
      habit,
      adult: [120, 150],
      first: habit === 'arboreal' ? [12, 18] : [5, 8],
      from: 'own',
      note: 'a middling tarantula; set your own',
      cautions: ['urticating hairs', 'venom', 'escape'],
    },
    tarantulaStages(habit, 'medium'),
  );

export const tarantulas: readonly Kind[] = [
  general('tarantula', 'tarantula', 'terrestrial', ['tarantulas', 'terrestrial tarantula', 'bird spider']),
  general('tarantula-fossorial', 'fossorial tarantula', 'fossorial', ['burrowing tarantula']),
  general('tarantula-arboreal', 'arboreal tarantula', 'arboreal', ['tree tarantula', 'tree spider']),
  ...tables.flatMap((table) => table.rows.map((row) => kindFrom(table, row))),
];
