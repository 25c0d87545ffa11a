/** What each value of a kind and of a stage's rule is called and how it is said: tables. */
import { counted, span } from '../../../views/format.ts';
import type {
  Kind,
  KindField,
  KindValues,
  StageField,
  StageRule,
  StageValues,
} from '../../husbandry/animals/index.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { inPercent } from '../../husbandry/units.ts';

const percent = (share: number): string => `${inPercent(share)} %`;
const days = (n: number): string => counted(n, 'day');

/** What a value is, how it is said, and the sourced number it stands for where it is one. */
export interface Word<V, T> {
  readonly what: string;
  readonly say: (values: V) => string;
  readonly number?: (of: T) => Sourced<unknown> | undefined;
}

function windowWords({ window: { min, ideal, max, killFirstAbove } }: StageValues): string {
  const killed = killFirstAbove === null ? '' : `; killed first above ${percent(killFirstAbove)}`;
  return `${percent(min)} to ${percent(max)} of its own length, best ${percent(ideal)}${killed}`;
}

function capWords({ shareCaps }: StageValues): string {
  const caps = Object.entries(shareCaps).map(([form, most]) => `${form} ${percent(most)}`);
  return caps.length === 0 ? 'none' : caps.join(', ');
}

export const OF_STAGE: Readonly<Record<StageField, Word<StageValues, StageRule>>> = {
  window: { what: 'Length of its prey', say: windowWords, number: (rule) => rule.window },
  mealItems: {
    what: 'Prey items a meal',
    say: ({ mealItems }) => span(mealItems, 'of the best length'),
    number: (rule) => rule.mealItems,
  },
  intervalDays: {
    what: 'Between meals',
    say: ({ intervalDays }) => span(intervalDays, 'days'),
    number: (rule) => rule.intervalDays,
  },
  weeklyNeed: {
    what: 'Needs in a week',
    say: ({ weeklyNeed }) => `${percent(weeklyNeed[0])} to ${percent(weeklyNeed[1])} of its own mass`,
    number: (rule) => rule.weeklyNeed,
  },
  accepts: { what: 'Prey it takes', say: ({ accepts }) => accepts.join(', ') },
  shareCaps: { what: 'At most, of a week’s items', say: capWords, number: (rule) => rule.shareCaps },
  refusesHard: {
    what: 'Hard beetles',
    say: ({ refusesHard }) => (refusesHard ? 'refused or unsafe' : 'taken'),
  },
  portions: {
    what: 'Larger prey is cut into',
    say: ({ portions }) => (portions === 1 ? 'not cut' : `up to ${portions} portions`),
    number: (rule) => rule.portions,
  },
  waitAfterMoultDays: {
    what: 'Wait after a moult',
    say: (values) => days(values.waitAfterMoultDays),
    number: (rule) => rule.waitAfterMoultDays,
  },
  retryDays: {
    what: 'Offered again after a refusal',
    say: ({ retryDays }) => `after ${days(retryDays)}`,
    number: (rule) => rule.retryDays,
  },
  graceDays: {
    what: 'A late meal is missed',
    say: ({ graceDays }) => `${days(graceDays)} after the longest interval`,
    number: (rule) => rule.graceDays,
  },
  safeGapDays: {
    what: 'Danger without food',
    say: ({ safeGapDays }) => `after ${days(safeGapDays)}`,
    number: (rule) => rule.safeGapDays,
  },
  urgency: { what: 'When prey is short', say: ({ urgency }) => urgency },
  moultDays: {
    what: 'From moult to moult',
    say: ({ moultDays }) => days(moultDays ?? 0),
    number: ({ moult }) => moult?.meanDays,
  },
  moultCv: {
    what: 'Spread of the moults',
    say: ({ moultCv }) => `give or take ${percent(moultCv ?? 0)}`,
    number: ({ moult }) => moult?.cv,
  },
  moultFactor: {
    what: 'Grows at a moult',
    say: ({ moultFactor }) => `by ${percent((moultFactor ?? 1) - 1)}`,
    number: ({ moult }) => moult?.lengthFactor,
  },
};

export const OF_KIND: Readonly<Record<KindField, Word<KindValues, Kind>>> = {
  name: { what: 'Name', say: ({ name }) => name },
  commonName: { what: 'Common name', say: ({ commonName }) => commonName },
  aliases: {
    what: 'Other names',
    say: ({ aliases }) => (aliases.length === 0 ? 'none' : aliases.join(', ')),
  },
  gauge: { what: 'Measured by', say: ({ gauge }) => gauge },
  bodyPerGauge: {
    what: 'Body, of the measure',
    say: ({ bodyPerGauge }) => percent(bodyPerGauge),
    number: (kind) => kind.bodyPerGauge,
  },
  bodyPerGaugeMale: {
    what: 'The same, mature male',
    say: ({ bodyPerGaugeMale }) => percent(bodyPerGaugeMale ?? 0),
    number: (kind) => kind.bodyPerGaugeMale ?? undefined,
  },
  massPerCubicMm: {
    what: 'Mass',
    say: ({ massPerCubicMm }) => `${massPerCubicMm} mg × body length in mm, cubed`,
    number: (kind) => kind.massPerCubicMm,
  },
  adultGaugeMm: {
    what: 'Full grown',
    say: ({ adultGaugeMm }) => span(adultGaugeMm, 'mm'),
    number: (kind) => kind.adultGaugeMm,
  },
  firstFeedingGaugeMm: {
    what: 'At its first feed',
    say: ({ firstFeedingGaugeMm }) => span(firstFeedingGaugeMm, 'mm'),
    number: (kind) => kind.firstFeedingGaugeMm,
  },
};
