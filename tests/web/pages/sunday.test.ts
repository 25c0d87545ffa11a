/** Sunday comes at once: the act that helps most follows, and the picture moves through the coming weeks. */
import { expect, test } from 'vitest';
import { addAnimal, askCover, askPlan } from '../../../src/actions/index.ts';
import type { PlanLine } from '../../../src/husbandry/plan/index.ts';
import { ok } from '../../../src/husbandry/result.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';
import { plan, restLine } from '../../support/view-plan.ts';

/** A room with more spiderlings than there are crickets for. */
async function shortHome(gaugeMm = 20): Promise<Home> {
  const home = await filledHome();
  const spiderlings = { kind: 'brachypelma-hamorii', room: 'R1', count: 200, gaugeMm };
  good(await addAnimal(home.room, { ...spiderlings, name: 'Sac', lastTaken: home.room.date(-9) }));
  return home;
}

test('the page does not wait for the act: it asks for it, and shows it once it is known', async () => {
  const home = await shortHome();
  const first = await home.see('/');
  expect(words(first)).toContain('Trying what would help most');
  expect(first).toContain('data-hx-get="/act"');
  const act = await home.see('/act');
  expect(words(act)).toMatch(/^Do this /);
  const then = await home.see('/');
  expect(then).not.toContain('Trying what would help most');
  expect(words(then)).toContain(words(act));
});

test('without script the act can be waited for', async () => {
  const home = await shortHome();
  expect(await home.see('/')).toContain('href="/?act=1"');
  const waited = await home.see('/?act=1');
  expect(waited).not.toContain('Trying what would help most');
  expect(words(waited)).toContain('Do this');
});

test('where no act helps it says so', async () => {
  const home = await shortHome(5);
  expect(words(await home.see('/act'))).toContain('No single act tried here helps.');
});

test('a room that lasts has no act to wait for', async () => {
  const home = await filledHome();
  const page = await home.see('/');
  expect(page).not.toContain('Trying what would help most');
});

test('the picture moves to a coming week, by the page and alone', async () => {
  const home = await filledHome();
  expect(words(await home.see('/'))).not.toContain('In 2 weeks');
  const page = words(await home.see('/?week=2'));
  expect(page).toMatch(/In 2 weeks, from \w{3} \d+ \w{3}: /);
  const alone = await home.see('/weeks?week=2');
  expect(words(alone)).toMatch(/In 2 weeks, from/);
  expect(alone).not.toContain('<html');
});

test('a week that is none shows this one; one too far shows the last', async () => {
  const home = await filledHome();
  expect(words(await home.see('/?week=soon'))).not.toMatch(/In \d+ weeks/);
  expect(words(await home.see('/?week=99'))).toContain('In 5 weeks, from');
  expect(words(await home.see('/weeks?week=-1'))).toContain('This week, from');
});

/** A home whose plan of twelve weeks is the invented one, made today, a Friday, of the room as it is; its lines are due on these days from today. */
async function plannedHome(
  dueIn: (line: PlanLine, i: number) => number,
  { feedsFrom = 0, more = [] }: { feedsFrom?: number; more?: readonly PlanLine[] } = {},
): Promise<Home> {
  const home = await shortHome();
  const { today } = home.room.clock();
  const { groups } = good(await askCover(home.room)).answer;
  const { key, name } = groups.find(({ dangers }) => dangers > 0)!;
  const feeds = [{ group: key, name, items: 10, from: today + feedsFrom, to: today + feedsFrom + 6 }];
  const lines = [...plan.lines, ...more].map((line, i) => ({
    ...line,
    actBy: today + dueIn(line, i),
    reason: line.reason && { ...line.reason, feeds },
  }));
  const made = { ...plan, lines, revision: await home.acts(), day: today };
  const question = { weeks: 12, wishes: [], supposed: [] };
  good(await askPlan(home.room, question, { answering: async () => ok(made as never) }));
  return home;
}

test('with a plan of the room as it is, Sunday does what the plan asks for before the next Sunday, the most urgent first', async () => {
  const { see } = await plannedHome((_, i) => (i === 1 ? 0 : i === 0 ? 1 : 9));
  const html = await see('/');
  const acts = words(html.slice(html.indexOf('aria-labelledby="act"')));
  expect(html).not.toContain('data-hx-get="/act"');
  const [first, second] = [plan.lines[1]!, plan.lines[0]!].map((line) => VERB[line.what]);
  expect(acts).toContain(`Do this ${first}`);
  expect(acts).toMatch(
    new RegExp(`^.*today before 12:00\\..*Then 1 more step before Sunday ${second}.*by tomorrow`),
  );
  expect(html).toContain('href="/plan"');
});

test('a plan that feeds those who run short only later leaves the act of tonight first', async () => {
  const { see } = await plannedHome(() => 0, { feedsFrom: 20 });
  expect(words(await see('/'))).toContain('Trying what would help most');
});

test('a plan with nothing to do this week leaves the act as it is looked for', async () => {
  const { see } = await plannedHome(() => 9);
  expect(words(await see('/'))).toContain('Trying what would help most');
});

test('a plan of the room before its last change does not speak for it', async () => {
  const { see, room } = await plannedHome(() => 0);
  good(await addAnimal(room, { name: 'Newcomer', kind: 'brachypelma-hamorii', room: 'R1', gaugeMm: 30 }));
  expect(words(await see('/'))).toContain('Trying what would help most');
});

test('what is left alone asks for nothing to be done, so it comes last', async () => {
  const calm = await plannedHome((line, i) => (line.what === 'rest' ? 0 : i === 0 ? 1 : 9), {
    more: [restLine],
  });
  const html = await calm.see('/');
  const acts = words(html.slice(html.indexOf('aria-labelledby="act"')));
  expect(acts).toMatch(
    /^.*Do this Order .*Then 1 more step before Sunday Leave .* alone until .*, from today/,
  );
});

const VERB = { order: 'Order', harvest: 'Harvest', cull: 'Cull', start: 'Start', rest: 'Leave' } as const;
