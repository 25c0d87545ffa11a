/** Colony start: when to start, with how many, to feed from an own colony by when; the question is in the address. */
import type { Context, Hono } from 'hono';
import { ColonyAnswerPart, type ColonyShown } from '../../../views/pages/colony-answer.tsx';
import { ColonyStartPage } from '../../../views/pages/colony-start.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { askColony, askCover, keptColony } from '../../actions/index.ts';
import type { ColonyQuestion } from '../../husbandry/colony/index.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { roomTemp } from '../../husbandry/rooms.ts';
import type { DoorEnv } from '../door.ts';
import { roomOptions, sizeOptions } from './choices.ts';
import { type ColonyAsked, colonyAsked, isBred, notBred } from './colony-asked.ts';
import { type Guess, guessFor, speciesGuessed } from './colony-guess.ts';
import { setUp } from './colony-set-up.ts';
import { noAnswer, queryOf, shownAs } from './colony-told.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function colonyStartRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.colonyStart, (c) => showColonyStart(house, c));
  app.get(paths.colonyAnswer, (c) => showAnswer(house, c));
  app.post(
    paths.colonyStart,
    posted(house, {
      form: () => 'colony-set-up',
      shape: () => ({}),
      act: async (_, { c, formId }) => setUp(house, await askedIn(house, c, await visit(house, c)), formId),
      next: (_, { bin }: { bin: string }) => paths.bin(bin),
      again: (c, refused) => showColonyStart(house, c, refused),
    }),
  );
}

async function showColonyStart(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { facts, rooms } = here.snapshot;
  const asked = await askedIn(house, c, here);
  const amiss = notBred(c.req.query('species'), here);
  const { species } = asked;
  const bred = [...facts.species.values()].filter(isBred);
  const props = {
    ...here,
    asked: asked.entry,
    prey: {
      species,
      amiss,
      options: bred.map(({ code, commonName }) => ({ value: code, label: commonName })),
    },
    rooms: roomOptions(rooms).map((option) => ({ ...option, temp: roomTemp(rooms, option.value) })),
    sizes: sizeOptions(species),
    answer: asked.question === null || amiss !== null ? null : await shownOf(house, c, here, asked),
  };
  const isRefused = Object.keys(asked.entry.problems).length > 0 || amiss !== null || refused !== null;
  return page(c, ColonyStartPage(props), statusOf(isRefused));
}

/** What the address asks; the room is asked for its appetite only where nobody has said what is wanted. */
async function askedIn(house: House, c: Context, here: Visit): Promise<ColonyAsked> {
  const { snapshot } = here;
  const species = speciesGuessed(snapshot, c.req.query('species'));
  const isSent = c.req.query('begin') !== undefined;
  return colonyAsked(c, here, species, isSent ? {} : await guessed(house, here, species));
}

async function guessed(
  { context, answering }: House,
  { snapshot }: Visit,
  species: PreySpecies,
): Promise<Guess> {
  const cover = await askCover(context, { snapshot, answering });
  return guessFor(snapshot, species, cover.ok ? cover.value.answer : { bins: [], horizonDays: 1 });
}

/** The answer where it is kept or waited for, else where the page finds it. */
async function shownOf(house: House, c: Context, here: Visit, asked: ColonyAsked): Promise<ColonyShown> {
  const question = asked.question as ColonyQuestion;
  if (c.req.query('wait') === '1') return answerTo(house, c, here, asked);
  const kept = await keptColony(house.context, question, here.snapshot);
  if (kept !== null) return shownAs(kept, c, here, asked);
  const query = queryOf(c);
  return {
    state: 'working',
    answerAt: `${paths.colonyAnswer}${query}`,
    waitAt: `${paths.colonyStart}${query}&wait=1`,
  };
}

/** The answer alone, for the page that is there already. */
async function showAnswer(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const asked = await askedIn(house, c, here);
  const shown: ColonyShown =
    asked.question === null
      ? { state: 'none', sentence: 'Say first what is wanted.', again: paths.colonyStart }
      : await answerTo(house, c, here, asked);
  return page(c, String(ColonyAnswerPart({ shown })));
}

async function answerTo(house: House, c: Context, here: Visit, asked: ColonyAsked): Promise<ColonyShown> {
  const { context, answering } = house;
  const question = asked.question as ColonyQuestion;
  const answer = await askColony(context, question, { snapshot: here.snapshot, answering });
  return answer.ok ? shownAs(answer.value, c, here, asked) : noAnswer(c, answer.problem);
}
