/** Records an evening's round as one act: who was offered what, and what else was seen on the way. */
import { z } from 'zod';
import { civilDate, type DayNumber } from '../husbandry/calendar.ts';
import type { Policy } from '../husbandry/policy.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { type AnimalRow, type EntryInput, eveningLines, rowsNamed } from '../store/index.ts';
import { standing } from './evening-standing.ts';
import { civilDay, flag, formId, heads, oneOf, portions, preyMm, someText } from './fields.ts';
import { findBin } from './find.ts';
import { withoutLateComers } from './late-comers.ts';
import { died, type LifeEvent, moulted } from './life-events.ts';
import { beforeItCame } from './lifetime.ts';
import { swapped } from './parse.ts';
import { action, type Scene } from './perform.ts';

const offered = z.strictObject({
  animal: someText,
  outcome: z.literal('offered'),
  bin: someText,
  heads,
  fromMm: preyMm,
  toMm: preyMm,
  preKilled: flag.default(false),
  portions: portions.default(1),
  /** What became of it, where that is known when it is written down. */
  became: oneOf(['taken', 'part-taken', 'refused']).optional(),
  bulk: flag.default(false),
});
const notOffered = z.strictObject({
  animal: someText,
  outcome: oneOf(['not offered', 'premoult', 'moulted', 'died']),
  bulk: flag.default(false),
});
const row = z.discriminatedUnion('outcome', [offered, notOffered], {
  error: ({ input }) =>
    `"${String((input as { outcome?: unknown } | undefined)?.outcome ?? '')}" is not one of: offered, not offered, premoult, moulted, died.`,
});
type Row = z.output<typeof row>;

export const recordEvening = action({
  verb: 'record-evening',
  schema: z.strictObject({
    day: civilDay.optional(),
    rows: z.array(row).min(1, { error: 'Nobody is named.' }),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, given) => {
    const day = given.day ?? scene.now.today;
    const tooOld = tooLongAgo(day, { today: scene.now.today, policy: scene.facts.policy });
    if (tooOld !== null) return err(tooOld);
    const lines = await scene.tx.ask(eveningLines(day));
    const rows = await withoutLateComers(scene, day, given.rows);
    const { open, already, against } = standing(rows, lines, given.formId);
    if (open.length === 0) return err(problem(NOBODY_LEFT, 'All of this evening is written down already.'));
    const checked = await checkNames(scene, open);
    if (!checked.ok) return checked;
    const events = await eventsOf(scene, day, open);
    if (!events.ok) return events;
    return ok({
      summary: summaryOf(day, open),
      puts: { animal: events.value.map((event) => event.row) },
      entries: events.value.flatMap(({ entries }) => entries),
      reply: { evening: civilDate(day), recorded: open.length, already, against },
    });
  },
});

/** Code of the Problem when every row sent is written down already. */
export const NOBODY_LEFT = 'nobody-left';

interface Limits {
  readonly today: DayNumber;
  readonly policy: Policy;
}

/** Refuses an evening that is too long ago to be remembered; null when it is not. */
export function tooLongAgo(day: DayNumber, { today, policy }: Limits): Problem | null {
  const most = policy.roundBackDays.value;
  if (today - day <= most) return null;
  const sentence = `"${civilDate(day)}" is more than ${most} days ago; write an evening down within ${most} days.`;
  return problem('too-long-ago', sentence, 'day');
}

async function checkNames({ tx }: Scene, rows: readonly Row[]): Promise<Result<null>> {
  for (const each of rows) {
    if (each.outcome !== 'offered') continue;
    const backwards = swapped(each.fromMm, each.toMm, 'fromMm');
    if (backwards !== null) return err(backwards);
  }
  for (const bin of new Set(rows.flatMap((each) => (each.outcome === 'offered' ? each.bin : [])))) {
    const found = await findBin(tx, bin);
    if (!found.ok) return found;
  }
  return ok(null);
}

async function eventsOf(
  scene: Scene,
  day: DayNumber,
  rows: readonly Row[],
): Promise<Result<readonly LifeEvent[]>> {
  const names = [...new Set(rows.map(({ animal }) => animal))];
  const known = new Map((await scene.tx.ask(rowsNamed('animal', names))).map((each) => [each.code, each]));
  const here = whoIsHere(rows, known, day);
  if (!here.ok) return here;
  const events = new Map<string, LifeEvent>();
  for (const each of rows) {
    const animal = events.get(each.animal)?.row ?? known.get(each.animal)!;
    if (animal.leftDay === day && known.get(each.animal)?.leftDay === null) return err(diedBefore(each));
    const event = await eventOf(scene, { animal, day, row: each });
    if (!event.ok) return event;
    const before = events.get(each.animal)?.entries ?? [];
    events.set(each.animal, { row: event.value.row, entries: [...before, ...event.value.entries] });
  }
  return ok([...events.values()]);
}

const diedBefore = ({ animal }: Row): Problem =>
  problem('animal-left', `${animal} died earlier in this round.`, 'animal');

/** Everybody named must have lived here that evening; who died later may still be fed on an earlier one. */
function whoIsHere(
  rows: readonly Row[],
  known: ReadonlyMap<string, AnimalRow>,
  day: DayNumber,
): Result<null> {
  const unknown = rows.find(({ animal }) => !known.has(animal));
  if (unknown !== undefined)
    return err(problem('unknown-animal', `There is no animal "${unknown.animal}" here.`, 'animal'));
  const gone = rows.flatMap(({ animal, outcome }) => {
    const { leftDay, leftReason, name } = known.get(animal)!;
    const here = leftDay === null || (leftDay > day && outcome !== 'died');
    return here ? [] : `${name === '' ? animal : name} (${leftReason} on ${spokenDay(leftDay)})`;
  });
  if (gone.length === 0) return ok(null);
  const who = gone.length === 1 ? `${gone[0]} no longer lives` : `${gone.join(', ')} no longer live`;
  return err(
    problem('animal-left', `${who} here and cannot be fed. The rest is as you marked it.`, 'animal'),
  );
}

interface Seen {
  readonly animal: AnimalRow;
  readonly day: DayNumber;
  readonly row: Row;
}

async function eventOf(scene: Scene, { animal, day, row: each }: Seen): Promise<Result<LifeEvent>> {
  const early = beforeItCame(animal, { day, field: 'day' });
  if (early !== null) return err(early);
  if (each.outcome === 'offered') return ok({ row: animal, entries: [offerOf(each, day)] });
  if (each.outcome === 'moulted') return moulted(scene, animal, { found: day });
  if (each.outcome === 'died') return died(animal, 1, day);
  const skip: EntryInput = { day, kind: 'skipped', animal: animal.code, details: { bulk: each.bulk } };
  const premoult: EntryInput = { day, kind: 'premoult', animal: animal.code };
  return ok({ row: animal, entries: each.outcome === 'premoult' ? [skip, premoult] : [skip] });
}

function offerOf(given: z.output<typeof offered>, day: DayNumber): EntryInput {
  const { animal, bin, heads: many, fromMm, toMm, preKilled, bulk, became } = given;
  const outcome = became === undefined ? {} : { outcome: became };
  const details = { preKilled, portions: given.portions, bulk, ...outcome };
  return { day, kind: 'offered', animal, bin, heads: many, fromMm, toMm, details };
}

function summaryOf(day: DayNumber, rows: readonly Row[]): string {
  const fed = rows.filter(({ outcome }) => outcome === 'offered').length;
  return `Round of ${spokenDay(day)}: ${fed} fed, ${rows.length - fed} not`;
}
