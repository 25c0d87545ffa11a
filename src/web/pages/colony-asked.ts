/** A colony start as it is asked in an address: what was typed, and the question if it can be answered. */
import type { Context } from 'hono';
import { preyName } from '../../../views/names.ts';
import { spaceText } from '../../../views/pages/bin-form.tsx';
import type { FormEntry } from '../../../views/partials/form.tsx';
import type { DayNumber } from '../../husbandry/calendar.ts';
import { type ColonyQuestion, colonyAmiss } from '../../husbandry/colony/index.ts';
import { growthRemarks, layingRemarks } from '../../husbandry/larder/index.ts';
import { type DayTemp, meanOfDay, type PreySpecies } from '../../husbandry/prey/index.ts';
import type { Problem } from '../../husbandry/problems.ts';
import { roomTemp } from '../../husbandry/rooms.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { plural } from '../../husbandry/words.ts';
import type { Guess } from './colony-guess.ts';
import {
  binIn,
  type ColonyFields,
  colonyShape,
  pricesIn,
  readyIn,
  startersIn,
  wantedIn,
} from './colony-shape.ts';
import { readFields, type Typed, valuesOf } from './sent-fields.ts';
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

/** Reads the address; a form not sent yet is filled with a guess. */
export function colonyAsked(c: Context, here: Visit, species: PreySpecies, guess: Guess): ColonyAsked {
  const shape = colonyShape(here.unit, species);
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
  return settled(asked, read.given as ColonyFields, here);
}

const guessTyped = (guess: Guess): Typed =>
  Object.fromEntries(Object.entries(guess).map(([name, value]) => [name, [value]]));

const withProblems = (asked: ColonyAsked, problems: FormEntry['problems']): ColonyAsked => ({
  ...asked,
  entry: { ...asked.entry, problems },
});

/** What was read as a question, if it can be answered at all. */
function settled(asked: ColonyAsked, given: ColonyFields, { snapshot }: Visit): ColonyAsked {
  const { species } = asked;
  const { facts, rooms, today } = snapshot;
  const wrong = wrongIn(given, { rooms, today }) ?? spaceAmiss(given, species);
  if (wrong !== null) return withProblems(asked, wrong);
  const starters = startersIn(given, species);
  if (!starters.ok) return withProblems(asked, { size: starters.problem.sentence });
  const set = roomTemp(rooms, given.room);
  const question: ColonyQuestion = {
    species: species.code,
    dayC: given.day ?? set.maxC,
    nightC: given.night ?? set.minC,
    wanted: wantedIn(given, species),
    starters: starters.value,
    binSize: binIn(given),
    prices: pricesIn(given),
  };
  const amiss = colonyAmiss(facts, question);
  if (amiss) return withProblems(asked, besideIt(amiss, question, species));
  return { ...asked, question, readyOn: readyIn(given), currency: given.currency };
}

/** What is wrong with fields that can each be read. */
function wrongIn(
  given: ColonyFields,
  { rooms, today }: Pick<Snapshot, 'rooms' | 'today'>,
): FormEntry['problems'] | null {
  if (!rooms.some(({ code }) => code === given.room))
    return { room: `"${given.room}" is not a room here; choose one from the list.` };
  const ready = readyIn(given);
  if (ready !== null && ready <= today)
    return { ready: `"${given.ready}" is not ahead; give a day that is still to come.` };
  if (given.head === null && (given.starters !== null || given.week !== null))
    return { head: 'Say what one bought head costs too: costs are compared with that.' };
  return null;
}

/** A size in another measure tells nothing of how many it holds. */
function spaceAmiss(
  { space, capacity }: ColonyFields,
  { commonName, crowding }: PreySpecies,
): FormEntry['problems'] | null {
  if (space === null || capacity !== undefined || space.by === crowding?.by) return null;
  const said = spaceText(space);
  const better = crowding ? `give ${SPACE_WORDS[crowding.by]}, or heads when full` : 'give heads when full';
  return { space: `"${said}" does not tell how many ${plural(commonName)} a bin holds; ${better}.` };
}
const SPACE_WORDS = { area: 'its surface in dm2', volume: 'litres', medium: 'grams of medium' } as const;

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
