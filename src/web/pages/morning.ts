/** The morning after: what became of the meals offered, the oldest open evening first. */

import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { fewOf, lengthRange } from '../../../views/format.ts';
import { preyName } from '../../../views/names.ts';
import { MorningPage, type MorningRow } from '../../../views/pages/morning.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { civilDay } from '../../actions/fields.ts';
import { recordMorning } from '../../actions/index.ts';
import type { AgainstOutcome } from '../../actions/morning-standing.ts';
import { grouped } from '../../husbandry/grouped.ts';
import { type OfferLine, offersOf, openEvenings, outcomesBefore, rowsOf } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { sayNext } from './cookies.ts';
import type { House } from './house.ts';
import { likelyLeft } from './leftovers.ts';
import { moultlessIn, nearsMoult, placeOf } from './meals.ts';
import { posted } from './posted.ts';
import { typed } from './typed.ts';
import { page, statusOf, type Visit, visit, withWords } from './visit.ts';

const codes = z.array(z.string()).default([]);
const OUTCOMES = ['taken', 'part-taken', 'refused', 'moulted'] as const;
const outcome = z.enum(OUTCOMES, { error: 'Choose what became of it.' });
type Outcome = z.output<typeof outcome>;

export function morningRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.morning, (c) => showMorning(house, c));
  app.post(paths.morning, (c) => recordMarks(house, c));
}

/** Fields of single rows: `became:<animal>`, and `at:<animal>` for the part of the page it stood in. */
const rowFields = (names: readonly string[]): Readonly<Record<string, z.ZodType>> =>
  Object.fromEntries(
    names.flatMap((name): [string, z.ZodType][] => {
      if (name.startsWith('became:')) return [[name, outcome]];
      return name.startsWith('at:') ? [[name, z.string()]] : [];
    }),
  );

async function recordMarks(house: House, c: Context): Promise<Response> {
  const rows = rowFields(Object.keys(await c.req.parseBody({ all: true })));
  const names = await namesOfAll(house);
  const post = posted(house, {
    form: () => 'morning',
    many: ['animal'],
    part: 'shelf',
    shape: () => ({ day: typed(civilDay), shelf: z.string().optional(), animal: codes, ...rows }),
    act: (given, { formId }) => {
      const { day, shelf, animal, ...fields } = given as unknown as Sheet;
      const exceptions = animal.flatMap((code) => {
        const became = fields[`became:${code}`] as Outcome | undefined;
        return became === undefined ? [] : [{ animal: code, outcome: became }];
      });
      const rest = animal.filter((code) => shelf === undefined || fields[`at:${code}`] === shelf);
      return recordMorning(house.context, { evening: day, exceptions, rest, formId });
    },
    next: (_, { against, more }) => {
      if (against.length > 0) sayNext(c, 'problem', againstWords(against, names));
      return more ? paths.morning : paths.tonight;
    },
    again: (_, refused) => showMorning(house, c, refused),
  });
  return post(c);
}

interface Sheet extends Readonly<Record<string, unknown>> {
  readonly day: string;
  readonly shelf?: string;
  readonly animal: readonly string[];
}

const namesOfAll = async ({ context }: House): Promise<ReadonlyMap<string, string>> =>
  new Map(
    (await context.store.ask(rowsOf('animal'))).map(({ code, name }) => [code, name === '' ? code : name]),
  );

const SAID: Readonly<Record<Outcome, string>> = {
  taken: 'ate',
  'part-taken': 'ate some',
  refused: 'refused',
  moulted: 'moulted',
};

/** What somebody else has marked otherwise stands; it is said, so that nothing is lost unseen. */
const againstWords = (against: readonly AgainstOutcome[], names: ReadonlyMap<string, string>): string =>
  `Marked otherwise by somebody else already, and left so: ${fewOf(
    against.map(
      ({ animal, said, stands }) => `${names.get(animal) ?? animal} ${SAID[stands]} (you: ${SAID[said]})`,
    ),
    MOST_NAMED,
  )}.`;
const MOST_NAMED = 8;

async function showMorning(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { store, clock, facts } = house.context;
  const { today } = clock();
  const open = await store.ask(openEvenings(today));
  const day = open.find((each) => each < today) ?? open[0] ?? today;
  const { offers, bins, before } = await store.askAll({
    offers: offersOf(day),
    bins: rowsOf('bin'),
    before: outcomesBefore(day),
  });
  const waiting = offers.filter((offer) => offer.outcome === null);
  const telling = {
    species: new Map(bins.map((bin) => [bin.code, bin.species])),
    left: new Map(before.map(({ animal, outcomes }) => [animal, likelyLeft(outcomes, facts.policy)])),
  };
  const rows = morningRows(here, waiting, telling);
  const props = {
    ...here,
    shell: rows.length === 0 ? withWords(here.shell, Object.values(refused?.problems ?? {})) : here.shell,
    day,
    rows,
    remaining: open.filter((each) => each !== day && each < today).length,
    leftoversOutHours: facts.policy.leftoversOutHours.value,
  };
  return page(c, MorningPage(props), statusOf(refused !== null));
}

interface Telling {
  readonly species: ReadonlyMap<string, string>;
  readonly left: ReadonlyMap<string, string | null>;
}

/** One row an animal, in the order of the walk. */
function morningRows(
  here: Visit,
  offers: readonly OfferLine[],
  { species, left }: Telling,
): readonly MorningRow[] {
  const { snapshot, names } = here;
  const offersTo = grouped(offers, ({ animal }) => animal);
  const moultless = moultlessIn(snapshot);
  return snapshot.animals.flatMap((animal): MorningRow[] => {
    const own = offersTo.get(animal.code);
    if (own === undefined) return [];
    return [
      {
        animal: animal.code,
        name: names.animals.get(animal.code) ?? animal.code,
        shelf: placeOf(animal, snapshot),
        offered: own.map((offer) => offerOf(offer, here, species)).join('; '),
        moults: !moultless.has(animal.code),
        nearMoult: nearsMoult(animal, snapshot),
        likelyLeft: left.get(animal.code) ?? null,
      },
    ];
  });
}

function offerOf(
  { heads, bin, fromMm, toMm }: OfferLine,
  { names, unit }: Visit,
  species: ReadonlyMap<string, string>,
): string {
  if (heads === null || bin === null) return 'prey, not said which';
  const lengths = fromMm === null || toMm === null ? '' : `, ${lengthRange(fromMm, toMm, unit)}`;
  return `${heads} ${preyName(names.species, species.get(bin) ?? '', heads)}${lengths}`;
}
