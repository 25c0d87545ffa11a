/** Forms: what is good becomes one act; what is not is said beside its field, and nothing changes. */
import { describe, expect, test } from 'vitest';
import { loadSnapshot } from '../../../src/actions/index.ts';
import { type Fields, filledHome, type Home } from '../../support/house.ts';

const DAY = '2024-10-04';
const WEEK = ['0', '3'];
const animal: Fields = {
  name: 'Birch',
  kind: 'brachypelma-hamorii',
  count: '1',
  sex: 'unsexed',
  gauge: '1 3/4 in',
  room: 'R1',
  shelf: 'B1',
  lastMoult: '2024-08-01',
  lastTaken: '',
};
const bin: Fields = {
  name: 'Roach tub',
  role: 'holding',
  species: 'blaptica-dubia',
  room: 'R1',
  capacity: '300',
};
/** A size of the crickets in B1 and B2. */
const CRICKETS = 'acheta-domesticus|1/4 in';
const change: Fields = {
  kind: 'arrival',
  animalKind: 'brachypelma-hamorii',
  animal: '',
  from: '2024-11-01',
  to: '2024-11-03',
  chance: '70',
  count: '3',
  gauge: '20 mm',
  room: 'R1',
};

/** Address, good fields, and where it leads. */
const GOOD: readonly (readonly [string, Fields, string])[] = [
  ['/animals/new', animal, '/animals/A3'],
  ['/animals/new', { ...animal, gauge: '' }, '/animals/A3'],
  ['/animals/A1/edit', { ...animal, name: 'Ash tree', gauge: '50 mm' }, '/animals/A1'],
  ['/animals/A1/moulted', { found: DAY, earliest: '', gauge: '' }, '/animals/A1'],
  ['/animals/A1/measured', { gauge: '5.2 cm', day: DAY }, '/animals/A1'],
  ['/animals/A1/premoult', { day: DAY }, '/animals/A1'],
  ['/animals/A1/matured', { day: DAY }, '/animals/A1'],
  ['/animals/A1/died', { heads: '1', day: DAY }, '/animals'],
  ['/animals/A2/died', { heads: '2', day: DAY }, '/animals/A2'],
  ['/larder/new', { ...bin, heads: '120', size: '', day: DAY }, '/larder/B4'],
  ['/larder/new', { ...bin, space: '40 dm2', origin: 'a fair', heads: '', size: '', day: DAY }, '/larder/B4'],
  [
    '/larder/new',
    { ...bin, role: 'cup', species: 'drosophila-hydei', heads: '', size: '', day: DAY },
    '/larder/B4',
  ],
  [
    '/larder/B1/edit',
    { ...bin, species: 'acheta-domesticus', role: 'colony', keepAdults: 'on' },
    '/larder/B1',
  ],
  ['/larder/B1/count', { heads: '150', size: '', day: DAY }, '/larder/B1'],
  ['/larder/B1/look', { level: 'half', day: DAY }, '/larder/B1'],
  ['/larder/B1/weigh', { mass: '12,5 g', day: DAY }, '/larder/B1'],
  ['/larder/B1/discard', { heads: '5', day: DAY }, '/larder/B1'],
  ['/larder/B1/weigh', { mass: '2 g', sampleHeads: '10', sampleMass: '90 mg', day: DAY }, '/larder/B1'],
  ['/larder/B1/move', { heads: '5', size: '', to: 'B2', day: DAY }, '/larder/B1'],
  ['/larder/B1/move', { heads: '5', size: CRICKETS, to: 'B2', day: DAY }, '/larder/B1'],
  ['/larder/B1/harvest', { heads: '5', sizeClass: CRICKETS, to: '', day: DAY }, '/larder/B1'],
  ['/larder/B1/cull', { heads: '9', size: '', how: 'frozen', day: DAY }, '/larder/B1'],
  ['/larder/B1/cull', { heads: '9', size: CRICKETS, how: 'humanely', day: DAY }, '/larder/B1'],
  ['/larder/B1/retire', { heads: '90', to: 'B2', day: DAY, sure: 'on' }, '/larder/B1'],
  ['/larder/B1/split', { heads: '', percent: '50', name: 'Half', day: DAY }, '/larder/B4'],
  ['/larder/B2/merge', { to: 'B1', day: DAY }, '/larder/B1'],
  ['/larder/B1/dead', { heads: '4', day: DAY }, '/larder/B1'],
  ['/larder/B1/adults', { day: DAY }, '/larder/B1'],
  ['/larder/B1/sexed', { females: '6', males: '4', day: DAY }, '/larder/B1'],
  ['/larder/B1/die-off', { left: '20', day: DAY }, '/larder/B1'],
  ['/larder/B1/clean-out', { eggsLost: '50', day: DAY }, '/larder/B1'],
  ['/larder/B1/quarantine', { days: '14' }, '/larder/B1'],
  ['/larder/B1/rest', { days: '14' }, '/larder/B1'],
  ['/larder/B1/place', { room: 'R1', dayTemp: '86 F', nightTemp: '', day: DAY }, '/larder/B1'],
  ['/larder/B3/cup-look', { look: 'larvae', day: DAY }, '/larder/B3'],
  ['/deliveries/D1/arrived', { day: DAY, alive: '90', dead: '3', size: '' }, '/larder'],
  ['/deliveries/D1/cancelled', {}, '/larder'],
  ['/settings/feeding', { weekday: WEEK }, '/settings'],
  ['/settings/deliveries', { weekday: WEEK, leadTimeDays: '2' }, '/settings'],
  ['/settings/units', { unit: 'in' }, '/settings'],
  ['/settings/rooms', { room: '', name: 'Attic', dayTemp: '79 F', nightTemp: '20' }, '/settings'],
  ['/settings/rooms', { room: 'R1', name: 'Room', dayTemp: '27 C', nightTemp: '21 C' }, '/settings'],
  ['/settings/absences', { from: '2024-12-01', to: '2024-12-09' }, '/settings'],
  ['/settings/absences/remove', { from: '2024-12-01', to: '2024-12-09' }, '/settings'],
  ['/settings/changes', change, '/settings'],
];

