/** Style sheets, scripts and pictures: read once, sent with their type and a tag that changes with their bytes. */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { Hono } from 'hono';
import type { DoorEnv } from './door.ts';
import { ownScript } from './own-script.ts';
import { ownStyle } from './own-style.ts';

interface Asset {
  readonly body: Uint8Array<ArrayBuffer>;
  readonly type: string;
  /** A digest of the bytes. */
  readonly tag: string;
}

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};
const HTMX = ['node_modules', 'htmx.org', 'dist', 'htmx.min.js'];
/** Each is sent in one piece with all that it imports. */
const WHOLE: Readonly<Record<string, (folder: string, name: string) => string>> = {
  'app.js': ownScript,
  'style.css': ownStyle,
};
const TAG_LENGTH = 16;

/** Routes under /assets; `?v=` with the right tag may be kept for ever. */
export function assetRoutes(root: string): Hono<DoorEnv> {
  const assets = readAssets(root);
  return new Hono<DoorEnv>().get('/:name', (c) => {
    const asset = assets.get(c.req.param('name'));
    if (asset === undefined) return c.notFound();
    const forEver = c.req.query('v') === asset.tag;
    const headers = {
      ETag: `"${asset.tag}"`,
      'Cache-Control': forEver ? 'public, max-age=31536000, immutable' : 'public, no-cache',
    };
    if (c.req.header('if-none-match')?.includes(`"${asset.tag}"`)) return c.body(null, 304, headers);
    return c.body(asset.body, 200, { ...headers, 'Content-Type': asset.type });
  });
}

function readAssets(root: string): ReadonlyMap<string, Asset> {
  const folder = join(root, 'views', 'assets');
  const names = existsSync(folder)
    ? readdirSync(folder).filter((name) => TYPES[extname(name)] !== undefined)
    : [];
  const own = names.map((name) => {
    const bytes = wholeOrNull(folder, name) ?? readFileSync(join(folder, name));
    return [name, assetOf(name, bytes)] as const;
  });
  return new Map([...own, ['htmx.js', assetOf('htmx.js', readFileSync(join(root, ...HTMX)))]]);
}

function wholeOrNull(folder: string, name: string): Buffer | null {
  const whole = WHOLE[name];
  return whole === undefined ? null : Buffer.from(whole(folder, name));
}

function assetOf(name: string, bytes: Buffer): Asset {
  const body = new Uint8Array(bytes);
  const tag = createHash('sha256').update(body).digest('hex').slice(0, TAG_LENGTH);
  return { body, type: TYPES[extname(name)]!, tag };
}
