/** Numbers of the method that a keeper may sensibly change; what only buys precision or time is left as it is. */
import { METHOD } from '../../husbandry/own-numbers.ts';
import type { Policy } from '../../husbandry/policy.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { type BookNumber, type Measure, numbersAt } from './book-number.ts';

type Line = readonly [name: keyof Policy, what: string, measure: Measure];

/** By the topic of the method page that uses them. */
const TOPICS: Readonly<Record<string, readonly Line[]>> = {
  Verdict: [
    ['lastsFrom', 'lasts from this chance that nothing is missed', 'share'],
    ['tightFrom', 'tight from this chance', 'share'],
    ['eveningSkippedChance', 'evenings skipped', 'share'],
    ['generosityCv', 'spread of what you offer', 'spread'],
    ['deliveryLateChance', 'a delivery is a further day late', 'share'],
  ],
  'Doubt of a bin': [
    ['countCv', 'spread of a count by hand', 'spread'],
    ['levelCv', 'spread of a level by eye', 'spread'],
    ['weighCv', 'spread of a weight taken for heads', 'spread'],
    ['scaleCv', 'spread of the scales', 'share'],
    ['sizeSeenCv', 'spread of a size seen at a glance', 'spread'],
    ['doubtGrowthPerDay', 'a count grows vaguer a day by', 'share'],
    ['askCountCv', 'a count is asked for from this spread', 'spread'],
    ['overCountShare', 'sellers count too many by', 'share'],
    ['overCountCv', 'spread of sellers’ counts', 'spread'],
    ['deadOnArrivalShare', 'dead on arrival', 'share'],
  ],
  'Who sends': [
    ['lossPriorBoxes', 'boxes that weigh as much as the usual loss', 'boxes'],
    ['latePriorDays', 'days that weigh as much as the usual delay', 'days'],
  ],
  'Bins unlike the Book': [
    ['speedLogSd', 'bins grow slower or faster by about', 'spread'],
    ['hazardCv', 'spread of their deaths', 'spread'],
    ['layingLogSd', 'colonies lay less or more by about', 'spread'],
    ['roomTempSdC', 'rooms are warmer or colder by about', 'degrees'],
    ['dieOffPerDay', 'a bin dies off, a day', 'share'],
    ['dieOffShare', 'share that dies then', 'share'],
  ],
  Demand: [
    ['partTakenShare', 'eaten of a meal taken in part', 'share'],
    ['smallerItemsMost', 'small prey that replace one of the best size, at most', 'heads'],
    ['refusalsUnusualBelow', 'refusals are unusual below this chance', 'share'],
    ['awayMarginDays', 'days to spare after an absence', 'days'],
  ],
  Keeping: [
    ['quarantineDays', 'new stock stands apart for', 'days'],
    ['frozenKeepsDays', 'frozen prey keeps for', 'days'],
  ],
};

/** The numbers of the method in the groups of their topics. */
export const methodNumbers = (policy: Policy): readonly BookNumber[] =>
  Object.entries(TOPICS).flatMap(([about, lines]) => {
    const { one } = numbersAt({ about, key: METHOD, path: [] });
    return lines.flatMap(([name, what, measure]) => one(name, what, measure, policy[name] as Sourced));
  });
