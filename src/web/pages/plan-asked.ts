/** A plan as it is asked for in an address: weeks and wishes, or a sentence about what cannot be. */
import { wishWords } from '../../../views/pages/plan-wishes.ts';
import { type PlanAsked, wishing } from '../../../views/plan-address.ts';
import type { PlanQuestion, Wish } from '../../husbandry/plan/index.ts';

const LEAST_WEEKS = 4;
const MOST_WEEKS = 26;
const MOST_AMOUNT = 1_000_000;
const MOST_WISHES = 100;

export interface AskedPlan {
  readonly asked: PlanAsked;
  /** Null where something is wrong with it. */
  readonly question: PlanQuestion | null;
  /** What is wrong, by field; under 'wishes' what two wishes say against each other. */
  readonly problems: Readonly<Record<string, string>>;
  /** A line was named with an amount: the question has it as a pin, and a better address. */
  readonly moved: boolean;
}

/** What a line is called, for a sentence about it. */
type Naming = (key: string) => string;

export function planAskedIn(query: URLSearchParams, weeksUsual: number, naming: Naming): AskedPlan {
  const weeks = weeksIn(query.get('weeks'), weeksUsual);
  const found = [...query.getAll('pin').map(pinIn), ...query.getAll('forbid').map(forbidIn)];
  const line = query.get('line');
  const moved = line !== null;
  const added = moved ? pinIn(`${line}:${query.get('amount') ?? ''}`) : null;
  const read = added === null ? found : [...found.filter(({ key }) => key !== added.key), added];
  const problems = {
    ...(weeks.ok ? {} : { weeks: weeks.sentence }),
    ...wishesAmiss(read, naming),
  };
  const asked = { weeks: weeks.ok ? weeks.weeks : weeksUsual, wishes: read.map(wishOf) };
  const isRight = Object.keys(problems).length === 0;
  return {
    asked: isRight ? asked : { ...asked, wishes: [...once(asked.wishes)] },
    question: isRight ? { ...asked, supposed: [] } : null,
    problems,
    moved,
  };
}

type Weeks =
  | { readonly ok: true; readonly weeks: number }
  | { readonly ok: false; readonly sentence: string };

export function weeksIn(text: string | null, usual: number): Weeks {
  if (text === null || text.trim() === '') return { ok: true, weeks: usual };
  const weeks = Number(text);
  return Number.isInteger(weeks) && weeks >= LEAST_WEEKS && weeks <= MOST_WEEKS
    ? { ok: true, weeks }
    : { ok: false, sentence: `"${text}" is not a number of weeks from ${LEAST_WEEKS} to ${MOST_WEEKS}.` };
}

/** A wish as read; `typed` is an amount that is none. */
interface WishRead extends Wish {
  readonly typed: string | null;
}

const wishOf = ({ key, wish, amount }: WishRead): Wish => ({ key, wish, amount });

/** 'key:5' or 'key:', which leaves the amount to the plan. */
function pinIn(text: string): WishRead {
  const at = text.lastIndexOf(':');
  const [key, typed] = at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at + 1).trim()];
  const amount = Number(typed);
  const isRight = Number.isInteger(amount) && amount > 0 && amount <= MOST_AMOUNT;
  return {
    key,
    wish: 'pin',
    amount: typed !== '' && isRight ? amount : null,
    typed: typed === '' || isRight ? null : typed,
  };
}

const forbidIn = (key: string): WishRead => ({ key, wish: 'forbid', amount: null, typed: null });

function wishesAmiss(read: readonly WishRead[], naming: Naming): AskedPlan['problems'] {
  const wrong = read.find(({ typed }) => typed !== null);
  if (wrong !== undefined)
    return {
      wishes: `"${wrong.typed}" is not a number of packs, heads, cups or weeks for “${naming(wrong.key)}”; write a whole number from 1 on.`,
    };
  if (read.length > MOST_WISHES)
    return { wishes: `${read.length} wishes are too many to plan with; keep at most ${MOST_WISHES}.` };
  return contradiction(read, naming);
}

/** Two wishes about one line. */
function contradiction(read: readonly WishRead[], naming: Naming): AskedPlan['problems'] {
  const later = read.find(({ key }, i) => read.findIndex((each) => each.key === key) < i);
  const first = read.find(({ key }) => key === later?.key);
  if (later === undefined || first === undefined) return {};
  const [said, against] = [wishWords(first), wishWords(later)];
  if (said === against) return {};
  return {
    wishes: `“${naming(later.key)}” is ${said} and ${against} at once; take one of the two back.`,
  };
}

/** One wish a line: the later stands. */
const once = (wishes: readonly Wish[]): readonly Wish[] =>
  wishes.reduce<PlanAsked>((asked, wish) => wishing(asked, wish), { weeks: 0, wishes: [] }).wishes;
