/** The door with two rooms behind it: one to read, one to write. */
import type { Hono } from 'hono';
import { createApp, type DoorEnv, setPassword } from '../../src/web/index.ts';
import { freshContext, good, type Room } from './store-at.ts';

const PASSWORD = 'eight legs good';
const ROOT = new URL('../..', import.meta.url).pathname;

export interface Door {
  readonly room: Room;
  readonly app: Hono<DoorEnv>;
  readonly lines: readonly Readonly<Record<string, unknown>>[];
}

/** An app; with `locked` it asks for the password. */
export async function door({ locked = false, hostNames = [] as readonly string[] } = {}): Promise<Door> {
  const room = await freshContext();
  const lines: Readonly<Record<string, unknown>>[] = [];
  if (locked) good(await setPassword(room.store, PASSWORD));
  const app = createApp(room, {
    root: ROOT,
    locked,
    hostNames,
    pages: {
      failure: ({ sentence, requestId }) => `<h1>${sentence}</h1><code>${requestId}</code>`,
      login: ({ next, problem }) => `<form data-next="${next}">${problem?.sentence ?? ''}</form>`,
    },
    log: (line) => lines.push(line),
    mount: (behind) => {
      behind.get('/', (c) => c.text('home'));
      behind.get('/broken', () => {
        throw new Error('select secret from table');
      });
      behind.post('/write', async (c) => c.text(`written ${(await c.req.text()).length}`));
    },
  });
  return { room, app, lines };
}

export const FORM = { 'content-type': 'application/x-www-form-urlencoded' };
export const OWN = { ...FORM, origin: 'http://localhost' };
export const PAGE = { accept: 'text/html' };

/** Logs in and returns the cookie. */
export async function comeIn({ app }: Door, password = PASSWORD): Promise<Response> {
  const body = new URLSearchParams({ password, next: '/' }).toString();
  return app.request('/login', { method: 'POST', headers: { ...OWN, ...PAGE }, body });
}

/** The cookie an answer set, as a browser sends it back. */
export const cookieOf = (answer: Response): string => (answer.headers.get('set-cookie') ?? '').split(';')[0]!;
