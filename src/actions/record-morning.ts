/** Closes an evening as one act: the exceptions by name, the rest as taken. */
import { z } from 'zod';
import { civilDate, type DayNumber } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { type EntryInput, type MealOutcome, type OfferLine, offersOf, openEvening } from '../store/index.ts';
import { civilDay, formId, oneOf, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { type LifeEvent, moulted } from './life-events.ts';
import { action, type Scene } from './perform.ts';

const exception = z.strictObject({
  animal: someText,
  outcome: oneOf(['taken', 'part-taken', 'refused', 'moulted']),
});
type Exception = z.output<typeof exception>;

export const recordMorning = action({
  verb: 'record-morning',
  schema: z.strictObject({
    /** The evening that is closed; by default the latest that is open. */
    evening: civilDay.optional(),
    exceptions: z.array(exception).default([]),
    formId,
  }),
  pastDays: ['evening'],
  body: async (scene, given) => {
    const { tx, now } = scene;
    const evening = given.evening ?? (await tx.ask(openEvening(now.today)));
    const offers = evening === null ? [] : await tx.ask(offersOf(evening));
    if (evening === null || offers.length === 0) return err(nothingOffered(evening));
    const events = await moultsOf(scene, offers, given.exceptions);
    if (!events.ok) return events;
    const outcomes = outcomesOf(offers, given.exceptions, now.today);
    return ok({
      summary: `Morning after ${spokenDay(evening)}: ${told(outcomes.length, given.exceptions.length)}`,
      puts: { animal: events.value.map(({ row }) => row) },
      entries: [...outcomes, ...events.value.flatMap(({ entries }) => entries)],
      reply: { evening: civilDate(evening), closed: outcomes.length },
    });
  },
});

/** '29 ate, 3 otherwise'. */
const told = (all: number, named: number): string =>
  named === 0 ? `${all} ate` : `${all - named} ate, ${named} otherwise`;

const nothingOffered = (evening: DayNumber | null) =>
  problem(
    'nothing-offered',
    evening === null
      ? 'No evening is open: everything offered has been closed.'
      : `Nothing was recorded as offered on ${civilDate(evening)}.`,
    'evening',
  );

/** What was found moulted; each exception must have been offered something. */
async function moultsOf(
  scene: Scene,
  offers: readonly OfferLine[],
  exceptions: readonly Exception[],
): Promise<Result<readonly LifeEvent[]>> {
  const events: LifeEvent[] = [];
  for (const { animal: code, outcome } of exceptions) {
    if (!offers.some(({ animal }) => animal === code))
      return err(problem('not-offered', `"${code}" was not offered anything that evening.`, 'exceptions'));
    if (outcome !== 'moulted') continue;
    const animal = await findAnimal(scene.tx, code);
    if (!animal.ok) return animal;
    const event = await moulted(scene, animal.value, { found: scene.now.today });
    if (!event.ok) return event;
    events.push(event.value);
  }
  return ok(events);
}

/** Who moulted has not eaten; who is not named has, if nothing else was written. */
function outcomesOf(
  offers: readonly OfferLine[],
  exceptions: readonly Exception[],
  day: DayNumber,
): readonly EntryInput[] {
  const named = new Map(exceptions.map(({ animal, outcome }) => [animal, outcome]));
  return offers
    .filter(({ animal, outcome }) => named.has(animal) || outcome === null)
    .map(({ id, animal }): EntryInput => {
      const seen = named.get(animal);
      const kind: MealOutcome = seen === 'moulted' ? 'refused' : (seen ?? 'taken');
      return { day, kind, animal, about: id, details: { bulk: seen === undefined } };
    });
}
