/** A plan's question as an address that can be kept: how many weeks, what is insisted on, what is supposed. */
import { civilDate } from '../src/husbandry/calendar.ts';
import type { PlanQuestion, Supposed, Wish } from '../src/husbandry/plan/index.ts';
import { paths } from './paths.ts';

/** What the plan page asks: nothing is supposed there. */
export type PlanAsked = Pick<PlanQuestion, 'weeks' | 'wishes'>;

/** 'weeks=12&pin=key%3A5&forbid=key'; a pin without an amount ends in a colon. */
export function planQuery({ weeks, wishes }: PlanAsked, more: Readonly<Record<string, string>> = {}): string {
  const query = new URLSearchParams({ weeks: `${weeks}` });
  for (const { key, wish, amount } of wishes)
    query.append(wish, wish === 'pin' ? `${key}:${amount ?? ''}` : key);
  for (const [name, value] of Object.entries(more)) query.set(name, value);
  return query.toString();
}

export const planAt = (asked: PlanAsked, more: Readonly<Record<string, string>> = {}): string =>
  `${paths.plan}?${planQuery(asked, more)}`;

/** The same question with a wish, in place of any other about the same line. */
export const wishing = <T extends PlanAsked>(asked: T, wish: Wish): T => ({
  ...asked,
  wishes: [...withoutWish(asked, wish.key).wishes, wish],
});

export const withoutWish = <T extends PlanAsked>(asked: T, key: string): T => ({
  ...asked,
  wishes: asked.wishes.filter((each) => each.key !== key),
});

/** One thing supposed, as it stands in an address: 'warmer:2', 'away:2026-12-10:2026-12-20'. */
function supposedText(supposed: Supposed): string {
  switch (supposed.what) {
    case 'warmer':
      return `warmer:${supposed.degrees}`;
    case 'away':
      return `away:${civilDate(supposed.from)}:${civilDate(supposed.to)}`;
    case 'sac':
      return `sac:${supposed.kind}:${supposed.young}:${civilDate(supposed.day)}`;
    case 'sell':
      return `sell:${supposed.kind}:${supposed.heads}:${civilDate(supposed.day)}`;
    case 'supplier stops':
      return `stops:${supposed.supplier}`;
    case 'bin dies':
      return `dies:${supposed.bin}`;
    case 'price':
      return `price:${supposed.offer}:${supposed.percent}`;
    case 'without':
      return `without:${supposed.key}`;
    case 'weather':
      return `weather:${civilDate(supposed.from)}:${civilDate(supposed.to)}:${supposed.tempC}`;
  }
}

export const AND = ',';

export interface WhatIfAsked {
  readonly weeks: number;
  /** Each is planned beside the others; what stands in one is supposed together. */
  readonly ifs: readonly (readonly Supposed[])[];
}

export function whatIfQuery({ weeks, ifs }: WhatIfAsked): string {
  const query = new URLSearchParams({ weeks: `${weeks}` });
  for (const together of ifs) query.append('if', together.map(supposedText).join(AND));
  return query.toString();
}

export const whatIfAt = (asked: WhatIfAsked): string => `${paths.whatIf}?${whatIfQuery(asked)}`;

export const withoutIf = ({ weeks, ifs }: WhatIfAsked, at: number): WhatIfAsked => ({
  weeks,
  ifs: ifs.filter((_, i) => i !== at),
});
