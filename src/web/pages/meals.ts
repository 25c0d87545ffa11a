/** What an animal eats and when, in words and on the ruler. */

import type { Window } from '../../../views/charts/window-bracket.tsx';
import { type LengthUnit, lengthRange, longDay, sentenceCase, shortDay } from '../../../views/format.ts';
import { type Names, preyName } from '../../../views/names.ts';
import {
  type Animal,
  type CautionCode,
  eaterOf,
  type Kind,
  moults,
  ruleOf,
} from '../../husbandry/animals/index.ts';
import type { PreyOffer } from '../../husbandry/appetite/index.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import { widestWindow } from '../../husbandry/prey/index.ts';
import type { Facts, Snapshot } from '../../husbandry/snapshot.ts';
import { nextMealOf, reasonToWait } from '../../husbandry/supply/index.ts';
import type { Mm } from '../../husbandry/units.ts';

export interface Eating {
  readonly kind: Kind;
  readonly ownLengthMm: Mm;
  readonly window: Window;
  readonly stageWord: string;
}

/** What it is measured against, and the prey it takes. */
export function eatingOf(animal: Animal, { kinds, species }: Facts): Eating {
  const kind = kinds.get(animal.kind) as Kind;
  const rule = ruleOf(kind, animal);
  const eater = eaterOf(kind, animal);
  const window = widestWindow(rule, eater, species.values());
  return { kind, ownLengthMm: eater.referenceMm, window, stageWord: rule.words[0] ?? rule.stage };
}

/** The next meal in a few words, for a list. */
export function nextInShort(snapshot: Snapshot, animal: Animal): string {
  const meal = nextMealOf(snapshot, animal);
  const waits = reasonToWait(meal, snapshot.today);
  if (waits !== null) return waits.replace(/\.$/, '');
  if (snapshot.today > meal.to) return `late since ${shortDay(meal.to)}`;
  if (meal.evening === null) return 'no feeding day lies ahead';
  return meal.tonight || meal.evening === snapshot.today ? 'due tonight' : `due ${shortDay(meal.evening)}`;
}

interface Telling {
  readonly names: Names;
  readonly unit: LengthUnit;
  /** What it is offered tonight. */
  readonly offer: PreyOffer | null;
}

/** The next meal as a sentence. */
export function nextMeal(snapshot: Snapshot, animal: Animal, { names, unit, offer }: Telling): string {
  const meal = nextMealOf(snapshot, animal);
  const waits = reasonToWait(meal, snapshot.today);
  if (waits !== null) return `Not to be fed: ${waits}`;
  if (offer !== null) return `Eats tonight: ${offerWords(offer, { names, unit })}.`;
  const late = snapshot.today > meal.to ? `Late since ${longDay(meal.to)}. ` : '';
  if (meal.evening === null) return `${late}No feeding day lies ahead.`;
  return `${late}${sentenceCase(eveningWords(meal.evening, snapshot.today))}.`;
}

const eveningWords = (evening: DayNumber, today: DayNumber): string =>
  evening === today ? 'due tonight' : `eats next on ${longDay(evening)}`;

/** '3 house crickets, 6–8 mm, killed first'. */
const offerWords = (
  { heads, species, fromMm, toMm, killFirst, thawed, portions }: Omit<PreyOffer, 'bin'>,
  { names, unit }: Pick<Telling, 'names' | 'unit'>,
): string => {
  const prepared = thawed ? ', thawed' : killFirst ? ', killed first' : '';
  const first = portions > 1 ? `, killed and cut into ${portions}` : prepared;
  return `${heads} ${preyName(names.species, species, heads)}, ${lengthRange(fromMm, toMm, unit)}${first}`;
};

/** Where an animal stands, as the round is walked. */
export function placeOf(animal: Animal, { rooms }: Snapshot): string {
  const room = rooms.find(({ code }) => code === animal.room)?.name ?? '';
  if (rooms.length === 1) return animal.shelf === '' ? room : animal.shelf;
  return animal.shelf === '' ? room : `${room}, ${animal.shelf}`;
}

/** Animals whose kind never moults. */
export const moultlessIn = ({ animals, facts }: Snapshot): ReadonlySet<string> =>
  new Set(animals.filter(({ kind }) => !moults(facts.kinds.get(kind) as Kind)).map(({ code }) => code));

/** Whether it is in the last phase before its next moult, as seen or as its cycle says. */
export function nearsMoult(animal: Animal, { facts, today }: Snapshot): boolean {
  if (animal.premoultSeen !== null) return true;
  const rule = ruleOf(facts.kinds.get(animal.kind) as Kind, animal);
  const lastPhase = rule.acceptance.value.at(-1);
  if (rule.moult === null || animal.lastMoult === null || lastPhase === undefined) return false;
  return (today - animal.lastMoult.found) / rule.moult.meanDays.value >= lastPhase.from;
}

/** What to mind with this animal: live prey near a moult only where a moult is near. */
export const cautionsFor = (animal: Animal, snapshot: Snapshot): readonly CautionCode[] =>
  (snapshot.facts.kinds.get(animal.kind)?.cautions ?? []).filter(
    (code) => code !== 'live prey near a moult' || nearsMoult(animal, snapshot),
  );
