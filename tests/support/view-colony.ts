/** Props of the colony start, from an invented colony of dubia roaches. */
import { speciesByCode } from '../../src/facts/prey/index.ts';
import type { ColonyStart, StartWeek } from '../../src/husbandry/colony/index.ts';
import type { ColonyTold } from '../../views/pages/colony-answer.tsx';
import type { ColonyStartProps } from '../../views/pages/colony-start.tsx';
import { forms, names, shell, TODAY } from './view-fixtures.ts';

const species = { ...speciesByCode.get('blaptica-dubia')!, code: 'dubia' };
const unit = 'mm' as const;
const WANTED = 60;
const WANTED_SIZES = [{ heads: WANTED, fromMm: 12, toMm: 19 }];
const HARVESTED_FROM = 26;
const LASTS_FROM = 44;

const weekOf = (week: number): StartWeek => {
  const taken = week < HARVESTED_FROM ? 0 : week < LASTS_FROM ? 30 : WANTED;
  const heads = Math.min(1200, 30 * week);
  return {
    week,
    females: week < HARVESTED_FROM ? 10 + week / 2 : 34,
    heads,
    bins: Math.ceil(heads / 500),
    taken: [taken],
    bought: WANTED - taken,
  };
};
const path = Array.from({ length: 157 }, (_, i) => weekOf(i + 1));

export const start: ColonyStart = {
  species: 'dubia',
  growth: { perWeek: 1.09, doublingDays: 58, generationDays: 280, weeklyShare: 0.08 },
  smallest: { females: 30.1, males: 7.5, surplus: 0 },
  sustaining: { females: 34, males: 9, chance: 0.93 },
  tried: [
    { females: 31, males: 8, chance: 0.07 },
    { females: 34, males: 9, chance: 0.93 },
  ],
  path,
  wanted: WANTED_SIZES,
  firstHarvest: HARVESTED_FROM,
  fullHarvest: LASTS_FROM,
  bridge: 2040,
  shortAgain: 0,
  lastsFrom: LASTS_FROM,
  costs: path.map(({ week, bought }) => ({ own: 60 + 3 * week + bought, bought: 15 * week })),
  breakEven: 47,
};

export const told: ColonyTold = {
  start,
  question: {
    species: 'dubia',
    dayC: 28,
    nightC: 28,
    wanted: WANTED_SIZES,
    starters: { kind: 'adults', females: 10, males: 4 },
    binSize: { capacity: 500 },
    prices: { perHead: 0.25, starters: 60, perWeek: 3 },
  },
  species,
  names,
  unit,
  currency: 'EUR',
  readyOn: null,
  today: TODAY,
  room: { name: 'Spare room', temp: { minC: 20, maxC: 24 } },
  remarks: ['28 °C is outside what was measured of laying.'],
  lost: { one: 0.07, together: 0.024, apart: 0.005 },
  lasts: { weeksMet: 0.95, years: 3 },
  sources: [],
  setUp: {
    entry: { name: 'colony-set-up', formId: `${forms.formId}.colony-set-up`, values: {}, problems: {} },
    action: '/larder/colony-start?species=dubia',
  },
  enoughAt: '/larder/colony-start?species=dubia&females=34&males=9',
};

export const colonyStartProps: ColonyStartProps = {
  shell,
  unit,
  asked: {
    name: 'colony',
    formId: '',
    values: { 'want-medium': '60', begin: 'adults', females: '10', males: '4', room: 'R1' },
    problems: {},
  },
  prey: { species, amiss: null, options: [{ value: 'dubia', label: 'dubia roach' }] },
  rooms: [{ value: 'R1', label: 'Spare room', temp: { minC: 20, maxC: 24 } }],
  sizes: [{ value: 'dubia|medium', label: 'medium' }],
  answer: { state: 'told', told },
};

export const colonyAskingProps: ColonyStartProps = {
  ...colonyStartProps,
  asked: {
    ...colonyStartProps.asked,
    problems: { day: '"warm" is not a temperature.', wanted: 'Say how many you want each week.' },
  },
  answer: null,
};
