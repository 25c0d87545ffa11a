/** Why a step is in the plan, in the keeper's words. */
import { feedsOf, type PlanStep, type Reason } from '../../src/husbandry/plan/index.ts';
import { counted, dayRange, expected, headPrice, listed, money, roundly, shortDay } from '../format.ts';
import { nameOf, preyName } from '../names.ts';
import { estimateWords, timesText } from './plan-service.ts';
import { manyHeads, type PlanNames } from './plan-words.ts';

/** Sentences, one after the other; none where the step was not explained. */
export function reasonWords(step: PlanStep, said: PlanNames): readonly string[] {
  const { line } = step;
  if (line.reason === null) return [];
  const { grows, makesLittleDifference } = line.reason;
  if (grows !== null)
    return [...(makesLittleDifference ? ['It makes little difference.'] : []), growsWords(grows)];
  const sentences = [feedsWords(step), withoutWords(step, line.reason, said), eatenWords(step, said)];
  return sentences.filter((sentence) => sentence !== '');
}

/** 'So it holds about 2,300 by Wed 20 Jan; fed from all along, about 1,900.' */
const growsWords = ({ heads, without, day }: NonNullable<Reason['grows']>): string =>
  `So it holds ${about(heads)} by ${shortDay(day)}; fed from all along, ${about(without)}.`;

const about = (heads: number): string => `about ${manyHeads(roundly(heads))}`;

const FED_NAMED = 2;

/** 'Feeds spiderlings from Fri 4 Dec to Sun 20 Dec (about 210 eaten).' */
function feedsWords(step: PlanStep): string {
  const feeds = feedsOf(step);
  if (feeds.length === 0) return '';
  const named = feeds
    .slice(0, FED_NAMED)
    .map(
      ({ name, heads, from, to }) =>
        `${name} ${from === to ? `on ${shortDay(from)}` : `from ${dayRange(from, to)}`} (${expected(heads)} eaten)`,
    );
  const more = feeds.length - named.length;
  return `Feeds ${listed([...named, ...(more > 0 ? [counted(more, 'more group')] : [])])}.`;
}

/** 'Without it: 12 to 19 missed meals and €9.40 saved.' */
function withoutWords({ line }: PlanStep, reason: Reason, said: PlanNames): string {
  const { without, makesLittleDifference } = reason;
  const leaving =
    line.what === 'harvest'
      ? `Were nothing ever taken from ${nameOf(said.names.bins, line.bin)}`
      : 'Without it';
  if (makesLittleDifference)
    return `It makes little difference. ${leaving}: nothing changes that could be told from chance.`;
  const lost = [
    ...(roundly(without.missedMeals.high) >= 1 ? [estimateWords(without.missedMeals, 'missed meal')] : []),
    ...(roundly(without.dangers.high) >= 1
      ? [`${timesText(without.dangers)} an animal too long without food`]
      : []),
  ];
  const changes = [...(lost.length === 0 ? ['no meal missed'] : lost), ...moneyWords(without.cents, said)];
  return `${leaving}: ${listed(changes)}.`;
}

/** What is taken from a bin costs nothing to leave. */
function moneyWords(
  { mean, low, high }: Reason['without']['cents'],
  { market }: PlanNames,
): readonly string[] {
  if (mean === 0 && low === high) return [];
  if (low <= 0 && high >= 0) return ['about the same cost'];
  const sum = money(Math.round(Math.abs(mean)), market.purse.currency);
  return [mean > 0 ? `${sum} more spent` : `${sum} saved`];
}

/** 'One cricket eaten costs €0.06.' */
function eatenWords({ line }: PlanStep, { names, market }: PlanNames): string {
  const cents = line.reason?.centsPerEaten ?? null;
  if (cents === null) return '';
  const one = preyName(names.species, line.species, 1);
  return `One ${one} eaten costs ${headPrice(cents, market.purse.currency)}.`;
}
