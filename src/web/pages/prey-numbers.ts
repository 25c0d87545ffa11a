/** Every number of a prey species as a line with its source, in the groups a keeper looks for. */
import { type LengthUnit, lengthRange, lengthText } from '../../../views/format.ts';
import type { PreyLines } from '../../../views/pages/prey.tsx';
import type { SourceLine } from '../../../views/partials/sources.tsx';
import type {
  Brood,
  ColdStore,
  Crowding,
  DevelopmentPoint,
  DevelopmentSpan,
  Laying,
  PreySpecies,
} from '../../husbandry/prey/index.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { inPercent } from '../../husbandry/units.ts';
import { lineOf } from './source-line.ts';

const DIGITS = 3;

const inDigits = (value: number): string => `${Number(value.toPrecision(DIGITS))}`;
const percent = (share: number): string => `${inPercent(share)} %`;

/** A plain number with its own unit. */
const plain = (what: string, number: Sourced): SourceLine =>
  lineOf(
    what,
    number,
    number.unit === '1' ? inDigits(number.value) : `${inDigits(number.value)} ${unitOf(number)}`,
  );

const unitOf = ({ unit, value }: Sourced): string => {
  if (unit === 'C') return '°C';
  return unit === 'days' && value === 1 ? 'day' : unit;
};

const shared = (what: string, number: Sourced): SourceLine => lineOf(what, number, percent(number.value));

/** '44 days at 30 °C, 37 at 32 °C'. */
const atTemps = <P extends { readonly tempC: number }>(
  points: readonly P[],
  say: (point: P) => string,
): string =>
  points.length === 0
    ? 'none, the line alone'
    : points.map((point) => `${say(point)} at ${point.tempC} °C`).join(', ');

const daysAt = (points: readonly DevelopmentPoint[]): string =>
  atTemps(points, ({ days }) => `${inDigits(days)} days`);

const spanLines = (span: DevelopmentSpan): readonly SourceLine[] => [
  lineOf(`${span.code}: days measured`, span.points, daysAt(span.points.value)),
  plain(`${span.code}: nothing grows below`, span.lowerThresholdC),
  plain(`${span.code}: warmth needed above that`, span.degreeDays),
  plain(`${span.code}: grows fastest at`, span.optimumC),
  plain(`${span.code}: nothing grows from`, span.upperStopC),
  ...(span.hardStopC ? [plain(`${span.code}: nobody gets through at or below`, span.hardStopC)] : []),
];

const survivalLines = ({ stages }: PreySpecies): readonly SourceLine[] =>
  stages.flatMap(({ name, survival, cv }) => [
    lineOf(
      `${name}: gets through alive`,
      survival,
      atTemps(survival.value, ({ share }) => percent(share)),
    ),
    ...(cv ? [shared(`${name}: spread of its days`, cv)] : []),
  ]);

function sizeLines(species: PreySpecies, unit: LengthUnit): readonly SourceLine[] {
  const { lengthByDevelopment, adultLengthMm, sizeClasses } = species;
  const [first, last] = [lengthByDevelopment.value[0], lengthByDevelopment.value.at(-1)];
  const sizes = sizeClasses.value.map(
    ({ name, fromMm, toMm }) => `${name} ${lengthRange(fromMm, toMm, unit)}`,
  );
  return [
    lineOf(
      'Length from hatching to grown',
      lengthByDevelopment,
      lengthRange(first?.[1] ?? 0, last?.[1] ?? 0, unit),
    ),
    lineOf('Length of an adult', adultLengthMm, lengthText(adultLengthMm.value, unit)),
    plain('Mass, times the cube of its length', species.massPerCubicMm),
    shared('Width, of its length', species.widthPerLength),
    lineOf('Sizes sold', sizeClasses, sizes.join(', ')),
  ];
}

const broodLines = ({ young, youngCv, intervalDays, tempC }: Brood): readonly SourceLine[] => [
  plain('In a brood', young),
  shared('Spread of broods', youngCv),
  lineOf('Between broods', intervalDays, `${inDigits(intervalDays.value)} days at ${tempC} °C`),
];

const layingLines = (laying: Laying): readonly SourceLine[] => [
  lineOf(
    'Laid or born a day by a female',
    laying.perFemaleDay,
    atTemps(laying.perFemaleDay.value, ({ perDay }) => inDigits(perDay)),
  ),
  ...(laying.byAge ? [lineOf('Laid by age', laying.byAge, byAgeWords(laying.byAge.value))] : []),
  ...(laying.brood ? broodLines(laying.brood) : []),
  plain('First after the last moult', laying.firstAfterDays),
  shared('Females', laying.femaleShare),
  shared('Eggs that hatch', laying.hatchShare),
  ...(laying.femalesPerMale ? [plain('To one male', laying.femalesPerMale)] : []),
  ...(laying.retireAfterDays ? [plain('Breeders are replaced after', laying.retireAfterDays)] : []),
];

const byAgeWords = (curve: readonly (readonly [number, number])[]): string =>
  curve
    .map(([share, rate]) => `${inDigits(rate)} times the mean at ${percent(share)} of laying life`)
    .join(', ');

const crowdingLines = ({ headsPerUnit, deathsPerDayOver, eaten = [] }: Crowding): readonly SourceLine[] => [
  plain('Room', headsPerUnit),
  plain('Deaths when over-full', deathsPerDayOver),
  ...eaten.map(({ stage, by, perEater }) =>
    plain(`${stage} eaten by ${by === 'young' ? 'larvae' : 'adults'}`, perEater),
  ),
];

const coldLines = ({ fromC, toC, days, harmBelowC }: ColdStore): readonly SourceLine[] => [
  plain('Kept cool from', fromC),
  plain('Kept cool up to', toC),
  plain('Kept cool for at most', days),
  plain('Cold harms below', harmBelowC),
];

/** The numbers of a species in groups. */
export function preyLines(species: PreySpecies, unit: LengthUnit): readonly PreyLines[] {
  const { adult, laying, crowding, coldStore, cup } = species;
  return [
    {
      about: 'Growth',
      lines: [...species.spans.flatMap(spanLines), shared('Spread among siblings', species.immatureCv)],
    },
    { about: 'Survival', lines: survivalLines(species) },
    {
      about: 'Adults and their young',
      lines: [
        lineOf('Adult life', adult.longevity, daysAt(adult.longevity.value)),
        shared('Spread of adult life', adult.cv),
        ...(laying ? layingLines(laying) : []),
      ],
    },
    { about: 'Size', lines: sizeLines(species, unit) },
    {
      about: 'Keeping',
      lines: [
        shared('Lost a day in a holding bin', species.holdingLossPerDay),
        ...(crowding ? crowdingLines(crowding) : []),
        ...(coldStore ? coldLines(coldStore) : []),
        ...(cup
          ? [
              plain('To start a cup', cup.starters),
              plain('A cup yields', cup.yieldPerCup),
              plain('A cup goes out after', cup.discardAfterDays),
            ]
          : []),
      ],
    },
  ];
}