test.each(GOOD)('%s takes what is good, once', async (path, fields, leads) => {
  const { send, acts } = await filledHome();
  const before = await acts();
  const answers = [
    await send(path, { ...fields, formId: 'same' }),
    await send(path, { ...fields, formId: 'same' }),
  ];
  expect(answers.map(({ status }) => status)).toEqual([303, 303]);
  expect(answers.map(({ headers }) => headers.get('location'))).toEqual([leads, leads]);
  expect(await acts()).toBe(before + 1);
});

/** Address, fields, the field that is wrong, and what is said beside it. */
const BAD: readonly (readonly [string, Fields, string, string])[] = [
  ['/animals/new', { ...animal, gauge: '4 m' }, 'gauge', '"4 m" is not a likely size'],
  ['/animals/new', { ...animal, gauge: '0' }, 'gauge', '"0" is not a likely size'],
  ['/animals/new', { ...animal, gauge: '-3' }, 'gauge', '"-3" is not a likely size'],
  ['/animals/new', { ...animal, name: '' }, 'name', 'This is needed.'],
  ['/animals/new', { ...animal, kind: '' }, 'kind', 'Choose a kind.'],
  ['/animals/new', { ...animal, count: '0' }, 'count', '"0" is not a whole number from 1'],
  ['/animals/new', { ...animal, lastTaken: '2062-01-01' }, 'lastTaken', '"2062-01-01" is after today'],
  ['/animals/new', { ...animal, lastMoult: 'soon' }, 'lastMoult', '"soon" is not a date'],
  ['/animals/A1/edit', { ...animal, lastTaken: '2024-01-01' }, 'lastTaken', 'is before the last on record'],
  ['/animals/A1/moulted', { found: '2062-01-01', earliest: '', gauge: '' }, 'found', 'is after today'],
  ['/animals/A1/moulted', { found: '2024-10-01', earliest: DAY, gauge: '' }, 'earliest', 'is after the day'],
  ['/animals/A1/moulted', { found: DAY, earliest: '', gauge: 'big' }, 'gauge', '"big" is not a size'],
  ['/animals/A1/measured', { gauge: '-3', day: DAY }, 'gauge', '"-3" is not a likely size'],
  ['/animals/A1/measured', { gauge: '', day: DAY }, 'gauge', 'This is needed.'],
  ['/animals/A1/measured', { gauge: '52', day: '2062-01-01' }, 'day', 'is after today'],
  ['/animals/A2/died', { heads: '9', day: DAY }, 'heads', '"9" is more than the 5'],
  ['/larder/new', { ...bin, heads: '-3', size: '', day: DAY }, 'heads', '"-3" is not a whole number'],
  [
    '/larder/new',
    { ...bin, space: 'big', heads: '', size: '', day: DAY },
    'space',
    '"big" is not a size that',
  ],
  ['/larder/new', { ...bin, space: '40 l', heads: '', size: '', day: DAY }, 'space', 'say it in dm2'],
  [
    '/larder/new',
    { ...bin, heads: '5', size: 'acheta-domesticus|small', day: DAY },
    'size',
    'is not a size of the dubia roach',
  ],
  ['/larder/new', { ...bin, heads: '5', size: '', day: '2062-01-01' }, 'day', 'is after today'],
  ['/larder/B1/edit', bin, 'species', 'goes into a bin of its own'],
  ['/larder/B1/count', { heads: '-3', size: '', day: DAY }, 'heads', '"-3" is not a whole number'],
  ['/larder/B1/weigh', { mass: 'heavy', day: DAY }, 'mass', '"heavy" is not a mass'],
  ['/larder/B1/discard', { heads: '0', day: DAY }, 'heads', '"0" is not a whole number'],
  ['/larder/B1/move', { heads: '5', size: '', to: 'B3', day: DAY }, 'to', '"Cup" holds '],
  [
    '/larder/B1/harvest',
    { heads: '4000', sizeClass: CRICKETS, to: '', day: DAY },
    'heads',
    'of that size in Small box; you wrote 4000.',
  ],
  [
    '/larder/B1/weigh',
    { mass: '2 g', sampleHeads: '10', sampleMass: '', day: DAY },
    'sampleHeads',
    'both are needed',
  ],
  [
    '/larder/B1/weigh',
    { mass: '2 g', sampleHeads: '10', sampleMass: '5 g', day: DAY },
    'sampleMass',
    'weighs more than the whole bin',
  ],
  [
    '/larder/B1/place',
    { room: 'R1', dayTemp: '', nightTemp: '20 C', day: DAY },
    'dayTemp',
    'how warm it is by day',
  ],
  ['/larder/B1/place', { room: 'R1', dayTemp: '49 C', nightTemp: '', day: DAY }, 'dayTemp', 'from 0 to 45'],
  ['/larder/B1/quarantine', { days: 'long' }, 'days', '"long" is not a whole number of days'],
  ['/larder/B1/rest', { days: '900' }, 'days', '"900" is not a whole number of days from 0 to 365'],
  ['/larder/B1/clean-out', { eggsLost: '170', day: DAY }, 'eggsLost', '"170" is not a share of the eggs'],
  ['/larder/B1/split', { heads: '', percent: '', name: '', day: DAY }, 'heads', 'Say how many'],
  ['/deliveries', { bin: 'B1', heads: '0', size: 'x', day: DAY }, 'heads', '"0" is not a whole number'],
  ['/deliveries/D1/arrived', { day: '2062-01-01', alive: '1', dead: '', size: '' }, 'day', 'is after today'],
  [
    '/settings/deliveries',
    { weekday: WEEK, leadTimeDays: '99' },
    'leadTimeDays',
    '"99" is not a whole number',
  ],
  [
    '/settings/rooms',
    { room: '', name: 'Attic', dayTemp: 'hot', nightTemp: '20 C' },
    'dayTemp',
    '"hot" is not a temperature',
  ],
  [
    '/settings/rooms',
    { room: 'R1', name: 'Room', dayTemp: '27 C', nightTemp: '48 C' },
    'nightTemp',
    'temperature from 0 to 45',
  ],
  ['/settings/absences', { from: '2024-12-09', to: '2024-12-01' }, 'to', 'runs backwards'],
  ['/settings/changes', { ...change, gauge: '0' }, 'gauge', '"0" is not a likely size'],
  ['/settings/changes', { ...change, chance: '170' }, 'chance', '"170" is not a percentage'],
  ['/settings/changes', { ...change, animalKind: 'unicorn' }, 'animalKind', '"unicorn" is not a kind'],
];

