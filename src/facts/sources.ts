/** Where every number of the facts comes from: works read, common practice without a source, and memory. */
import { preyWorks } from './prey-works.ts';
import { type Work, work } from './work.ts';

interface CommonPractice {
  readonly kind: 'common practice';
  readonly note: string;
}

interface FromMemory {
  readonly kind: 'from memory';
  readonly note: string;
}

export type Source = Work | CommonPractice | FromMemory;

const predatorWorks = {
  shineThomas2005: work({
    author: 'Shine R., Thomas J.',
    year: 2005,
    title: 'Do lizards and snakes really differ in their ability to take large prey?',
    where: 'Oecologia 144:492-498',
    read: 'abstract',
  }),
  vachoni2021: work({
    author: 'author not shown in the copy read',
    year: 2021,
    title: 'Development, growth and allometry in a cohort of the tarantula Grammostola vachoni',
    where: 'Zool. Anz. 293:37-45',
    read: 'abstract',
  }),
  faber1994: work({
    author: 'Faber',
    year: 1994,
    title: "Przibram's Rule and male body-size dimorphism in Zygoballus rufipes",
    where: 'J. Zool.',
    read: 'abstract',
  }),
  franckeSissom1984: work({
    author: 'Francke, Sissom',
    year: 1984,
    title: 'Comparative review of the methods used to determine the number of molts to maturity in scorpions',
    where: 'J. Arachnol. 12:1-20',
    read: 'abstract',
  }),
  mesaensis1979: work({
    author: 'author not shown in the copy read (from memory: Polis, Farley)',
    year: 1979,
    title: 'Natality, growth and maturity in Paruroctonus mesaensis',
    where: 'J. Zool.',
    read: 'abstract',
  }),
  loxosceles2005: work({
    author: 'Fischer, Vasconcellos-Neto',
    year: 2005,
    title: 'Development and life tables of Loxosceles intermedia',
    where: 'J. Arachnol. 33:758-766',
    read: 'abstract',
  }),
  shillington2005: work({
    author: 'Shillington',
    year: 2005,
    title: 'Inter-sexual differences in resting metabolic rates in Aphonopelma anax',
    where: 'Comp. Biochem. Physiol. A; values as held in the AnimalTraits database',
    read: 'abstract',
  }),
  hatton2019: work({
    author: 'Hatton et al.',
    year: 2019,
    title: 'Linking scaling laws across eukaryotes',
    where: 'PNAS 116:21616-21622, metabolism table; own regressions',
    read: 'data',
  }),
  framenau2000: work({
    author: 'Framenau et al.',
    year: 2000,
    title: 'Multiple feeding in wolf spiders (Lycosa lapidosa)',
    where: 'Aust. J. Zool. 48:59-65',
    read: 'abstract',
  }),
  hurd1991: work({
    author: 'Hurd',
    year: 1991,
    title: 'Growth efficiency in juvenile mantids',
    where: 'Proc. Ent. Soc. Wash. 93:748-750',
    read: 'abstract',
  }),
} as const;

const practices = {
  practice: { kind: 'common practice', note: 'common practice of keepers and sellers, no source' },
  carePages: {
    kind: 'common practice',
    note: "care sheets and sellers' pages read; they give the figure without a source",
  },
  generalPages: {
    kind: 'common practice',
    note: 'encyclopaedia-type and zoo pages read; they give the figure without a source',
  },
  breederPages: {
    kind: 'common practice',
    note: 'rearing notes by hobby breeders, read; figures without a source',
  },
} as const satisfies Readonly<Record<string, CommonPractice>>;

const memories = {
  ownStart: { kind: 'from memory', note: 'our own starting value, no source' },
  tradeMemory: {
    kind: 'from memory',
    note: 'size and growth lore of the trade as we recall it; not found in the works read',
  },
  finke2002: {
    kind: 'from memory',
    note: 'recalled from Finke 2002, Zoo Biology 21:269-285 (feeder insects); not seen',
  },
  willis1958: {
    kind: 'from memory',
    note: 'recalled from Willis, Riser and Roth 1958, Ann. Entomol. Soc. Am. 51:53-69 (reproduction and development of cockroaches); not seen',
  },
  clifford1990: {
    kind: 'from memory',
    note: 'recalled from Clifford and Woodring 1990, J. Appl. Entomol. 109:1-14; not seen',
  },
  faoSilk: { kind: 'from memory', note: 'recalled from sericulture manuals of the FAO; not seen' },
  markow: {
    kind: 'from memory',
    note: 'recalled from comparative work on Drosophila by Markow and co-workers; title and year not recalled',
  },
} as const satisfies Readonly<Record<string, FromMemory>>;

export type SourceId = WorkId | PracticeId | MemoryId;
export type WorkId = keyof typeof preyWorks | keyof typeof predatorWorks;
export type PracticeId = keyof typeof practices;
export type MemoryId = keyof typeof memories;

export const sources: Readonly<Record<string, Source>> = {
  ...preyWorks,
  ...predatorWorks,
  ...practices,
  ...memories,
};
