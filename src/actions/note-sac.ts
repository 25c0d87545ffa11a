/** Writes down that a sac was laid or found: with it the days on which its young will first be fed. */
import { z } from 'zod';
import { hatchToFirstFeed, layingToFirstFeed, sacComesOff } from '../facts/sacs.ts';
import type { Kind } from '../husbandry/animals/index.ts';
import type { DayRange } from '../husbandry/calendar.ts';
import { ok, type Result } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { nextCodes } from '../store/index.ts';
import { chance, civilDay, flag, formId, gaugeMm, heads, someText } from './fields.ts';
import { findAnimal, findKind } from './find.ts';
import { action } from './perform.ts';
import { forwards, noSacDates, notBeforeLaid } from './sac-dates.ts';

const schema = z.strictObject({
  animal: someText,
  laidFrom: civilDay,
  laidTo: civilDay.optional(),
  /** First feed of the young; by default what the group's table says. */
  from: civilDay.optional(),
  to: civilDay.optional(),
  count: heads,
  gaugeMm: gaugeMm.optional(),
  chance: chance.default(sacComesOff.value),
  shareKept: chance.default(1),
  motherFasts: flag.default(false),
  demo: flag.default(false),
  formId,
});
type Given = z.output<typeof schema>;

export const noteSac = action({
  verb: 'note-sac',
  schema,
  pastDays: ['laidFrom', 'laidTo'],
  body: async ({ tx, facts }, given) => {
    const mother = await findAnimal(tx, given.animal);
    if (!mother.ok) return mother;
    const kind = findKind(facts, mother.value.kind);
    if (!kind.ok) return kind;
    const days = daysOf(given, kind.value);
    if (!days.ok) return days;
    const [code] = await nextCodes(tx, 'P', 1);
    const { laid, feed } = days.value;
    const row = {
      code: code!,
      kind: 'sac' as const,
      animalKind: kind.value.code,
      fromDay: feed.from,
      toDay: feed.to,
      chance: given.chance,
      count: given.count,
      gaugeMm: given.gaugeMm ?? middle(kind.value.firstFeedingGaugeMm.value),
      room: mother.value.room,
      animal: mother.value.code,
      cancelled: false,
      demo: given.demo || mother.value.demo,
      sac: {
        ...noSacDates,
        laid,
        shareKept: given.shareKept,
        motherFasts: given.motherFasts ? { from: laid.from, to: feed.from } : null,
      },
    };
    return ok({
      summary: `Sac of ${mother.value.code}, laid ${spokenDay(laid.from)}: first feed ${spokenDay(feed.from)} to ${spokenDay(feed.to)}`,
      puts: { planned_change: [row] },
      reply: { change: code! },
    });
  },
});

const middle = ([least, most]: readonly [number, number]): number => (least + most) / 2;

function daysOf(given: Given, kind: Kind): Result<{ readonly laid: DayRange; readonly feed: DayRange }> {
  const laid = { from: given.laidFrom, to: given.laidTo ?? given.laidFrom };
  const inOrder = forwards(laid, 'laidTo');
  if (!inOrder.ok) return inOrder;
  const [soonest, latest] = layingToFirstFeed[kind.group].value;
  const from = given.from ?? laid.from + soonest;
  const feed = { from, to: given.to ?? Math.max(from, laid.to + latest) };
  const fed = forwards(feed, 'to');
  if (!fed.ok) return fed;
  const after = notBeforeLaid({ ...noSacDates, laid }, feed.from, 'from');
  return after.ok ? ok({ laid, feed }) : after;
}

/** First feed of the young of a group that hatched on a day. */
export function feedAfterHatch(kind: Kind, day: number): DayRange {
  const [soonest, latest] = hatchToFirstFeed[kind.group].value;
  return { from: day + soonest, to: day + latest };
}
