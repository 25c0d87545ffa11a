/** What was done last, offered for undoing: an evening recorded shelf by shelf is one step. */
import type { Context } from 'hono';
import type { LastStep } from '../../../views/layout.tsx';
import type { Names } from '../../../views/names.ts';
import { eveningOfAct, stepWords } from '../../actions/index.ts';
import {
  type Act,
  actsNumbered,
  actsOfEvening,
  isUndo,
  latestActs,
  restingUpon,
  withResting,
} from '../../store/index.ts';
import { timesShown } from './cookies.ts';
import type { House } from './house.ts';
import { hasCode, inNames, namesOnRecord } from './names.ts';

/** So long the last step stands at the foot of every page. */
export const DAYS_KEPT_CLOSE = 30;
/** So long and on so many pages it stands at their head. */
const FRESH_FOR_MS = 900_000;
const PAGES_SHOWN_ON = 2;

export async function lastStep(house: House, c: Context, names: Names): Promise<LastStep | null> {
  const { store, clock } = house.context;
  const last = (await store.ask(latestActs(2))).find(byKeeper);
  const { today, moment } = clock();
  if (last === undefined || last.voidedAt !== null || last.day < today - DAYS_KEPT_CLOSE) return null;
  const acts = await stepOf(house, last);
  const fresh = Date.parse(moment) - Date.parse(last.writtenAt) < FRESH_FOR_MS;
  return {
    id: acts.map(({ id }) => id).join(','),
    label: await told(house, await stepWords(store.ask, acts), names),
    again: isUndo(last),
    calm: timesShown(c, last.id) > PAGES_SHOWN_ON || !fresh,
  };
}

/** In names; those of who left are looked up only where a code is left standing. */
async function told({ context }: House, words: string, names: Names): Promise<string> {
  const label = inNames(words, names);
  return hasCode(label) ? inNames(words, await namesOnRecord(context.store, context.facts)) : label;
}

/** The room every house has is made by the program itself. */
const byKeeper = ({ verb }: Act): boolean => verb !== 'first-room';

/** The other acts of its evening with it, unless something rests on one of them. */
async function stepOf({ context: { store } }: House, last: Act): Promise<readonly Act[]> {
  const evening = last.undoes === null ? eveningOfAct(last) : null;
  if (evening === null) return [last];
  const ids = await store.ask(actsOfEvening(last.verb, evening));
  const all = withResting(await restingUpon(store.ask, ids), ids);
  return all.size > ids.length ? [last] : store.ask(actsNumbered(ids));
}
