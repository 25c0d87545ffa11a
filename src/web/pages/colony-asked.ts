/** A colony start as it is asked in an address: every field read, with a sentence beside each that is wrong. */
import type { Context } from 'hono';
import { z } from 'zod';
import { preyName } from '../../../views/names.ts';
import { sizeField } from '../../../views/pages/colony-fields.ts';
import type { FormEntry } from '../../../views/partials/form.tsx';
import { civilDay, figureOrNone, headsOrNone, oneOf } from '../../actions/fields.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import { type ColonyQuestion, colonyAmiss, type Starters } from '../../husbandry/colony/index.ts';
import { growthRemarks, layingRemarks } from '../../husbandry/larder/index.ts';
import { type DayTemp, meanOfDay, type PreySpecies } from '../../husbandry/prey/index.ts';
import type { Problem } from '../../husbandry/problems.ts';
import { roomTemp } from '../../husbandry/rooms.ts';
import { lengthsChosen } from './choices.ts';
import type { Guess } from './colony-guess.ts';
import { readFields, type Typed, valuesOf } from './sent-fields.ts';
import { anyText, maybe, maybeTemperature, needed } from './typed.ts';
import type { Visit } from './visit.ts';

export interface ColonyAsked {
  readonly entry: FormEntry;
  readonly species: PreySpecies;
  /** Null until everything is said rightly. */
  readonly question: ColonyQuestion | null;
  readonly room: string;
  /** Day from which the whole harvest is wanted, and the currency, where they are said. */
  readonly readyOn: DayNumber | null;
  readonly currency: string;
}

/** Prey that is bred in colonies. */
export const isBred = ({ laying, cup }: PreySpecies): boolean => laying !== null && cup === null;

const DEAREST = 1_000_000;
const price = figureOrNone({
  code: 'price-out-of-range',
  least: 0,
  most: DEAREST,
  wanted: 'a price, such as 0.25',
});
const binUnits = figureOrNone({
  code: 'bin-out-of-range',
  least: 0.1,
  most: DEAREST,
  wanted: 'a size more than 0, such as 40',
});
const LONGEST_CURRENCY = 8;

const shapeFor = ({ unit }: Visit) => ({
  species: needed,
  room: needed,
  day: maybeTemperature(unit),
  night: maybeTemperature(unit),
  begin: oneOf(['adults', 'young']),
  females: maybe(headsOrNone),
  males: maybe(headsOrNone),
  young: maybe(headsOrNone),
  size: anyText,
  bin: binUnits,
  by: anyText,
  head: price,
  starters: price,
  week: price,
  currency: anyText.pipe(
    z.string().max(LONGEST_CURRENCY, { error: `Write at most ${LONGEST_CURRENCY} letters, such as EUR.` }),
  ),
  ready: maybe(civilDay),
  wait: anyText,
});
type Given = z.output<z.ZodObject<ReturnType<typeof shapeFor>>>;

const sizesShape = ({ sizeClasses }: PreySpecies) =>
  Object.fromEntries(sizeClasses.value.map(({ name }) => [sizeField(name), maybe(headsOrNone)]));

/** Reads the address; a form not sent yet is filled with a guess. */
export function colonyAsked(c: Context, here: Visit, species: PreySpecies, guess: Guess): ColonyAsked {
  const shape = { ...shapeFor(here), ...sizesShape(species) };
  const blank = Object.fromEntries(Object.keys(shape).map((name) => [name, ['']]));
  const sent = c.req.queries();
  const isSent = sent.begin !== undefined;
  const typed: Typed = { ...blank, ...(isSent ? {} : guessTyped(guess)), ...sent, species: [species.code] };
  const read = readFields(typed, { shape, today: here.snapshot.today });
  const asked = {
    entry: { name: 'colony', formId: '', values: valuesOf(typed), problems: {} },
    species,
    question: null,
    room: typed.room?.at(-1) ?? '',
    readyOn: null,
    currency: '',
  };
  if (!isSent) return asked;
  if (!read.ok) return withProblems(asked, read.problems);
  return settled(asked, read.given as Given & Readonly<Record<string, string | undefined>>, here);
}

const guessTyped = (guess: Guess): Typed =>
  Object.fromEntries(Object.entries(guess).map(([name, value]) => [name, [value]]));

const withProblems = (asked: ColonyAsked, problems: FormEntry['problems']): ColonyAsked => ({
  ...asked,
  entry: { ...asked.entry, problems },
});