const escaped = (text: string) => text.replaceAll('"', '&quot;');

test.each(BAD)('%s with %o says it beside %s', async (path, fields, field, said) => {
  const { send, acts } = await filledHome();
  const before = await acts();
  const answer = await send(path, fields);
  expect(answer.status).toBe(422);
  expect(await acts()).toBe(before);
  const html = await answer.text();
  const problem = new RegExp(`id="[^"]*-${field}-problem">([^<]*)<`).exec(html)?.[1] ?? '';
  expect(problem).toContain(escaped(said));
  const kept = Object.entries(fields).filter(
    ([name, value]) => typeof value === 'string' && isText(html, name),
  );
  for (const [name, value] of kept) expect(html, name).toContain(`value="${escaped(String(value))}"`);
});

/** Whether a field of this name is typed into. */
const isText = (html: string, name: string): boolean =>
  new RegExp(`<input[^>]*name="${name}"[^>]*type="(text|number|date)"`).test(html);

test('“today” and “yesterday” are days wherever a day is asked for, and stay as typed when refused', async () => {
  const { send, room } = await filledHome();
  expect((await send('/animals/A1/moulted', { found: 'Yesterday', earliest: '', gauge: '' })).status).toBe(
    303,
  );
  const { animals } = await loadSnapshot(room);
  expect(animals[0]?.lastMoult?.found).toBe(19_999);
  const answer = await send('/larder/B1/discard', { heads: '0', day: 'today' });
  expect(answer.status).toBe(422);
  expect(await answer.text()).toContain('value="today"');
  const name = await send('/animals/new', { ...animal, name: 'Yesterday' });
  expect(name.headers.get('location')).toBe('/animals/A3');
  expect((await loadSnapshot(room)).animals.map((each) => each.name)).toContain('Yesterday');
});

