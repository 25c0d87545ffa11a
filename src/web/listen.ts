/** Listens on an address and stops in good order. */
import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { type ServerType, serve } from '@hono/node-server';
import type { Hono } from 'hono';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { DoorEnv } from './door.ts';

/** Requests under way get this long before they are cut off. */
const PATIENCE_MS = 4000;

export interface Listening {
  readonly port: number;
  /** Takes no more requests and waits for those under way. */
  readonly stop: () => Promise<void>;
}

export async function listen(app: Hono<DoorEnv>, host: string, port: number): Promise<Result<Listening>> {
  const server = serve({ fetch: app.fetch, hostname: host, port });
  try {
    if (!server.listening) await once(server, 'listening');
  } catch (error) {
    return err(cannotListen(port, (error as NodeJS.ErrnoException).code ?? String(error)));
  }
  return ok({ port: (server.address() as AddressInfo).port, stop: () => stop(server) });
}

function cannotListen(port: number, cause: string): Problem {
  const known: Readonly<Record<string, string>> = {
    EADDRINUSE: `Port ${port} is in use by another program. Stop it, or set PORT to another number.`,
    EACCES: `Port ${port} may not be used by this user. Set PORT to a number above 1023, such as 8181.`,
  };
  return problem('cannot-listen', known[cause] ?? `Port ${port} cannot be listened on (${cause}).`);
}

async function stop(server: ServerType): Promise<void> {
  const closed = once(server, 'close');
  server.close();
  if ('closeIdleConnections' in server) server.closeIdleConnections();
  const cut = setTimeout(() => 'closeAllConnections' in server && server.closeAllConnections(), PATIENCE_MS);
  await closed;
  clearTimeout(cut);
}
