/** An answer to a colony start as its page shows it. */
import type { Context } from 'hono';
import type { ColonyShown, ColonyTold } from '../../../views/pages/colony-answer.tsx';
import { entryOf } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import type { ColonyAnswer, ColonyQuestion, ColonyStart } from '../../husbandry/colony/index.ts';
import type { Problem } from '../../husbandry/problems.ts';
import { roomTemp } from '../../husbandry/rooms.ts';
import { type ColonyAsked, remarksOn } from './colony-asked.ts';
import { colonySources, lostWithinYear } from './colony-sources.ts';
import type { Visit } from './visit.ts';

export const queryOf = (c: Context): string => new URL(c.req.url).search;

export const noAnswer = (c: Context, { sentence }: Problem): ColonyShown => ({
  state: 'none',
  sentence,
  again: `${paths.colonyStart}${queryOf(c)}`,
});

export function shownAs({ outcome }: ColonyAnswer, c: Context, here: Visit, asked: ColonyAsked): ColonyShown {
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
