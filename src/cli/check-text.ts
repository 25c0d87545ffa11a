/** The answer of a check as lines for people: the verdict first, then how sure, who, what helps, where to look. */

import { counted, expected, giveOrTake, lengthRange, longDay, percent, weeksIn } from '../../views/format.ts';
import type { Act, GroupAnswer } from '../husbandry/supply/index.ts';
import type { Checked, StepTold } from './checked.ts';
import { table } from './table.ts';

const HEADING = ['group', 'heads', 'takes', 'meals due', 'missed', 'nothing missed', 'verdict'] as const;
const NUMBERS = new Set(['heads', 'meals due', 'missed', 'nothing missed']);

export function checkLines({ cover, steps }: Checked): readonly string[] {
  const { day, horizonDays, replicates, headline, nothingMissed, verdict, groups, act, look } = cover;
  if (verdict === 'empty') return [headline];
  const { chance, standardError } = nothingMissed;
  return [
    headline,
    `Asked on ${longDay(day)} for ${counted(horizonDays, 'day')}, in ${replicates} replicates.`,
    `Nothing is missed in ${weeksIn(chance)} (${percent(chance)}, ${giveOrTake(standardError)}).`,
    '',
    ...groupLines(groups),
    ...planLines(steps),
    ...(act === null ? [] : ['', `What helps most: ${act.sentence}`, `  ${effectOf(act)}`]),
    ...(look === null ? [] : ['', `Where to look: ${look.sentence}`]),
  ];
}

/** Steps of the plan, the most urgent first, each with its reason below it. */
const planLines = (steps: readonly StepTold[]): readonly string[] =>
  steps.length === 0
    ? []
    : [
        '',
        'What the plan asks for before the next Sunday:',
        ...steps.flatMap(({ sentence, why }) => [`  ${sentence}`, ...(why === '' ? [] : [`    ${why}`])]),
      ];

/** Those that may run short one by one, the rest by number. */
function groupLines(groups: readonly GroupAnswer[]): readonly string[] {
  const short = groups.filter(({ verdict }) => verdict !== 'lasts');
  const lasting = groups.filter(({ verdict, heads }) => verdict === 'lasts' && heads > 0).length;
  if (short.length === 0) return [`${counted(lasting, 'group lasts', 'groups, and all last')}.`];
  const rest = lasting > 0 ? [`${counted(lasting, 'more group lasts', 'more groups last')}.`] : [];
  return [...table(HEADING, short.map(row), NUMBERS), ...rest];
}

const row = (group: GroupAnswer): readonly string[] => [
  group.name,
  `${group.heads}`,
  lengthRange(group.window.minMm, group.window.maxMm, 'mm'),
  expected(group.mealsDue),
  expected(group.missedMeals),
  percent(group.nothingMissed.chance),
  group.verdict,
];

const effectOf = ({ before, after }: Act): string =>
  `Missed meals: ${expected(before.missedMeals)} before, ${expected(after.missedMeals)} after; ` +
  `nothing missed: ${percent(before.nothingMissed)} before, ${percent(after.nothingMissed)} after.`;
