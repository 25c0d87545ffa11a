/** The method page: its topics, the numbers of the method with their forms, and those that are not for changing. */
import type { Context, Hono } from 'hono';
import { MethodPage } from '../../../views/pages/method.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import type { SourceLine } from '../../../views/partials/sources.tsx';
import { paths } from '../../../views/paths.ts';
import { methodNumbers } from '../../facts/own/method-numbers.ts';
import { METHOD } from '../../husbandry/own-numbers.ts';
import type { Policy } from '../../husbandry/policy.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { numberRoutes, numbersShown } from './number-acts.ts';
import { lineOf } from './source-line.ts';
import { page, statusOf, visit } from './visit.ts';

const at = {
  codeOf: () => METHOD,
  page: () => paths.method,
  act: (_: string, act: Parameters<typeof paths.methodAct>[0]) => paths.methodAct(act),
};

export function methodRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.method, (c) => showMethod(house, c));
  numberRoutes(app, house, { ...at, again: (c, refused) => showMethod(house, c, refused) });
}

async function showMethod(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const open = refused?.values.group ?? c.req.query('change') ?? '';
  const props = {
    ...here,
    ...(await numbersShown(house, here, { code: METHOD, open, at })),
    fixed: fixedLines(here.snapshot.facts.policy),
  };
  return page(c, MethodPage(props), statusOf(refused !== null));
}

/** Every other number of the method, told by its name. */
function fixedLines(policy: Policy): readonly SourceLine[] {
  const own = new Set(methodNumbers(policy).map(({ path }) => path[0]));
  return Object.entries(policy as unknown as Readonly<Record<string, Sourced<unknown>>>)
    .filter(([name, { value }]) => !own.has(name) && typeof value === 'number')
    .map(([name, number]) => lineOf(spoken(name), number, valueWords(number)));
}

const spoken = (name: string): string =>
  name
    .replace(/(Mm|C|Days)$/, '')
    .replace(/(?<=[a-z0-9])(?=[A-Z])/g, ' ')
    .toLowerCase();

const valueWords = ({ value, unit }: Sourced<unknown>): string =>
  unit === '1' ? `${value}` : `${value} ${unit === 'C' ? '°C' : unit}`;
