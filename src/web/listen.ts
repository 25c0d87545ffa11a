/** Listens on an address and stops in good order. */
import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { type ServerType, serve } from '@hono/node-server';
import type { Hono } from 'hono';
import type { DoorEnv } from './door.ts';

/** Requests under way get this long before they are cut off. */
const PATIENCE_MS = 4000;

export interface Listening {
  readonly port: number;
  /** Takes no more requests and waits for those under way. */
  readonly stop: () => Promise<void>;
}

export async function listen(app: Hono<DoorEnv>, host: string, port: number): Promise<Listening> {
  const server = serve({ fetch: app.fetch, hostname: host, port });
  if (!server.listening) await once(server, 'listening');
  return { port: (server.address() as AddressInfo).port, stop: () => stop(server) };
}

async function stop(server: ServerType): Promise<void> {
  const closed = once(server, 'close');
  server.close();
  if ('closeIdleConnections' in server) server.closeIdleConnections();
  const cut = setTimeout(() => 'closeAllConnections' in server && server.closeAllConnections(), PATIENCE_MS);
  await closed;
  clearTimeout(cut);
}
