/** Answers a request that is turned away, as the asker can read it: a page, JSON or a line of text. */
import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import { problem } from '../husbandry/problems.ts';
import type { DoorEnv, DoorPages } from './door.ts';

export type Refuse = (
  c: Context<DoorEnv>,
  status: ContentfulStatusCode,
  sentence: string,
) => Response | Promise<Response>;

export const refuseWith =
  (pages: DoorPages): Refuse =>
  (c, status, sentence) => {
    const requestId = c.get('requestId');
    const accepts = c.req.header('accept') ?? '';
    if (accepts.includes('text/html')) return c.html(pages.failure({ sentence, requestId }), status);
    if (accepts.includes('json')) return c.json({ ...problem('refused', sentence), requestId }, status);
    return c.text(`${sentence} (request ${requestId})\n`, status);
  };