test('what an animal cannot have done before it hatched is refused with both days', async () => {
  const { send } = await filledHome();
  const answer = await send('/animals/new', { ...animal, hatchedDay: '2024-09-01', hereSince: '' });
  expect(answer.status).toBe(422);
  expect(await answer.text()).toContain('&quot;2024-08-01&quot; is before Birch hatched (1 Sep 2024).');
});

test('a field that is not known is refused as a whole', async () => {
  const { send, acts } = await filledHome();
  const before = await acts();
  const answer = await send('/animals/A1/premoult', { day: DAY, demo: 'on' });
  expect(answer.status).toBe(422);
  expect(await answer.text()).toContain('&quot;demo&quot; is not a field known here.');
  expect(await acts()).toBe(before);
});

test('several wrong fields are said at once', async () => {
  const { send } = await filledHome();
  const html = await (await send('/animals/new', { ...animal, gauge: '4 m', count: '-1' })).text();
  expect(html).toContain('&quot;4 m&quot; is not a likely size');
  expect(html).toContain('&quot;-1&quot; is not a whole number');
});

test('a size left as it was shown is no measurement', async () => {
  const { send, room } = await filledHome();
  await send('/settings/units', { unit: 'in' });
  room.pass(3);
  await send('/animals/A1/edit', { ...animal, name: 'Ash', gauge: '1 15/16 in' });
  const { animals } = await loadSnapshot(room);
  expect(animals.find(({ code }) => code === 'A1')).toMatchObject({ gaugeMm: 50, shelf: 'B1' });
});

test('an edit of an older page is told of the newer one', async () => {
  const { send, acts } = await filledHome();
  const seen = String(await acts());
  await send('/animals/A1/edit', { ...animal, name: 'Ash', asOf: seen });
  const answer = await send('/animals/A1/edit', { ...animal, name: 'Oak', asOf: seen });
  expect(answer.status).toBe(422);
  const html = await answer.text();
  expect(html).toContain('was changed while you wrote');
  expect(html).toContain('value="Oak"');
});

describe('the undo of the banner', () => {
  const pressed = async ({ app, send }: Home, path: string) => {
    const html = await (await app.request(path)).text();
    return send(/action="(\/undo\/\d+)"/.exec(html)![1]!, {});
  };

  test('takes the last act back, and the act after it is that undo', async () => {
    const home = await filledHome();
    await home.send('/animals/A1/died', { heads: '1', day: DAY });
    expect(await home.see('/animals')).not.toContain('Ash</a>');
    expect((await pressed(home, '/animals')).status).toBe(303);
    expect(await home.see('/animals')).toContain('Ash</a>');
    expect(await home.see('/animals')).toContain('Undid: Ash died');
    await pressed(home, '/animals');
    expect(await home.see('/animals')).not.toContain('Ash</a>');
  });

  test('says why an act cannot be undone', async () => {
    const { app, send } = await filledHome();
    const answer = await send('/undo/4', {});
    expect(answer.status).toBe(303);
    const cookie = answer.headers
      .getSetCookie()
      .map((each) => each.split(';')[0])
      .join('; ');
    const html = await (await app.request('/', { headers: { cookie } })).text();
    expect(html).toContain('cannot be undone');
  });
});
