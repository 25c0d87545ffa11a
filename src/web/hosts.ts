/** The allow-list of names this server answers to, so that no page elsewhere can pass it off as its own. */
import { hostname, networkInterfaces } from 'node:os';
import type { MiddlewareHandler } from 'hono';
import type { DoorEnv } from './door.ts';
import type { Refuse } from './refusal.ts';

const MISDIRECTED = 421;

/** Addresses of this machine on its networks, and its name. */
export function ownNames(): readonly string[] {
  const addresses = Object.values(networkInterfaces()).flatMap((each) => each ?? []);
  const name = hostname().toLowerCase();
  return [...addresses.map(({ address }) => address.toLowerCase()), name, `${name}.local`];
}

/** The name in a Host header: without port, brackets and closing dot. */
function nameIn(host: string): string {
  const bracketed = /^\[([^\]]+)\]/.exec(host);
  return (bracketed?.[1] ?? host.replace(/:\d+$/, '')).replace(/\.$/, '').toLowerCase();
}

const isLoopback = (name: string): boolean =>
  name === 'localhost' || name.endsWith('.localhost') || name === '::1' || /^127(\.\d{1,3}){3}$/.test(name);

/** Lets through requests that call this server by a name it has; `names` is asked anew as addresses change. */
export const onlyKnownHosts =
  (names: () => readonly string[], refuse: Refuse): MiddlewareHandler<DoorEnv> =>
  async (c, next) => {
    const name = nameIn(c.req.header('host') ?? new URL(c.req.url).host);
    if (isLoopback(name) || names().includes(name)) return next();
    return refuse(
      c,
      MISDIRECTED,
      `This server is not called "${name}". Use its address, or name it in PREYLARDER_HOST.`,
    );
  };
