/** Serves every page drawn from the fixtures on the loopback, under the policy the program is served with. */
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { ownScript } from '../../src/web/own-script.ts';
import { ownStyle } from '../../src/web/own-style.ts';
import type { ThemeChoice } from '../../views/partials/theme.tsx';
import { pages } from './view-pages.tsx';

const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; form-action 'self'";
const HTMX = new URL('../../node_modules/htmx.org/dist/htmx.min.js', import.meta.url);

const ASSETS = fileURLToPath(new URL('../../views/assets', import.meta.url));
/** Sent in one piece, as the program does. */
const WHOLE: Readonly<Record<string, string>> = {
  '/assets/style.css': ownStyle(ASSETS, 'style.css'),
  '/assets/app.js': ownScript(ASSETS, 'app.js'),
  '/assets/htmx.js': readFileSync(HTMX, 'utf8'),
};

const asset = (path: string): string =>
  WHOLE[path] ?? readFileSync(new URL(`../../views${path}`, import.meta.url), 'utf8');

/** Pages that others ask for by their own address; the second is busy. */
const ADDRESSES: Readonly<Record<string, string>> = { '/larder/B1': 'bin' };
const BUSY_ADDRESS = '/larder/B2';
const BUSY = 503;

export interface ViewServer {
  readonly origin: string;
  /** Paths posted to, in order. */
  readonly posted: readonly string[];
  readonly close: () => Promise<void>;
}

/** A POST is noted and answered after 200 ms with the page of the same name. */
const ANSWER_AFTER_MS = 200;

export async function serveViews(): Promise<ViewServer> {
  const posted: string[] = [];
  const server: Server = createServer((request, response) => {
    const url = new URL(request.url ?? '/', 'http://127.0.0.1');
    if (url.pathname.startsWith('/assets/')) {
      response.setHeader('content-type', url.pathname.endsWith('.css') ? 'text/css' : 'text/javascript');
      response.end(asset(url.pathname));
      return;
    }
    if (request.method === 'POST') posted.push(url.pathname);
    const theme = (url.searchParams.get('theme') ?? 'light') as ThemeChoice;
    response.setHeader('content-type', 'text/html; charset=utf-8');
    response.setHeader('content-security-policy', POLICY);
    const body =
      pages(theme, url.searchParams.get('q') ?? '')[ADDRESSES[url.pathname] ?? url.pathname.slice(1)] ??
      'no such page';
    if (url.pathname === BUSY_ADDRESS) response.statusCode = BUSY;
    setTimeout(() => response.end(body), request.method === 'POST' ? ANSWER_AFTER_MS : 0);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    posted,
    close: () => new Promise((done) => server.close(() => done())),
  };
}
