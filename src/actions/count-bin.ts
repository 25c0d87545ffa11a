/** Records a count by hand; with lengths it says all there is in the bin. */
import { z } from 'zod';
import type { DayNumber } from '../husbandry/calendar.ts';
import { headsSince } from '../husbandry/larder/index.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { observe } from './bin-fields.ts';
import { recordOf } from './bin-standing.ts';
import { civilDay, flag, formId, headsOrNone, preyMm, someText } from './fields.ts';
import { findBin } from './find.ts';
import { swapped } from './parse.ts';
import { action, type Scene } from './perform.ts';

export const countBin = action({
  verb: 'count-bin',
  schema: z.strictObject({
    bin: someText,
    heads: headsOrNone,
    fromMm: preyMm.optional(),
    toMm: preyMm.optional(),
    /** How many of them are grown, where these were counted apart. */
    grown: headsOrNone.optional(),
    day: civilDay.optional(),
    /** The keeper insists, though more was taken out since than was counted. */
    sure: flag.default(false),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { bin, heads, fromMm, toMm, grown, day = scene.now.today, sure }) => {
    if ((fromMm === undefined) !== (toMm === undefined))
      return err(problem('half-a-size', 'Give both lengths, least and greatest, or none.', 'fromMm'));
    const backwards = swapped(fromMm ?? null, toMm ?? null, 'fromMm');
    if (backwards !== null) return err(backwards);
    const amiss = grown === undefined ? null : grownTrouble({ heads, grown, sized: fromMm !== undefined });
    if (amiss !== null) return err(amiss);
    const enough = sure ? ok(null) : await enoughFor(scene, { bin, heads, day });
    if (!enough.ok) return enough;
    const lengths = { fromMm: fromMm ?? null, toMm: toMm ?? null };
    const details = grown === undefined ? {} : { details: { grown } };
    const entry = { day, kind: 'counted', bin, heads, ...lengths, ...details } as const;
    const ofThem = grown === undefined ? '' : `, ${grown} of them grown`;
    return observe(scene, entry, `Counted ${heads} in ${bin}${ofThem}`);
  },
});

interface GrownCounted {
  readonly heads: number;
  readonly grown: number;
  readonly sized: boolean;
}

function grownTrouble({ heads, grown, sized }: GrownCounted): Problem | null {
  if (grown > heads)
    return problem('more-grown-than-heads', `${grown} grown cannot be among ${heads} in all.`, 'grown');
  return sized
    ? problem('size-and-grown', 'Give one size for all of them, or how many are grown; not both.', 'grown')
    : null;
}

interface Counted {
  readonly bin: string;
  readonly heads: number;
  readonly day: DayNumber;
}

/** Whether a count leaves enough for what was taken out after it. */
async function enoughFor(scene: Scene, { bin: code, heads, day }: Counted): Promise<Result<null>> {
  if (day >= scene.now.today) return ok(null);
  const row = await findBin(scene.tx, code);
  if (!row.ok) return row;
  const { events } = await recordOf(scene, row.value, scene.now.today);
  const { fed, out, came } = headsSince(events, day);
  if (fed + out <= heads + came) return ok(null);
  const gone = [said(fed, 'fed'), said(out, 'taken out')].filter((words) => words !== '').join(' and ');
  const added = came > 0 ? `, and ${came} came in` : '';
  const sentence = `You wrote ${heads}, but ${gone} since ${spokenDay(day)}${added}. Is the number right, and the day? Write them again, or tick that you are sure.`;
  return err(problem('less-than-taken', sentence, 'heads'));
}

const said = (heads: number, how: string): string =>
  heads === 0 ? '' : `${heads} ${heads === 1 ? 'was' : 'were'} ${how}`;
