/** Every number of a prey species that may be changed, in the groups a keeper looks for. */
import type { DevelopmentSpan, Laying, PreySpecies, SizeClass } from '../../husbandry/prey/index.ts';
import { inPercent } from '../../husbandry/units.ts';
import { type BookNumber, keyOf, numbersAt } from './book-number.ts';

const KEEPING = 'Keeping';
const ADULTS = 'Adults and their young';
const SURVIVAL = 'Survival';
const SIZE = 'Size';
const growthOf = (span: string): string => `Growth: ${span}`;

/** The figure of each point, told by its temperature. */
const byTemp =
  <T extends { readonly tempC: number }>(field: keyof T) =>
  (point: T) =>
    [[point.tempC, field, `at ${point.tempC} °C`]] as const;

/** The numbers of a species, in the order they are read. */
export const preyNumbers = (species: PreySpecies): readonly BookNumber[] => [
  ...species.spans.flatMap((span, i) => spanNumbers(species, span, i)),
  ...survivalNumbers(species),
  ...adultNumbers(species),
  ...sizeNumbers(species),
  ...keepingNumbers(species),
];

/** The key of a figure of a span, such as `lowerThresholdC`. */
export const spanKey = (span: string, name: keyof DevelopmentSpan): string => keyOf('span', span, name);
/** The key of a stage's share of its span. */
export const shareKey = (stage: string): string => keyOf('stage', stage, 'share');
/** The key of the upper end of a size that is sold. */
export const sizeKey = (size: string): string => keyOf('species', 'sizeClasses', `${size}.to`);

function spanNumbers(species: PreySpecies, span: DevelopmentSpan, i: number): readonly BookNumber[] {
  const { one, list } = numbersAt({
    about: growthOf(span.code),
    key: keyOf('span', span.code),
    path: ['spans', i],
  });
  return [
    ...list(
      'points',
      { what: 'days measured', measure: 'days', figures: byTemp('days') },
      span.points.value.length === 0 ? undefined : span.points,
    ),
    ...one('lowerThresholdC', 'nothing grows below', 'temperature', span.lowerThresholdC),
    ...one('degreeDays', 'warmth needed above that', 'degree-days', span.degreeDays),
    ...one('optimumC', 'grows fastest at', 'temperature', span.optimumC),
    ...one('upperStopC', 'nothing grows from', 'temperature', span.upperStopC),
    ...one('hardStopC', 'nobody gets through at or below', 'temperature', span.hardStopC),
    ...shareNumbers(species, span),
  ];
}

/** How the time of a span is shared out, where several stages share it. */
function shareNumbers({ stages }: PreySpecies, span: DevelopmentSpan): readonly BookNumber[] {
  const own = stages.flatMap((stage, i) => (stage.span === span.code ? [{ stage, i }] : []));
  if (own.length < 2) return [];
  return own.map(({ stage: { name, share }, i }) => {
    const key = shareKey(name);
    const path = ['stages', i, 'share'];
    const figures = [{ key, path, value: share, at: '' }];
    const about = growthOf(span.code);
    return { key, about, what: `of this time as ${name}`, measure: 'share', path, sourced: null, figures };
  });
}

const survivalNumbers = ({ stages, immatureCv }: PreySpecies): readonly BookNumber[] => [
  ...stages.flatMap(({ name, survival, cv }, i) => {
    const { one, list } = numbersAt({ about: SURVIVAL, key: keyOf('stage', name), path: ['stages', i] });
    return [
      ...list(
        'survival',
        { what: `${name}: gets through alive`, measure: 'share', figures: byTemp('share') },
        survival,
      ),
      ...one('cv', `${name}: spread of its days`, 'spread', cv),
    ];
  }),
  ...numbersAt({ about: SURVIVAL, key: 'species', path: [] }).one(
    'immatureCv',
    'spread of the time to adult among siblings',
    'spread',
    immatureCv,
  ),
];

function adultNumbers({ adult, laying }: PreySpecies): readonly BookNumber[] {
  const { one, list } = numbersAt({ about: ADULTS, key: 'adult', path: ['adult'] });
  return [
    ...list('longevity', { what: 'adult life', measure: 'days', figures: byTemp('days') }, adult.longevity),
    ...one('cv', 'spread of adult life', 'spread', adult.cv),
    ...(laying ? layingNumbers(laying) : []),
  ];
}

