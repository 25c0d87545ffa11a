/** Wishes in words: what a line is called by its key alone, and what is wished of it. */
import { parseCivilDate } from '../../src/husbandry/calendar.ts';
import type { Wish } from '../../src/husbandry/plan/index.ts';
import { counted, shortDay } from '../format.ts';
import { nameOf, preyName, sizedPrey } from '../names.ts';
import { amountWords, type PlanNames, supplierName } from './plan-words.ts';

const REST = 'rest:';
const CULL = /^cull:([^:]+):(room|males)$/;
const KEY = /^(order|start):([^:@]+)@(\d{4}-\d{2}-\d{2})$/;

/** What a line is called by its key alone, whether or not it is in a plan: 'small house crickets from Marrowgate Feeders, leaving Wed 25 Nov'. */
export function keyWords(key: string, said: PlanNames): string {
  const { names } = said;
  if (key.startsWith(REST)) return `leaving ${restedBin(key, said)} alone`;
  const [, culled, why] = CULL.exec(key) ?? [];
  if (culled !== undefined)
    return `culling ${why === 'males' ? 'males' : 'for room'} from ${nameOf(names.bins, culled)}`;
  const [, what, code = '', date = ''] = KEY.exec(key) ?? [];
  const day = parseCivilDate(date);
  if (!day.ok) return key;
  if (what === 'start') return `cups of ${preyName(names.species, code)} on ${shortDay(day.value)}`;
  return `${offerWords(code, said)}, leaving ${shortDay(day.value)}`;
}

const restedBin = (key: string, { names }: PlanNames): string => nameOf(names.bins, key.slice(REST.length));

function offerWords(code: string, { names, market }: PlanNames): string {
  const offer = market.offers.find((each) => each.code === code);
  if (offer === undefined) return 'an offer no longer here';
  const prey = sizedPrey(offer.size, preyName(names.species, offer.species));
  return `${prey} from ${supplierName(market, offer.supplier)}`;
}

/** 'Pinned: leave Roach tub alone for 1 week', 'Forbidden: cups of large fruit flies on Sun 6 Oct'. */
export function wishSentence({ key, wish, amount }: Wish, said: PlanNames): string {
  if (wish === 'forbid') return `Forbidden: ${keyWords(key, said)}`;
  if (key.startsWith(REST)) {
    const weeks = amount === null ? '' : ` for ${counted(amount, 'week')}`;
    return `Pinned: leave ${restedBin(key, said)} alone${weeks}`;
  }
  const words = keyWords(key, said).replace(/^cups of /, '');
  const what = whatOf(key);
  if (amount === null || what === null) return `Pinned: ${keyWords(key, said)}`;
  return `Pinned: ${amountWords({ what }, amount)} of ${words}`;
}

/** 'pinned at 5 packs', 'pinned', 'forbidden'. */
export function wishWords({ key, wish, amount }: Wish): string {
  if (wish === 'forbid') return 'forbidden';
  const what = whatOf(key);
  if (amount === null) return 'pinned';
  return `pinned at ${what === null ? amount : amountWords({ what }, amount)}`;
}

function whatOf(key: string): 'order' | 'start' | 'rest' | null {
  if (key.startsWith(REST)) return 'rest';
  const what = KEY.exec(key)?.[1];
  return what === 'order' || what === 'start' ? what : null;
}
