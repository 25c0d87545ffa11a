/** Labels to print, and the short addresses they carry. */
import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { inBrief } from '../../../views/cautions.ts';
import { sentenceCase } from '../../../views/format.ts';
import { preyName } from '../../../views/names.ts';
import type { LabelText } from '../../../views/pages/label-sheets.tsx';
import { type LabelsAsked, LabelsPage } from '../../../views/pages/labels.tsx';
import { paths } from '../../../views/paths.ts';
import type { Animal } from '../../husbandry/animals/index.ts';
import { type DayNumber, parseCivilDate } from '../../husbandry/calendar.ts';
import type { Bin } from '../../husbandry/larder/index.ts';
import { enteredOn } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { placeOf } from './meals.ts';
import { page, type Visit, visit } from './visit.ts';

export function labelRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.labels, (c) => showLabels(house, c));
  for (const letter of ['a', 'A']) app.get(`/${letter}/:code`, (c) => c.redirect(paths.animal(codeOf(c))));
  for (const letter of ['b', 'B']) app.get(`/${letter}/:code`, (c) => c.redirect(paths.bin(codeOf(c))));
}

const codeOf = (c: Context): string => c.req.param('code')?.toUpperCase() ?? '';

const MOST_PLACES = 100;
/** Labels of one answer: each code to scan takes its time. */
const MOST_AT_ONCE = 200;
const one = <const W extends readonly [string, ...string[]]>(words: W) => z.enum(words).catch(words[0]);
const asking = z.object({
  of: z.array(z.string()).catch([]),
  code: z.array(z.string()).catch([]),
  which: one(['all', 'shelf', 'new', 'ticked']),
  shelf: z.string().catch(''),
  since: z.string().catch(''),
  size: one(['medium', 'small', 'large']),
  paper: one(['a4', 'letter']),
  skip: z.coerce.number().int().min(0).max(MOST_PLACES).catch(0),
  from: z.coerce.number().int().min(0).catch(0),
});

function askedIn(c: Context): LabelsAsked {
  const asked = asking.parse({ ...c.req.query(), of: c.req.queries('of'), code: c.req.queries('code') });
  return c.req.query('size') === undefined ? { ...asked, of: ['animals'] } : asked;
}

async function showLabels(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { animals, bins } = here.snapshot;
  const asked = askedIn(c);
  const { host, protocol } = addressOf(c);
  const entered = await house.context.store.ask(enteredOn);
  const wanted = { asked, entered, here };
  const all = [
    ...animals.filter((animal) => isWanted(wanted, animal)).map((animal) => labelOf(here, animal)),
    ...bins.filter((bin) => isWanted(wanted, bin)).map((bin) => binLabelOf(here, bin)),
  ];
  const until = asked.from + MOST_AT_ONCE;
  const labels = all.slice(asked.from, until).map(({ path, short, ...label }): LabelText => {
    return { ...label, address: `${host}${path}`, link: `${protocol}//${host}${short}` };
  });
  const props = {
    ...here,
    asked,
    labels: c.req.query('size') === undefined ? null : labels,
    total: all.length,
    next: until < all.length ? fromOn(c, until) : null,
    onlyHere: /^(.+\.)?localhost(:|$)|^127\.|^\[::1\]/.test(host),
    shelves: [...new Set(animals.map((animal) => placeOf(animal, here.snapshot)))],
    animals: animals.map(({ code, name }) => ({ value: code, label: named(code, name) })),
    bins: bins.map(({ code, name }) => ({ value: code, label: named(code, name) })),
  };
  return page(c, LabelsPage(props));
}

/** The same labels from a place on, with nothing left off the sheet. */
function fromOn(c: Context, from: number): string {
  const { searchParams } = new URL(c.req.url);
  searchParams.set('from', `${from}`);
  searchParams.delete('skip');
  return `${paths.labels}?${searchParams.toString()}`;
}

const named = (code: string, name: string): string =>
  name === '' || name === code ? code : `${code} ${name}`;

/** How this server was called. */
function addressOf(c: Context): { readonly host: string; readonly protocol: string } {
  const { protocol, host } = new URL(c.req.url);
  return { protocol, host: c.req.header('host') ?? host };
}

interface Wanted {
  readonly asked: LabelsAsked;
  readonly entered: ReadonlyMap<string, DayNumber>;
  readonly here: Visit;
}

/** What is ticked counts whatever sort it is; a bin stands on no shelf. */
function isWanted({ asked, entered, here }: Wanted, each: Animal | Bin): boolean {
  if (asked.which === 'ticked') return asked.code.includes(each.code);
  if (!asked.of.includes(sortOf(each))) return false;
  if (asked.which === 'shelf') return 'shelf' in each && isOn(asked.shelf, placeOf(each, here.snapshot));
  if (asked.which === 'all') return true;
  const since = parseCivilDate(asked.since);
  return !since.ok || (entered.get(each.code) ?? Number.NEGATIVE_INFINITY) >= since.value;
}

function sortOf(each: Animal | Bin): 'animals' | 'bins' | 'cups' {
  if ('shelf' in each) return 'animals';
  return each.role === 'cup' ? 'cups' : 'bins';
}

const isOn = (wanted: string, place: string): boolean => wanted === '' || wanted === place;

function labelOf({ snapshot }: Visit, { code, name, kind: known, count }: Animal) {
  const kind = snapshot.facts.kinds.get(known);
  return {
    code,
    path: paths.animal(code),
    short: `/a/${code}`,
    name: count > 1 ? `${name} × ${count}`.trim() : name,
    kind: kind === undefined ? '' : sentenceCase(kind.commonName),
    cautions: inBrief((kind?.cautions ?? []).filter((caution) => caution !== 'live prey near a moult')),
  };
}

const binLabelOf = ({ names }: Visit, { code, name, species }: Bin) => ({
  code,
  path: paths.bin(code),
  short: `/b/${code}`,
  name,
  kind: sentenceCase(preyName(names.species, species)),
  cautions: '',
});
