/** Tonight: who is due, what to offer each out of which bin, and who must be left alone. */
import type { Evening, Serving } from '../appetite/index.ts';
import { isFeedingDay } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { type NextMeal, nextMealOf, reasonToWait } from './next-meal.ts';
import { type Proposal, proposalsFor, type Wishes } from './proposals.ts';
import { premoultTooLong, refusedAgain } from './worries.ts';

/** The round of a snapshot's day, before anybody is fed. Servings come in the order of the animals given. */
export function eveningOf(snapshot: Snapshot, wishes: Wishes = {}): Evening {
  const { today, calendar } = snapshot;
  const feedingDay = isFeedingDay(calendar, today);
  const here = snapshot.animals.map((animal) => nextMealOf(snapshot, animal));
  const withheld = here.flatMap((due) => withheldOf(snapshot, due));
  const alone = new Set(withheld.map(({ animal }) => animal));
  const due = feedingDay ? here.filter(({ animal, tonight }) => tonight && !alone.has(animal.code)) : [];
  return { day: today, feedingDay, servings: servingsOf(snapshot, due, wishes), withheld };
}

/** What these animals are offered on the snapshot's day, out of one larder; what they get is taken off the shelves. */
export function servingsOf(
  snapshot: Snapshot,
  due: readonly NextMeal[],
  wishes: Wishes = {},
): readonly Serving[] {
  const proposals = proposalsFor(snapshot, due, wishes);
  return due.map((each) => servingOf(snapshot, each, proposals.get(each.animal.code)));
}

function withheldOf(snapshot: Snapshot, due: NextMeal): Evening['withheld'] {
  const reason = due.from <= snapshot.today ? reasonToWait(due, snapshot.today) : null;
  if (reason === null) return [];
  const { code: animal, shelf } = due.animal;
  return [{ animal, shelf, reason, look: premoultTooLong(snapshot, due.animal) }];
}

function servingOf(
  { today, facts }: Snapshot,
  { animal, from, to }: NextMeal,
  { offer, choices }: Proposal = { offer: null, choices: [] },
): Serving {
  return {
    animal: animal.code,
    shelf: animal.shelf,
    dueFrom: from,
    dueTo: to,
    state: today > to ? 'late' : 'due',
    offer,
    choices,
    note: offer === null ? 'Nothing in the larder fits.' : null,
    look: refusedAgain(animal, facts.policy),
  };
}
