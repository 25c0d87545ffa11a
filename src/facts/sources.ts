/** Where every number of the facts comes from: works read, common practice without a source, and memory. */

interface Work {
  readonly kind: 'work';
  /** As far as the copy read shows it. */
  readonly author: string;
  readonly year: number | 'year not shown';
  readonly title: string;
  readonly where?: string;
  readonly doi?: string;
  readonly url?: string;
  /** How much of it was read: the data themselves, the abstract, or a page or excerpt. */
  readonly read: 'data' | 'abstract' | 'page';
}

interface CommonPractice {
  readonly kind: 'common practice';
  readonly note: string;
}

interface FromMemory {
  readonly kind: 'from memory';
  readonly note: string;
}

export type Source = Work | CommonPractice | FromMemory;

const work = (entry: Omit<Work, 'kind'>): Work => ({ kind: 'work', ...entry });
const NOT_SHOWN = 'year not shown';

const preyWorks = {
  kong2025: work({
    author: 'Kong J.D., Vadboncoeur É., Bertram S.M., MacMillan H.A.',
    year: 2025,
    title:
      'Temperature-dependence of life history in an edible cricket: Implications for optimising mass rearing (raw data archive)',
    where: 'Zenodo, licence CC-BY 4.0; means computed by us from the records not excluded',
    doi: '10.5281/zenodo.14681072',
    read: 'data',
  }),
  gryllodes2025: work({
    author: 'author not shown in the copy read',
    year: 2025,
    title: 'Life history of Gryllodes sigillatus from hatch to adulthood at 30 C',
    where: 'Entomological Society of America; preprint bioRxiv 10.1101/2024.10.08.617250',
    url: 'https://pubmed.ncbi.nlm.nih.gov/40251933/',
    read: 'abstract',
  }),
  odhiambo2022: work({
    author: 'Odhiambo M.A., Ochia C.O., Okuto E.O.',
    year: NOT_SHOWN,
    title:
      'Effects of Temperature on the Development and Survival of Cricket Species; Acheta domesticus and Gryllus bimaculatus (Orthoptera: Gryllidae)',
    where: 'East African Journal of Agriculture and Biotechnology, article 834',
    url: 'https://journals.eanso.org/index.php/eajab/article/view/834',
    read: 'abstract',
  }),
  magara2024: work({
    author: 'Magara H.J.O., Tanga C.M., Fisher B.L., Azrag A.G.A., Niassy S., Egonyu J.P. et al.',
    year: 2024,
    title:
      'Impact of temperature on the bionomics and geographical range margins of the two-spotted field cricket Gryllus bimaculatus in the world: Implications for its mass farming',
    where: 'PLoS ONE',
    doi: '10.1371/journal.pone.0300438',
    read: 'abstract',
  }),
  mitchaothai2024: work({
    author: 'Mitchaothai J., Lertpatarakomol R., Trairatapiwan T., Lukkananukool A.',
    year: 2024,
    title:
      'Influence of Incubation Temperature and Relative Humidity on the Egg Hatchability Pattern of Two-Spotted (Gryllus bimaculatus) and House (Acheta domesticus) Crickets',
    where: 'Animals',
    read: 'abstract',
  }),
  takacs2023: work({
    author: 'Takacs J., Bryon A., Jensen A.B., van Loon J.J.A., Ros V.I.D.',
    year: 2023,
    title:
      'Effects of Temperature and Density on House Cricket Survival and Growth and on the Prevalence of Acheta Domesticus Densovirus',
    where: 'Insects 14(7):588',
    doi: '10.3390/insects14070588',
    read: 'abstract',
  }),
  vadboncoeur2025: work({
    author: 'Vadboncoeur É., Deschamps M.-H., Bertram S.M., MacMillan H.A.',
    year: 2025,
    title:
      'Temperature outweighs diet in shaping developmental performance in two cricket species via growth delays and physiological limits',
    where: 'preprint, Cold Spring Harbor Laboratory',
    read: 'abstract',
  }),
  hack1997: work({
    author: 'Hack, as compiled in the AnimalTraits database',
    year: 1997,
    title: 'Body mass of house crickets (title of the primary paper not shown in the database)',
    where: 'AnimalTraits, observations table',
    read: 'data',
  }),
  herreidfull1984: work({
    author: 'Herreid, Full, as compiled in the AnimalTraits database',
    year: 1984,
    title: 'Body mass of Blaberus discoidalis (title of the primary paper not shown in the database)',
    where: 'AnimalTraits, observations table',
    read: 'data',
  }),
  lehmann2000: work({
    author: 'Lehmann, Dickinson, Staunton, as compiled in the AnimalTraits database',
    year: 2000,
    title: 'Body mass of Drosophila melanogaster (title of the primary paper not shown in the database)',
    where: 'AnimalTraits, observations table',
    read: 'data',
  }),
  jove2022: work({
    author: 'author not shown in the copy read',
    year: 2022,
    title: 'Maintaining Laboratory Cultures of Gryllus bimaculatus, a Versatile Orthopteran Model ...',
    where: 'Journal of Visualized Experiments 63277 (title cut short in the copy read)',
    read: 'abstract',
  }),
  mallery2014: work({
    author: 'Mallery C.S. Jr, Dzialowski E.M.',
    year: 2014,
    title:
      'Metabolic Demand of Ovoviviparous Reproduction in the Guyana Orange Spotted Cockroach Blaptica dubia',
    where: 'SICB meeting abstract 70.3',
    read: 'abstract',
  }),
  kimrust2013: work({
    author: 'Kim T., Rust M.K.',
    year: 2013,
    title: 'Life History and Biology of the Invasive Turkestan Cockroach (Dictyoptera: Blattidae)',
    where: 'J. Econ. Entomol. 106(6):2428-2432',
    doi: '10.1603/EC13052',
    read: 'abstract',
  }),
  urbanInsects: work({
    author: 'author not shown in the excerpt read',
    year: NOT_SHOWN,
    title: 'Handbook of urban insects, family Blattidae (excerpt)',
    where: 'we recall it as Robinson W.H. 2005, Urban Insects and Arachnids',
    read: 'page',
  }),
  pratique: work({
    author: 'PRATIQUE database, held by Buckley L.',
    year: NOT_SHOWN,
    title: 'PRATIQUE insect degree-day database: 41 strain records of Drosophila melanogaster',
    where: 'repository ICBseasonality, PRATIQUEdatabase.csv; the primary paper is named in each record',
    read: 'data',
  }),
  barnes1984: work({
    author: 'Barnes P.T., Holland B., Courreges V.',
    year: 1984,
    title: 'Degree-day records of Drosophila melanogaster lines',
    where: 'Genetics, as held in the PRATIQUE database',
    read: 'data',
  }),
  ashburner1978: work({
    author: 'Ashburner M., Thompson J.N.',
    year: 1978,
    title: 'Laboratory culture of Drosophila (durations at five temperatures)',
    where: 'as relayed by several web pages; the chapter itself was not seen',
    read: 'page',
  }),
  heidariparsa2023: work({
    author: 'Heidari Parsa S., Kheiri F., Fathipour Y. et al.',
    year: 2023,
    title:
      'Yellow meal worm (Tenebrio molitor L.) development time of life stages duration and survival rate at different temperatures in laboratory conditions',
    where: 'Arthropods 12(1):16-26',
    read: 'abstract',
  }),
  koo2013: work({
    author: 'author not shown in the copy read',
    year: NOT_SHOWN,
    title: 'Development of Tenebrio molitor larvae at 15-30 C, linear and Logan-6 models',
    where: 'we recall it as Koo H.-Y. et al. 2013, Korean J. Appl. Entomol.',
    url: 'https://db.koreascholar.com/Article/Detail/277765',
    read: 'abstract',
  }),
  moralesramos2024: work({
    author: 'Morales-Ramos J.A., Macchiano A., Rojas M.G.',
    year: 2024,
    title:
      'Estimating optimal temperature conditions for growth, development, and reproduction of Tenebrio molitor',
    where: 'J. Econ. Entomol. toae298',
    doi: '10.1093/jee/toae298',
    read: 'abstract',
  }),
  park2014: work({
    author: 'Park J.B., Choi W.H., Kim S.H., Jin H.J., Han Y.S., Lee Y.S., Kim N.J.',
    year: 2014,
    title: 'Developmental characteristics of Tenebrio molitor larvae in different instars',
    where: 'Int. J. Ind. Entomol. 28(1):5-9',
    read: 'abstract',
  }),
  zimbabweMealworm: work({
    author: 'author not shown in the copy read',
    year: NOT_SHOWN,
    title: 'Investigating the optimal conditions for rearing and breeding Tenebrio molitor in Zimbabwe',
    where: 'easletters.com',
    read: 'abstract',
  }),
  howe1960: work({
    author: 'Howe R.W.',
    year: 1960,
    title: '... Tribolium confusum Duval (title cut short in the database)',
    where: 'Ann. Appl. Biol. 48(2):363-376; regression as held in the PRATIQUE database',
    read: 'data',
  }),
  chapman1928: work({
    author: 'Chapman R.N.',
    year: 1928,
    title: 'The quantitative analysis of environmental factors',
    where: 'Ecology 9(2):111-122, Table 1',
    doi: '10.2307/1929348',
    read: 'data',
  }),
  illinoisWaxMoth: work({
    author: 'University of Illinois, course IB109',
    year: NOT_SHOWN,
    title: 'Insect rearing sheet: Greater wax moth',
    url: 'http://www.life.illinois.edu/ib/109/Insect%20rearing/Wax%20moth.html',
    read: 'page',
  }),
  mohamedcoppel1983: work({
    author: 'Mohamed M.A., Coppel H.C.',
    year: 1983,
    title: 'Mass Rearing of the Greater Wax Moth, Galleria mellonella, for Small-Scale Laboratory Studies',
    where: 'Great Lakes Entomologist 16(4):139',
    read: 'abstract',
  }),
  vikaash: work({
    author: 'Vikaash M., Nishanthini K., Ikram M., Yogapriya A., Kanagarajan R.',
    year: NOT_SHOWN,
    title: 'Effects of diets on life-history traits of Galleria mellonella',
    where: 'envirobiotechjournals',
    read: 'abstract',
  }),
  vendorShipping: work({
    author: 'a seller of live crickets (not named)',
    year: NOT_SHOWN,
    title: 'Shipping and guarantee page: share of crickets dead on arrival in 2007',
    where: "one seller's own figure",
    read: 'page',
  }),
} as const;

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
  markow: {
    kind: 'from memory',
    note: 'recalled from comparative work on Drosophila by Markow and co-workers; title and year not recalled',
  },
} as const satisfies Readonly<Record<string, FromMemory>>;

export type WorkId = keyof typeof preyWorks | keyof typeof predatorWorks;
export type PracticeId = keyof typeof practices;
export type MemoryId = keyof typeof memories;

export const sources: Readonly<Record<string, Source>> = {
  ...preyWorks,
  ...predatorWorks,
  ...practices,
  ...memories,
};