function layingNumbers({ brood, ...laying }: Laying): readonly BookNumber[] {
  const { one, list } = numbersAt({ about: ADULTS, key: 'laying', path: ['laying'] });
  const broods = numbersAt({ about: ADULTS, key: 'laying.brood', path: ['laying', 'brood'] });
  return [
    ...list(
      'perFemaleDay',
      { what: 'laid or born a day by a female', measure: 'laid', figures: byTemp('perDay') },
      laying.perFemaleDay,
    ),
    ...list<readonly [number, number]>(
      'byAge',
      {
        what: 'laid by age, times the mean',
        measure: 'times',
        figures: ([share]) => [[share, 1, `at ${inPercent(share)} % of laying life`]],
      },
      laying.byAge,
    ),
    ...broods.one('young', 'in a brood', 'heads', brood?.young),
    ...broods.one('youngCv', 'spread of broods', 'share', brood?.youngCv),
    ...broods.one('intervalDays', `between broods at ${brood?.tempC} °C`, 'days', brood?.intervalDays),
    ...one('firstAfterDays', 'first after the last moult', 'days', laying.firstAfterDays),
    ...one('femaleShare', 'females', 'share', laying.femaleShare),
    ...one('hatchShare', 'eggs that hatch', 'share', laying.hatchShare),
    ...one('femalesPerMale', 'females to one male', 'heads', laying.femalesPerMale),
    ...one('retireAfterDays', 'breeders are replaced after', 'days', laying.retireAfterDays),
  ];
}

function sizeNumbers({ adultLengthMm, massPerCubicMm, widthPerLength, sizeClasses }: PreySpecies) {
  const { one, list } = numbersAt({ about: SIZE, key: 'species', path: [] });
  const ends = ({ name }: SizeClass) =>
    [
      [`${name}.from`, 'fromMm', `${name} from`],
      [`${name}.to`, 'toMm', `${name} to`],
    ] as const;
  return [
    ...one('adultLengthMm', 'length of an adult', 'length', adultLengthMm),
    ...one('massPerCubicMm', 'mass, times the cube of its length', 'mass', massPerCubicMm),
    ...one('widthPerLength', 'width, of its length', 'share', widthPerLength),
    ...list('sizeClasses', { what: 'sizes sold', measure: 'length', figures: ends }, sizeClasses),
  ];
}

function keepingNumbers({ holdingLossPerDay, crowding, coldStore, cup }: PreySpecies): readonly BookNumber[] {
  const whole = numbersAt({ about: KEEPING, key: 'species', path: [] });
  const full = numbersAt({ about: KEEPING, key: 'crowding', path: ['crowding'] });
  const cold = numbersAt({ about: KEEPING, key: 'coldStore', path: ['coldStore'] });
  const cups = numbersAt({ about: KEEPING, key: 'cup', path: ['cup'] });
  return [
    ...whole.one('holdingLossPerDay', 'lost a day in a holding bin', 'share', holdingLossPerDay),
    ...full.one('headsPerUnit', 'room', 'heads', crowding?.headsPerUnit),
    ...full.one('deathsPerDayOver', 'deaths when over-full', 'deaths', crowding?.deathsPerDayOver),
    ...(crowding?.eaten ?? []).flatMap(({ stage, by, perEater }, i) =>
      numbersAt({
        about: KEEPING,
        key: keyOf('eaten', stage, by),
        path: ['crowding', 'eaten', i],
      }).one('perEater', `${stage} eaten by ${by === 'young' ? 'larvae' : 'adults'}`, 'eaten', perEater),
    ),
    ...cold.one('fromC', 'kept cool from', 'temperature', coldStore?.fromC),
    ...cold.one('toC', 'kept cool up to', 'temperature', coldStore?.toC),
    ...cold.one('days', 'kept cool for at most', 'days', coldStore?.days),
    ...cold.one('harmBelowC', 'cold harms below', 'temperature', coldStore?.harmBelowC),
    ...cups.one('starters', 'to start a cup', 'heads', cup?.starters),
    ...cups.one('yieldPerCup', 'a cup yields', 'heads', cup?.yieldPerCup),
    ...cups.one('discardAfterDays', 'a cup goes out after', 'days', cup?.discardAfterDays),
  ];
}
