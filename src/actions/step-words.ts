/** Several acts told as one step: an evening recorded shelf by shelf, or an act with what rested on it. */
import { parseCivilDate } from '../husbandry/calendar.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { type Act, EVENING_VERBS, type RoundCount, roundCount, type Tx } from '../store/index.ts';

/** The evening an act belongs to, as a date; null for any other act. */
export const eveningOfAct = ({ verb, reply }: Pick<Act, 'verb' | 'reply'>): string | null =>
  EVENING_VERBS.includes(verb) ? ((reply as { evening?: string } | null)?.evening ?? null) : null;

/** 'Round of Thu 5 Mar: 148 fed, 12 not', or 'Ash moulted, with 2 more'. */
export async function stepWords(ask: Tx['ask'], acts: readonly Act[]): Promise<string> {
  const [first] = acts;
  if (first === undefined) return '';
  if (acts.length === 1) return first.summary;
  const evening = eveningOfAct(first);
  const isOne = acts.every((act) => act.verb === first.verb && eveningOfAct(act) === evening);
  if (evening === null || !isOne) return `${first.summary}, with ${acts.length - 1} more`;
  return eveningWords(evening, first.verb, await ask(roundCount(acts.map(({ id }) => id))));
}

function eveningWords(evening: string, verb: string, { offered, not, closed, named }: RoundCount): string {
  const day = parseCivilDate(evening);
  const spoken = day.ok ? spokenDay(day.value) : evening;
  if (verb === 'record-evening') return `Round of ${spoken}: ${offered} fed, ${not} not`;
  const ate = named === 0 ? `${closed} ate` : `${closed - named} ate, ${named} otherwise`;
  return `Morning after ${spoken}: ${ate}`;
}
