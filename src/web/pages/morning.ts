/** The morning after: what became of the meals offered. */
import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { lengthRange } from '../../../views/format.ts';
import { preyName } from '../../../views/names.ts';
import { MorningPage, type MorningRow } from '../../../views/pages/morning.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { civilDay } from '../../actions/fields.ts';
import { recordMorning } from '../../actions/index.ts';
import { type OfferLine, offersOf, openEvening, rowsOf } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { nearsMoult, placeOf } from './meals.ts';
import { posted } from './posted.ts';
import { typed } from './typed.ts';
import { page, type Visit, visit } from './visit.ts';

const codes = z.array(z.string()).default([]);
/** Of two marks the later one counts. */
const OUTCOMES = { refused: 'refused', partTaken: 'part-taken', moulted: 'moulted' } as const;
const marks = Object.keys(OUTCOMES) as (keyof typeof OUTCOMES)[];

export function morningRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.morning, (c) => showMorning(house, c));
  app.post(
    paths.morning,
    posted(house, {
      form: () => 'morning',
      many: ['animal', ...marks],
      shape: () => ({
        day: typed(civilDay),
        animal: codes,
        refused: codes,
        partTaken: codes,
        moulted: codes,
      }),
      act: (given, { formId }) => {
        const seen = marks.flatMap((mark) =>
          given[mark].map((animal) => ({ animal, outcome: OUTCOMES[mark] })),
        );
        const exceptions = [...new Map(seen.map((each) => [each.animal, each])).values()];
        return recordMorning(house.context, { evening: given.day, exceptions, formId });
      },
      next: () => paths.tonight,
      again: (c, refused) => showMorning(house, c, refused),
    }),
  );
}

async function showMorning(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { store, clock } = house.context;
  const { today } = clock();
  const day = (await store.ask(openEvening(today - 1))) ?? (await store.ask(openEvening(today))) ?? today;
  const { offers, bins } = await store.askAll({ offers: offersOf(day), bins: rowsOf('bin') });
  const species = new Map(bins.map((bin) => [bin.code, bin.species]));
  const waiting = offers.filter(({ outcome }) => outcome === null);
  const rows = morningRows(here, waiting, species);
  return page(c, MorningPage({ ...here, day, rows }), refused === null ? 200 : 422);
}

/** One row an animal, in shelf order. */
function morningRows(
  here: Visit,
  offers: readonly OfferLine[],
  species: ReadonlyMap<string, string>,
): readonly MorningRow[] {
  const { snapshot, names } = here;
  return snapshot.animals.flatMap((animal): MorningRow[] => {
    const own = offers.filter((offer) => offer.animal === animal.code);
    if (own.length === 0) return [];
    return [
      {
        animal: animal.code,
        name: names.animals.get(animal.code) ?? animal.code,
        shelf: placeOf(animal, snapshot),
        offered: own.map((offer) => offerOf(offer, here, species)).join('; '),
        nearMoult: nearsMoult(animal, snapshot),
      },
    ];
  });
}

function offerOf(
  { heads, bin, fromMm, toMm }: OfferLine,
  { names, unit }: Visit,
  species: ReadonlyMap<string, string>,
): string {
  if (heads === null || bin === null) return 'prey, not said which';
  const lengths = fromMm === null || toMm === null ? '' : `, ${lengthRange(fromMm, toMm, unit)}`;
  return `${heads} ${preyName(names.species, species.get(bin) ?? '', heads)}${lengths}`;
}
