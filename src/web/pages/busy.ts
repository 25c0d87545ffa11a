/** When the check cannot be computed just now. */
import type { Context } from 'hono';
import { ErrorPage } from '../../../views/pages/error.tsx';
import type { Problem } from '../../husbandry/problems.ts';
import { page, type Visit } from './visit.ts';

const UNAVAILABLE = 503;
const AGAIN_AFTER_S = '3';

export function busy(c: Context, { shell }: Visit, { sentence }: Problem): Response | Promise<Response> {
  c.header('Retry-After', AGAIN_AFTER_S);
  const requestId = c.get('requestId') ?? '';
  return page(c, ErrorPage({ theme: shell.theme, sentence, advice: null, requestId }), UNAVAILABLE);
}
