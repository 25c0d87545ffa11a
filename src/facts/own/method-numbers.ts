/** Numbers of the method that a keeper may sensibly change; what only buys precision or time is left as it is. */
import type { Urgency } from '../../husbandry/animals/index.ts';
import { METHOD } from '../../husbandry/own-numbers.ts';
import type { Policy } from '../../husbandry/policy.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { type BookNumber, type Measure, numbersAt } from './book-number.ts';

type Line = readonly [
  name: keyof Policy,
  what: string,
  measure: Measure,
  within?: readonly [least: number, most: number],
];

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
  'Plan: meals': [
    ['planTargets', 'meals not to be missed', 'share', [50, 99.9]],
    ['planMissedTimes', 'a missed meal counts as', 'price', [1, 1000]],
    ['planLateTimes', 'an item that comes late counts as', 'price', [0, 10]],
    ['planDangerTimes', 'an animal in danger counts as', 'price'],
    ['planKilledTimes', 'an item killed first counts as', 'price', [0, 1]],
    ['planCapTimes', 'an item beyond its share of the diet counts as', 'price', [0, 1]],
  ],
  'Plan: prey': [
    ['planKeepShare', 'keeping a head for a week costs, of its price', 'share', [0.1, 100]],
    ['planCupItems', 'a cup with its medium costs', 'price'],
    ['planEndShare', 'what is left at the end is worth, of its price', 'share', [0, 95]],
    ['planEndWeeks', 'what is left is counted on for', 'weeks', [1, 52]],
    ['planBreederRoom', 'a colony feeds most when full to', 'share', [5, 100]],
    ['planBreederWeeks', 'a breeder is worth the food it spares in', 'weeks'],
  ],
  'Plan: your time': [
    ['planParcelMinutes', 'a parcel takes', 'minutes'],
    ['planShopMinutes', 'a walk to the shop takes', 'minutes'],
    ['planHarvestMinutes', 'a harvest or a cull takes', 'minutes'],
    ['planStartMinutes', 'starting a cup takes', 'minutes'],
  ],
};

const FOR: Readonly<Record<Urgency, string>> = {
  fragile: 'for fragile animals',
  ordinary: 'for ordinary animals',
  robust: 'for robust animals',
};

type ByUrgency = Sourced<Readonly<Record<Urgency, number>>>;

const isByUrgency = (number: Sourced | ByUrgency | undefined): number is ByUrgency =>
  typeof number?.value === 'object';

/** The numbers of the method in the groups of their topics. */
export const methodNumbers = (policy: Policy): readonly BookNumber[] =>
  Object.entries(TOPICS).flatMap(([about, lines]) => {
    const { one, each } = numbersAt({ about, key: METHOD, path: [] });
    return lines.flatMap(([name, what, measure, within]) => {
      const number = policy[name] as Sourced | ByUrgency | undefined;
      const found = isByUrgency(number)
        ? each(name, { what, measure, at: FOR }, number)
        : one(name, what, measure, number);
      return within === undefined ? found : found.map((own) => ({ ...own, within }));
    });
  });
