import { mkdirSync } from 'node:fs';
import { startProgram } from './built-program.ts';
import { launchChromium } from './chromium.ts';

const dir = process.argv[2] ?? '/tmp/realshots';
mkdirSync(dir, { recursive: true });
const database = '/tmp/binpage-demo.db';
const program = await startProgram({ database });
const at = program.address.replace(/\/$/, '');
const timed = async (path: string) => {
  const t = performance.now();
  const r = await fetch(at + path);
  const body = await r.text();
  console.log(path, r.status, Math.round(performance.now() - t), 'ms', body.length);
  return body;
};
await timed('/larder');
const larder = await timed('/larder');
const bins = [...larder.matchAll(/href="(\/larder\/B[^"?]*)">([^<]*)/g)].map((m) => [m[1]!, m[2]!] as const);
console.log(bins.map((b) => b.join(' ')).join(' | '));
const strip = (h: string) =>
  h
    .replace(/<(script|style|svg)[\s\S]*?<\/\1>/g, '')
    .replace(/<details class="(numbers|sources)[\s\S]*?<\/details>/g, '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ');
for (const [path, name] of bins) {
  await timed(path);
  const whole = await timed(`${path}?wait=1`);
  const main = whole.slice(whole.indexOf('id="bin-answer"'), whole.indexOf('What do you see'));
  console.log('   ', name, '::', strip(main).slice(0, 1500));
}
const l = strip(larder);
console.log(l.slice(l.indexOf('Alive here'), l.indexOf('On its way')));
const browser = await launchChromium();
const shoot = async (path: string, name: string, width: number, dark: boolean) => {
  const page = await browser.newPage({
    viewport: { width, height: width < 500 ? 844 : 800 },
    colorScheme: dark ? 'dark' : 'light',
  });
  page.on('console', (m) => console.log(name, m.text()));
  await page.goto(at + path);
  await page.waitForTimeout(2500);
  await page.screenshot({ path: `${dir}/${name}-${width}${dark ? '-dark' : ''}.png`, fullPage: true });
  await page.close();
};
const wanted = process.argv.slice(3);
for (const [path, name] of bins)
  if (wanted.some((w) => name.includes(w))) {
    await shoot(path, name.replace(/\W+/g, '_'), 1280, false);
    await shoot(path, name.replace(/\W+/g, '_'), 390, true);
  }
const colony = bins.find(([, name]) => name === 'Pinhead tub')!;
const form = /name="formId" value="([^"]+)"/.exec(await timed(colony[0]))![1]!;
const sent = await fetch(`${at}${colony[0]}/die-off`, {
  method: 'POST',
  redirect: 'manual',
  headers: { origin: at, 'content-type': 'application/x-www-form-urlencoded' },
  body: new URLSearchParams({
    formId: `${form}x`,
    left: '0',
    day: new Date(Date.now() - 4 * 3600_000).toISOString().slice(0, 10),
  }),
});
console.log(sent.status, sent.headers.get('location'), (await sent.text()).slice(0, 200));
const after = await timed(`${colony[0]}?wait=1`);
console.log(strip(after.slice(after.indexOf('id="bin-answer"'))).slice(0, 1800));
await shoot(colony[0], 'crash', 390, false);
await shoot(colony[0], 'crash', 1280, true);
await shoot('/larder', 'larder', 1280, true);
await shoot('/larder', 'larder', 390, false);
await browser.close();
await program.stop();
