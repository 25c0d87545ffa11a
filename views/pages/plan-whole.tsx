/** The whole plan in numbers: what it costs, how well it serves, what is wasted, how far it is proven. */
import type { Estimate, PlanAnswer } from '../../src/husbandry/plan/index.ts';
import { DAYS_PER_WEEK } from '../../src/husbandry/units.ts';
import { counted, money, roundly, sentenceCase } from '../format.ts';
import type { PlanTold } from './plan.tsx';
import { estimateWords, provenWords, shareText, timesText } from './plan-service.ts';

export const PlanWhole = (told: PlanTold) => (
  <section aria-labelledby="plan-whole" class="plan-whole">
    <h2 id="plan-whole">What it comes to</h2>
    <div class="facts">
      <Costs {...told} />
      <ServiceTable {...told} />
    </div>
    <p>{wasteWords(told.plan)}</p>
    <p class="note">
      {provenWords(told.plan)} {safetyWords(told.plan)}
    </p>
  </section>
);

const COSTS = [
  ['goods', 'Goods'],
  ['postage', 'Postage'],
  ['keeping', 'Food and room for prey'],
  ['labour', 'Your time'],
] as const;

const Costs = ({ plan, market }: PlanTold) => {
  const { cents, minutes } = plan.whole;
  const { currency } = market.purse;
  return (
    <table class="plan-costs">
      <caption>Costs over {counted(plan.periods.length, 'week')}</caption>
      <tbody>
        {COSTS.map(([part, name]) => (
          <tr>
            <th scope="row">
              {name}
              {part === 'labour' ? ` (${timeWords(minutes)})` : ''}
            </th>
            <td>{money(cents[part], currency)}</td>
          </tr>
        ))}
        <tr class="total">
          <th scope="row">Together</th>
          <td>{money(cents.total, currency)}</td>
        </tr>
      </tbody>
    </table>
  );
};

const MINUTES_PER_HOUR = 60;
/** '40 minutes', '3 hours'. */
export function timeWords(minutes: number): string {
  if (minutes < MINUTES_PER_HOUR * 2) return counted(Math.round(minutes), 'minute');
  return counted(Math.round(minutes / MINUTES_PER_HOUR), 'hour');
}

const ServiceTable = ({ plan }: PlanTold) => (
  <table class="plan-service">
    <caption>Meals served in time, of those due</caption>
    <thead>
      <tr>
        <th scope="col">Animals</th>
        <th scope="col">Served</th>
        <th scope="col">Asked</th>
      </tr>
    </thead>
    <tbody>
      {plan.whole.service.map(({ urgency, mealsDue, notMissed, target, met }) => (
        <tr class={met ? '' : 'is-short'}>
          <th scope="row">
            {sentenceCase(urgency)} <small>{counted(roundly(mealsDue), 'meal')}</small>
          </th>
          <td>
            {shareText(notMissed.mean)}{' '}
            <small>
              {shareText(notMissed.low)} to {shareText(notMissed.high)}
            </small>
          </td>
          <td>
            {shareText(target)}
            {met ? '' : ': short'}
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);

/** 'Over 12 weeks 1,240 are bought. Of these and of what is here, 1,000 are eaten, 150 die and 85 outgrow everybody who would eat them.' */
function wasteWords({ whole }: PlanAnswer): string {
  const { heldDays, bought, eaten, died, outgrown, missedMeals, dangers } = whole;
  const many = (n: number): string => roundly(n).toLocaleString('en-GB');
  const weeks = counted(Math.ceil(heldDays / DAYS_PER_WEEK), 'week');
  const prey = `Over ${weeks} ${many(bought)} are bought. Of these and of what is here, ${many(eaten)} are eaten, ${many(died)} die and ${many(outgrown)} outgrow everybody who would eat them.`;
  return `${prey} Expect ${estimateWords(missedMeals, 'missed meal')}; ${tooLongWords(dangers)}.`;
}

/** '3 to 5 times an animal would go too long without food' */
function tooLongWords(dangers: Estimate): string {
  const times = timesText(dangers);
  return times === 'never'
    ? 'no animal would go too long without food'
    : `${times} an animal would go too long without food`;
}

const safetyWords = ({ safetyLevel }: PlanAnswer): string =>
  safetyLevel === 0
    ? 'No stock is held against bad luck.'
    : `Stock is held so that bad luck is covered with a chance of ${shareText(safetyLevel)} from one delivery to the next.`;
