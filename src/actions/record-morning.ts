/** Closes an evening, or a part of it, as one act: the exceptions by name, the rest as taken. */
import { z } from 'zod';
import { civilDate, type DayNumber } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import {
  type EntryInput,
  moultedSince,
  type OfferLine,
  offersOf,
  openEvening,
  openEvenings,
  rowNamed,
} from '../store/index.ts';
import { civilDay, formId, oneOf, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { type LifeEvent, moulted } from './life-events.ts';
import { type MorningMark, morningStanding } from './morning-standing.ts';
import { action, type Scene } from './perform.ts';

const exception = z.strictObject({
  animal: someText,
  outcome: oneOf(['taken', 'part-taken', 'refused', 'moulted']),
});

export const recordMorning = action({
  verb: 'record-morning',
  schema: z.strictObject({
    /** The evening that is closed; by default the latest that is open. */
    evening: civilDay.optional(),
    exceptions: z.array(exception).default([]),
    /** Whose meal counts as taken where nothing is said; by default everybody's who was offered one. */
    rest: z.array(someText).optional(),
    formId,
  }),
  pastDays: ['evening'],
  body: async (scene, given) => {
    const { tx, now } = scene;
    const evening = given.evening ?? (await tx.ask(openEvening(now.today)));
    const offers = evening === null ? [] : await tx.ask(offersOf(evening));
    const offered = await allOffered(scene, offers, given.exceptions);
    if (!offered.ok) return offered;
    if (evening === null || offers.length === 0) return err(nothingOffered(evening));
    const { marks, against } = morningStanding(given.exceptions, offers, await tx.ask(moultedSince(evening)));
    const events = await moultsOf(scene, marks);
    if (!events.ok) return events;
    const outcomes = outcomesOf(offers, { marks, rest: given.rest, day: now.today });
    if (outcomes.length === 0 && against.length === 0) return err(closedBefore(evening));
    const others = (await tx.ask(openEvenings(now.today))).filter((day) => day !== evening);
    const waiting = offers.filter(({ outcome }) => outcome === null).length;
    const told = new Set(outcomes.map(({ about }) => about));
    const closed = offers.filter(({ outcome, id }) => outcome === null && told.has(id));
    return ok({
      summary: `Morning after ${spokenDay(evening)}: ${countWords(outcomes.length, marks.length)}`,
      puts: { animal: events.value.map(({ row }) => row) },
      entries: [...outcomes, ...events.value.flatMap(({ entries }) => entries)],
      reply: {
        evening: civilDate(evening),
        closed: outcomes.length,
        against,
        /** Meals of this and of other evenings nobody has told of yet. */
        more: waiting > closed.length || others.length > 0,
      },
    });
  },
});

/** '29 ate, 3 otherwise'. */
const countWords = (all: number, named: number): string =>
  named === 0 ? `${all} ate` : `${all - named} ate, ${named} otherwise`;

const nothingOffered = (evening: DayNumber | null) =>
  problem(
    'nothing-offered',
    evening === null
      ? 'No evening is open: everything offered has been closed.'
      : `Nothing was recorded as offered on ${civilDate(evening)}.`,
    'evening',
  );

const closedBefore = (evening: DayNumber) =>
  problem(
    'closed-before',
    `The morning after ${spokenDay(evening)} is written down already. Nothing was changed.`,
    'evening',
  );

/** Each animal named must live here and have been offered something. */
async function allOffered(
  { tx }: Scene,
  offers: readonly OfferLine[],
  marks: readonly MorningMark[],
): Promise<Result<null>> {
  for (const { animal: code } of marks) {
    if (offers.some(({ animal }) => animal === code)) continue;
    const row = await tx.ask(rowNamed('animal', code));
    const name = row === null || row.name === '' ? code : row.name;
    const gone = row?.leftDay == null ? null : `${row.leftReason} on ${spokenDay(row.leftDay)}`;
    const sentence =
      gone === null
        ? `"${name}" was not offered anything that evening.`
        : `${name} no longer lives here (${gone}), so what became of its meal is left out. The rest is as you marked it.`;
    return err(problem(gone === null ? 'not-offered' : 'animal-left', sentence, 'exceptions'));
  }
  return ok(null);
}

/** What was found moulted. */
async function moultsOf(scene: Scene, marks: readonly MorningMark[]): Promise<Result<readonly LifeEvent[]>> {
  const events: LifeEvent[] = [];
  for (const { animal: code } of marks.filter(({ outcome }) => outcome === 'moulted')) {
    const animal = await findAnimal(scene.tx, code);
    if (!animal.ok) return animal;
    const event = await moulted(scene, animal.value, { found: scene.now.today });
    if (!event.ok) return event;
    events.push(event.value);
  }
  return ok(events);
}

interface Told {
  readonly marks: readonly MorningMark[];
  readonly rest: readonly string[] | undefined;
  readonly day: DayNumber;
}

/** Who moulted has not eaten; who is not named has, if nothing else was written. */
function outcomesOf(offers: readonly OfferLine[], { marks, rest, day }: Told): readonly EntryInput[] {
  const named = new Map(marks.map(({ animal, outcome }) => [animal, outcome]));
  const others = rest === undefined ? null : new Set(rest);
  const isRest = ({ animal, outcome }: OfferLine) => outcome === null && (others?.has(animal) ?? true);
  return offers
    .filter((offer) => named.has(offer.animal) || isRest(offer))
    .map(({ id, animal }): EntryInput => {
      const seen = named.get(animal);
      const kind = seen === 'moulted' ? 'refused' : (seen ?? 'taken');
      return { day, kind, animal, about: id, details: { bulk: seen === undefined } };
    });
}
