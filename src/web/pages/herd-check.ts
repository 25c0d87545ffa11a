/** What an act on many animals will change, in words, before it is done. */
import { counted, fewOf } from '../../../views/format.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import { type Problem, problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Seen } from './herd.ts';
import type { Filled } from './herd-acts.ts';
import { dayIn, type Planned, planOf } from './herd-plans.ts';
import type { Herd } from './herd-visit.ts';

export interface Checked {
  /** '14 animals move to Shelf B of the Warm room; 3 are there already.' */
  readonly headline: string;
  /** What else follows, a sentence each. */
  readonly follows: readonly string[];
  /** On the button: 'Move 14 animals'. */
  readonly button: string;
  readonly changing: readonly Seen[];
}

/** The words of an act, or what is wrong with it: a room not known, nobody who would change. */
export function checked(here: Herd, chosen: readonly Seen[], filled: Filled): Result<Checked> {
  const wrong = whatIsWrong(here, filled);
  if (wrong !== null) return err(wrong);
  const plan = planOf(here, chosen, filled);
  const changing = chosen.filter((seen) => !plan.isSo(seen));
  const same = chosen.length - changing.length;
  if (changing.length === 0) return err(problem('nothing-changes', allAreSo(chosen.length, plan)));
  const verb = changing.length === 1 ? plan.one : plan.many;
  const rest = same === 0 ? '' : `; ${counted(same, 'is', 'are')} ${plan.already} already`;
  return ok({
    headline: `${animalsWords(changing)} ${verb}${rest}.`,
    follows: plan.follows,
    button: `${plan.button} ${counted(changing.length, 'animal')}`,
    changing,
  });
}

const allAreSo = (n: number, { already }: Planned): string =>
  n === 1
    ? `It is ${already} already: nothing would change.`
    : `All ${n} are ${already} already: nothing would change.`;

/** '14 animals', with their heads where some are groups. */
export function animalsWords(chosen: readonly Seen[]): string {
  const heads = chosen.reduce((sum, { animal }) => sum + animal.count, 0);
  const records = chosen.length.toLocaleString('en-GB');
  const words = `${records} ${chosen.length === 1 ? 'animal' : 'animals'}`;
  return heads === chosen.length
    ? words
    : `${words} (${heads.toLocaleString('en-GB')} heads with the groups)`;
}

function whatIsWrong({ snapshot, names }: Herd, filled: Filled): Problem | null {
  if (filled.act === 'move') {
    if (filled.room === '' && filled.shelf === '')
      return problem('no-place', 'Choose a room, write a shelf, or both.', 'shelf');
    if (filled.room !== '' && !names.rooms.has(filled.room))
      return problem('unknown-room', `There is no room "${filled.room}" here.`, 'room');
  }
  if (filled.act === 'kind' && !snapshot.facts.kinds.has(filled.kind))
    return problem('unknown-kind', `"${filled.kind}" is not a kind of animal in the Book.`, 'kind');
  return wrongDays(filled, snapshot.today);
}

function wrongDays(filled: Filled, today: DayNumber): Problem | null {
  if (!('day' in filled)) return null;
  const day = dayIn(filled.day);
  if (day > today) return problem('after-today', `"${filled.day}" is after today.`, 'day');
  const back = 'back' in filled && filled.back !== undefined ? dayIn(filled.back) : null;
  return back !== null && back < day
    ? problem(
        'ends-swapped',
        `"${'back' in filled ? filled.back : ''}" is before they leave (${filled.day}).`,
        'back',
      )
    : null;
}

/** A few names, and how many more. */
export const fewNames = (chosen: readonly Seen[], names: ReadonlyMap<string, string>): string =>
  fewOf(
    chosen.map(({ animal }) => names.get(animal.code) ?? animal.code),
    NAMES_SHOWN,
  );
const NAMES_SHOWN = 12;
