/** Colony start: when to start, with how many, to feed from an own colony by when; the question is in the address. */
import type { Context, Hono } from 'hono';
import { sentenceCase } from '../../../views/format.ts';
import { ColonyAnswerPart, type ColonyShown, type ColonyTold } from '../../../views/pages/colony-answer.tsx';
import { ColonyStartPage } from '../../../views/pages/colony-start.tsx';
import { entryOf, type Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { addBin, askColony, askCover, type Done, keptColony } from '../../actions/index.ts';
import type { ColonyAnswer, ColonyQuestion, ColonyStart, Starters } from '../../husbandry/colony/index.ts';
import type { Lot } from '../../husbandry/larder/index.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { type Problem, problem } from '../../husbandry/problems.ts';
import { err, type Result } from '../../husbandry/result.ts';
import { roomTemp } from '../../husbandry/rooms.ts';
import type { DoorEnv } from '../door.ts';
import { roomOptions, sizeOptions } from './choices.ts';
import { type ColonyAsked, colonyAsked, isBred, notBred, remarksOn } from './colony-asked.ts';
import { type Guess, guessFor, speciesGuessed } from './colony-guess.ts';
import { colonySources, lostWithinYear } from './colony-sources.ts';
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
      act: (_, { c, formId }) => setUp(house, c, formId),
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

const queryOf = (c: Context): string => new URL(c.req.url).search;

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

const noAnswer = (c: Context, { sentence }: Problem): ColonyShown => ({
  state: 'none',
  sentence,
  again: `${paths.colonyStart}${queryOf(c)}`,
});

function shownAs({ outcome }: ColonyAnswer, c: Context, here: Visit, asked: ColonyAsked): ColonyShown {
  if (!outcome.ok) return noAnswer(c, outcome.problem);
  return { state: 'told', told: toldOf(outcome.value, c, here, asked) };
}

function toldOf(start: ColonyStart, c: Context, here: Visit, asked: ColonyAsked): ColonyTold {
  const { snapshot, unit, forms, names } = here;
  const { species, readyOn, currency, room } = asked;
  const question = asked.question as ColonyQuestion;
  const { policy } = snapshot.facts;
  return {
    start,
    question,
    species,
    names,
    unit,
    currency,
    readyOn,
    today: snapshot.today,
    room: { name: names.rooms.get(room) ?? room, temp: roomTemp(snapshot.rooms, room) },
    remarks: remarksOn(species, question),
    lost: lostWithinYear(policy),
    lasts: { weeksMet: policy.colonyWeeksMet.value, years: policy.colonyYears.value },
    sources: colonySources(species, policy, unit),
    setUp: { entry: entryOf(forms, 'colony-set-up'), action: `${paths.colonyStart}${queryOf(c)}` },
    enoughAt: enoughAt(start, c, question),
  };
}

/** The same question begun with as many breeders as it takes; null where it is, or where nobody knows. */
function enoughAt({ sustaining }: ColonyStart, c: Context, { starters }: ColonyQuestion): string | null {
  if (sustaining === null) return null;
  const { females, males } = sustaining;
  if (starters.kind === 'adults' && starters.females === females && starters.males === males) return null;
  const query = new URLSearchParams(queryOf(c));
  query.set('begin', 'adults');
  query.set('females', `${females}`);
  query.set('males', `${males}`);
  query.delete('wait');
  return `${paths.colonyStart}?${query}`;
}

/** The colony as a bin, its starters counted today. */
async function setUp(
  house: House,
  c: Context,
  formId: string | undefined,
): Promise<Result<Done<{ bin: string }>>> {
  const here = await visit(house, c);
  const { species, question, room } = await askedIn(house, c, here);
  if (question === null) return err(problem('nothing-asked', 'Put right what is marked first.'));
  return addBin(house.context, {
    name: `${sentenceCase(species.commonName)} colony`,
    species: species.code,
    role: 'colony',
    room,
    keepAdults: true,
    capacity: question.binSize?.capacity ?? null,
    space: question.binSize?.space ?? null,
    lot: lotOf(question.starters, species),
    formId,
  });
}

function lotOf(starters: Starters, { sizeClasses, adultLengthMm }: PreySpecies): Lot {
  if (starters.kind === 'young') {
    const { heads, fromMm, toMm } = starters;
    return { heads, fromMm, toMm };
  }
  const grown = adultLengthMm.value;
  const size = sizeClasses.value.find(({ fromMm, toMm }) => fromMm <= grown && grown <= toMm);
  const heads = starters.females + starters.males;
  return { heads, fromMm: size?.fromMm ?? grown, toMm: size?.toMm ?? grown };
}