type Fields = Given & Readonly<Record<string, string | undefined>>;

/** What was read as a question, if it can be answered at all. */
function settled(asked: ColonyAsked, given: Fields, { snapshot }: Visit): ColonyAsked {
  const { species } = asked;
  const { facts, rooms, today } = snapshot;
  if (!rooms.some(({ code }) => code === given.room))
    return withProblems(asked, { room: `"${given.room}" is not a room here; choose one from the list.` });
  const starters = startersIn(given, species);
  if ('sentence' in starters) return withProblems(asked, { [starters.field ?? '']: starters.sentence });
  const ready = given.ready === undefined ? null : (civilDay.parse(given.ready) as DayNumber);
  if (ready !== null && ready <= today)
    return withProblems(asked, { ready: `"${given.ready}" is not ahead; give a day that is still to come.` });
  const { head, starters: startersCost, week } = given;
  if (head === null && (startersCost !== null || week !== null))
    return withProblems(asked, { head: 'Say what one bought head costs too: costs are compared with that.' });
  const set = roomTemp(rooms, given.room);
  const question: ColonyQuestion = {
    species: species.code,
    dayC: given.day ?? set.maxC,
    nightC: given.night ?? set.minC,
    wanted: wantedIn(given, species),
    starters,
    binSize: binIn(given, species),
    prices: head === null ? null : { perHead: head, starters: startersCost ?? 0, perWeek: week ?? 0 },
  };
  const amiss = colonyAmiss(facts, question);
  if (amiss) return withProblems(asked, besideIt(amiss, question, species));
  return { ...asked, question, readyOn: ready, currency: given.currency };
}

/** Sizes wanted, from the largest down, as the answer gives them. */
const wantedIn = (given: Fields, { sizeClasses }: PreySpecies): ColonyQuestion['wanted'] =>
  sizeClasses.value
    .map(({ name, fromMm, toMm }) => ({ heads: Number(given[sizeField(name)] ?? 0), fromMm, toMm }))
    .filter(({ heads }) => heads > 0)
    .sort((a, b) => b.toMm - a.toMm);

function startersIn(given: Fields, species: PreySpecies): Starters | Problem {
  if (given.begin === 'adults')
    return { kind: 'adults', females: Number(given.females ?? 0), males: Number(given.males ?? 0) };
  const lengths = lengthsChosen(given.size, species, 'size');
  if (!lengths.ok) return lengths.problem;
  return { kind: 'young', heads: Number(given.young ?? 0), ...lengths.value };
}

function binIn({ bin, by }: Fields, { crowding }: PreySpecies): ColonyQuestion['binSize'] {
  if (bin === null) return null;
  return crowding !== undefined && by === crowding.by
    ? { capacity: null, space: { by: crowding.by, units: bin } }
    : { capacity: Math.max(1, Math.round(bin)) };
}

const tempAsked = ({ dayC, nightC }: ColonyQuestion): DayTemp => ({
  minC: Math.min(dayC, nightC),
  maxC: Math.max(dayC, nightC),
});

/** Where a temperature is beyond what was measured, and where it is reckoned only to its stop. */
export function remarksOn(species: PreySpecies, question: ColonyQuestion): readonly string[] {
  const temp = tempAsked(question);
  const days = { temp, weekMeanC: meanOfDay(temp) };
  return [...growthRemarks(species, days), ...layingRemarks(species, days)];
}

/** A problem of the question beside the field of the form it speaks of. */
function besideIt(
  { field = '', sentence }: Problem,
  question: ColonyQuestion,
  species: PreySpecies,
): FormEntry['problems'] {
  if (field === 'dayC') return { day: [sentence, ...remarksOn(species, question)].join(' ') };
  if (field === 'starters') return { [question.starters.kind === 'young' ? 'young' : 'females']: sentence };
  return { [field]: sentence };
}

/** Why this prey is not bred in a colony; null where it is, or where nothing was asked. */
export function notBred(code: string | undefined, { snapshot, names }: Visit): string | null {
  const species = snapshot.facts.species.get(code ?? '');
  if (code === undefined || (species !== undefined && isBred(species))) return null;
  if (species === undefined) return `"${code}" is no prey known here; choose from the list.`;
  const many = preyName(names.species, code);
  return species.cup === null
    ? `Nothing is known of how many young ${many} have; choose other prey.`
    : `"${many}" are raised in cups, not in colonies; choose other prey.`;
}
