/** Tonight's round as it is sent: each row as proposed unless a mark says otherwise, all of it one act. */

import type { Context } from 'hono';
import { z } from 'zod';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { civilDay, headsOrNone } from '../../actions/fields.ts';
import { loadSnapshot, recordEvening } from '../../actions/index.ts';
import { eaterOf, ruleOf } from '../../husbandry/animals/index.ts';
import type { Serving } from '../../husbandry/appetite/index.ts';
import { parseCivilDate } from '../../husbandry/calendar.ts';
import { windowFor } from '../../husbandry/prey/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { eveningOf } from '../../husbandry/supply/index.ts';
import { roundDone } from '../../store/index.ts';
import type { House } from './house.ts';
import { lengthsIn } from './lengths-in.ts';
import { posted } from './posted.ts';
import { maybe, typed } from './typed.ts';

const MARKS = ['notFed', 'premoult', 'moulted', 'died'] as const;
const codes = z.array(z.string()).default([]);
const marksShape = { notFed: codes, premoult: codes, moulted: codes, died: codes };

/** Reads the marks, works out what each row got, and records it. */
export async function recordRound(
  house: House,
  c: Context,
  again: (refused: Refused) => Promise<Response>,
): Promise<Response> {
  const asked = await c.req.parseBody({ all: true });
  const own = Object.keys(asked).filter((name) => /^(heads|bin):/.test(name));
  const ownShape = Object.fromEntries(
    own.map((name) => [name, name.startsWith('heads:') ? maybe(headsOrNone) : maybe(z.string())]),
  );
  const post = posted(house, {
    form: () => 'round',
    many: ['animal', ...MARKS],
    shape: () => ({ day: typed(civilDay), animal: codes, ...marksShape, ...ownShape }),
    act: async (given, { formId }) => {
      const day = parseCivilDate(given.day);
      if (!day.ok) return day;
      const snapshot = await loadSnapshot(house.context, day.value);
      const done = await house.context.store.ask(roundDone(day.value));
      const animals = new Set(given.animal.filter((animal) => !done.includes(animal)));
      const rows = rowsOf(snapshot, given, animals);
      return rows.ok ? recordEvening(house.context, { day: given.day, rows: rows.value, formId }) : rows;
    },
    next: () => paths.tonight,
    again: (_, refused) => again(refused),
    fields: { heads: 'animal' },
  });
  return post(c);
}

interface Marks {
  readonly animal: readonly string[];
  readonly notFed: readonly string[];
  readonly premoult: readonly string[];
  readonly moulted: readonly string[];
  readonly died: readonly string[];
}
/** Marks, and under `heads:<animal>` and `bin:<animal>` what was offered instead. */
type Sheet = Marks & Readonly<Record<string, unknown>>;
type Row = Parameters<typeof recordEvening>[1]['rows'][number];

/** Rows of those of whom nothing is written yet; a row that is due no more and has no mark is left out. */
function rowsOf(snapshot: Snapshot, sheet: Sheet, animals: ReadonlySet<string>): Result<Row[]> {
  const servings = new Map(eveningOf(snapshot).servings.map((serving) => [serving.animal, serving]));
  const rows: Row[] = [];
  for (const animal of animals) {
    const row = rowOf(snapshot, sheet, { animal, serving: servings.get(animal) });
    if (!row.ok) return row;
    if (servings.has(animal) || row.value.bulk !== true) rows.push(row.value);
  }
  return rows.length === 0 ? err(problem('nobody-left', NOBODY_LEFT)) : ok(rows);
}

const NOBODY_LEFT = 'This round is recorded already. What is left to feed is shown here.';

interface Fed {
  readonly animal: string;
  readonly serving: Serving | undefined;
}

function rowOf(snapshot: Snapshot, sheet: Sheet, { animal, serving }: Fed): Result<Row> {
  const seen = (['died', 'moulted', 'premoult'] as const).find((mark) => sheet[mark].includes(animal));
  if (seen !== undefined) return ok({ animal, outcome: seen });
  const bin = sheet[`bin:${animal}`] as string | undefined;
  const heads = sheet[`heads:${animal}`] as string | undefined;
  const offer = serving?.offer ?? null;
  const otherwise = heads !== undefined || bin !== undefined;
  const nothing = heads === '0' || (offer === null && !otherwise);
  if (nothing || (sheet.notFed.includes(animal) && (offer !== null || !otherwise)))
    return ok({ animal, outcome: 'not offered', bulk: offer === null && !otherwise });
  if (offer !== null && (bin === undefined || bin === offer.bin))
    return ok({ ...offered(animal, offer), heads: heads ?? offer.heads, bulk: !otherwise });
  return fromOtherBin(snapshot, { animal, bin, heads: heads ?? offer?.heads });
}

const offered = (animal: string, offer: NonNullable<Serving['offer']>) => ({
  animal,
  outcome: 'offered' as const,
  bin: offer.bin,
  fromMm: offer.fromMm,
  toMm: offer.toMm,
  preKilled: offer.killFirst,
  portions: offer.portions,
});

interface Instead {
  readonly animal: string;
  readonly bin: string | undefined;
  readonly heads: string | number | undefined;
}

/** Prey of another bin: as long as it is there now, up to the longest this animal takes. */
function fromOtherBin(snapshot: Snapshot, { animal, bin, heads }: Instead): Result<Row> {
  if (bin === undefined) return err(missing('Say from which bin it came.', `bin:${animal}`));
  if (heads === undefined) return err(missing('Say how many it got.', `heads:${animal}`));
  const longestMm = longestFor(snapshot, animal, bin);
  const lengths = lengthsIn(snapshot, bin, { field: `bin:${animal}`, longestMm });
  if (!lengths.ok) return lengths;
  return ok({ animal, outcome: 'offered', bin, heads, ...lengths.value });
}

const missing = (sentence: string, field: string) => problem('needed', sentence, field);

function longestFor({ animals, bins, facts }: Snapshot, code: string, binCode: string): number {
  const animal = animals.find((each) => each.code === code);
  const kind = facts.kinds.get(animal?.kind ?? '');
  const species = facts.species.get(bins.find((each) => each.code === binCode)?.species ?? '');
  if (animal === undefined || kind === undefined || species === undefined) return Number.POSITIVE_INFINITY;
  const window = windowFor(ruleOf(kind, animal), eaterOf(kind, animal), species);
  return window?.maxMm ?? Number.POSITIVE_INFINITY;
}
