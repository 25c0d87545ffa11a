/** Why a line is in the plan, in the keeper's words. */
import type { PlanLine, Reason } from '../../src/husbandry/plan/index.ts';
import { counted, dayRange, expected, headPrice, listed, money, roundly, shortDay } from '../format.ts';
import { preyName } from '../names.ts';
import { estimateWords } from './plan-service.ts';
import type { PlanSaid } from './plan-words.ts';

/** Sentences, one after the other; none where the line was not explained. */
export function reasonWords(line: PlanLine, said: PlanSaid): readonly string[] {
  const { reason } = line;
  if (reason === null) return [];
  const sentences = [feedsWords(reason), withoutWords(reason, said), eatenWords(line, reason, said)];
  return sentences.filter((sentence) => sentence !== '');
}

const FED_NAMED = 2;

/** 'Feeds spiderlings from Fri 4 Dec to Sun 20 Dec (about 210 items).' */
function feedsWords({ feeds }: Reason): string {
  const most = feeds.toSorted((a, b) => b.items - a.items);
  if (most.length === 0) return '';
  const named = most
    .slice(0, FED_NAMED)
    .map(
      ({ name, items, from, to }) =>
        `${name} ${from === to ? `on ${shortDay(from)}` : `from ${dayRange(from, to)}`} (${expected(items)} eaten)`,
    );
  const more = most.length - named.length;
  return `Feeds ${listed([...named, ...(more > 0 ? [counted(more, 'more group')] : [])])}.`;
}

/** 'Without it: 12 to 19 missed meals, and €9.40 saved.' */
function withoutWords({ without, makesLittleDifference }: Reason, said: PlanSaid): string {
  if (makesLittleDifference)
    return 'It makes little difference: without it nothing changes that could be told from chance.';
  const lost = [
    ...(roundly(without.missedMeals.high) >= 1 ? [estimateWords(without.missedMeals, 'missed meal')] : []),
    ...(roundly(without.dangers.high) >= 1
      ? [`${estimateWords(without.dangers, 'animal')} past what is safe`]
      : []),
  ];
  return `Without it: ${listed([...(lost.length === 0 ? ['no meal missed'] : lost), moneyWords(without.cents, said)])}.`;
}

function moneyWords({ mean, low, high }: Reason['without']['cents'], { market }: PlanSaid): string {
  const { currency } = market.purse;
  if (low <= 0 && high >= 0) return 'about the same cost';
  const sum = money(Math.round(Math.abs(mean)), currency);
  return mean > 0 ? `${sum} more spent` : `${sum} saved`;
}

/** 'One cricket eaten costs €0.06.' */
function eatenWords({ species }: PlanLine, { centsPerEaten }: Reason, { names, market }: PlanSaid): string {
  if (centsPerEaten === null) return '';
  return `One ${preyName(names.species, species, 1)} eaten costs ${headPrice(centsPerEaten, market.purse.currency)}.`;
}
