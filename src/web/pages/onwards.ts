/** After a button that is all there is to its form: on to a page, with what went wrong said there. */
import type { Context } from 'hono';
import type { Result } from '../../husbandry/result.ts';
import { sayNext } from './cookies.ts';

export const formIdOf = async (c: Context): Promise<string | undefined> => {
  const { formId } = await c.req.parseBody();
  return typeof formId === 'string' && formId !== '' ? formId : undefined;
};

/** A Problem is said on the next page. */
export function onwards(c: Context, done: Result<unknown>, path: string): Response {
  if (!done.ok) sayNext(c, 'problem', done.problem.sentence);
  return c.redirect(path, 303);
}
