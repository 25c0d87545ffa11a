/** What the picture of a colony's way says, and the weeks it shows. */
import type { StartWeek } from '../../src/husbandry/colony/index.ts';
import { recordDay, sentenceCase } from '../format.ts';
import type { ColonyTold } from '../pages/colony-answer.tsx';
import { about, dayOfWeek, sizeName } from '../pages/colony-words.ts';
import type { NumbersTable } from './figure.tsx';

/** Weeks shown after the last mark. */
const WEEKS_AFTER = 26;

/** The weeks until the colony has found its stride. */
export function weeksShown({ start: { path, lastsFrom, breakEven } }: ColonyTold): readonly StartWeek[] {
  if (lastsFrom === null) return path;
  return path.slice(0, Math.max(lastsFrom, breakEven ?? 0) + WEEKS_AFTER);
}

export const pathFinding = ({ start: { firstHarvest, lastsFrom, bridge } }: ColonyTold): string => {
  if (lastsFrom === null) return 'What is wanted is not there for good';
  const bought = bridge < 1 ? 'with nothing bought' : `after about ${about(bridge)} bought`;
  const all = `all that is wanted from week ${lastsFrom}, ${bought}`;
  return firstHarvest === lastsFrom || firstHarvest === null
    ? sentenceCase(all)
    : `A first harvest in week ${firstHarvest}, ${all}`;
};

export function pathTable(told: ColonyTold): NumbersTable {
  const { species, start } = told;
  return {
    caption: 'The colony week by week, by means',
    head: [
      'Week to',
      'Alive',
      'Breeding females',
      'Bins',
      ...start.wanted.map((size) => `Taken, ${sizeName(species, size)}`),
      'Bought',
      ...(start.costs === null ? [] : ['Cost so far', 'All bought']),
    ],
    rows: weeksShown(told).map(({ week, heads, females, bins, taken, bought }) => [
      recordDay(dayOfWeek(told, week)),
      `${Math.round(heads)}`,
      `${Math.round(females)}`,
      bins === null ? '–' : `${bins}`,
      ...taken.map((n) => `${Math.round(n)}`),
      `${Math.round(bought)}`,
      ...costCells(told, week),
    ]),
  };
}

function costCells({ start: { costs } }: ColonyTold, week: number): readonly string[] {
  const found = costs?.[week - 1];
  return found === undefined ? [] : [`${Math.round(found.own)}`, `${Math.round(found.bought)}`];
}
