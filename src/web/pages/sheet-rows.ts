/** The rows of a printed sheet, shelf by shelf in the order of the walk. */

import { lengthRange } from '../../../views/format.ts';
import { preyName } from '../../../views/names.ts';
import { firstWords } from '../../../views/offer-words.ts';
import type { SheetRow } from '../../../views/pages/evening-sheet.tsx';
import type { Animal } from '../../husbandry/animals/index.ts';
import type { Evening, PreyOffer, Serving } from '../../husbandry/appetite/index.ts';
import { grouped } from '../../husbandry/grouped.ts';
import { placeOf } from './meals.ts';
import type { Visit } from './visit.ts';

export interface OnShelf<T> {
  readonly shelf: string;
  readonly rows: readonly T[];
}

/** Rows of those animals that have one, each under its shelf. */
export function byShelf<T>({ snapshot }: Visit, rowOf: (animal: Animal) => T | null): readonly OnShelf<T>[] {
  const placed = snapshot.animals.flatMap((animal) => {
    const row = rowOf(animal);
    return row === null ? [] : [{ shelf: placeOf(animal, snapshot), row }];
  });
  const shelves = grouped(placed, ({ shelf }) => shelf);
  return [...shelves].map(([shelf, those]) => ({ shelf, rows: those.map(({ row }) => row) }));
}

/** Who eats and who must wait, as the evening lists them. */
export function eveningRows(here: Visit, evening: Evening): readonly OnShelf<SheetRow>[] {
  const servings = new Map(evening.servings.map((serving) => [serving.animal, serving]));
  const withheld = new Map(evening.withheld.map(({ animal, reason }) => [animal, reason]));
  return byShelf(here, ({ code }) => {
    const who = { code, name: here.names.animals.get(code) ?? code };
    const serving = servings.get(code);
    const reason = withheld.get(code);
    if (serving !== undefined) return { ...who, ...servingWords(here, serving) };
    return reason === undefined ? null : { ...who, kind: 'leave', reason };
  });
}

const servingWords = (here: Visit, { offer, state }: Serving) =>
  offer === null
    ? ({ kind: 'nothing' } as const)
    : ({ kind: 'feed', late: state === 'late', ...offerWords(here, offer) } as const);

const offerWords = (
  { names, unit }: Visit,
  { species, heads, fromMm, toMm, bin, killFirst, thawed, portions }: PreyOffer,
) => ({
  heads,
  prey: preyName(names.species, species, heads),
  lengths: lengthRange(fromMm, toMm, unit),
  bin,
  first: firstWords({ killFirst, thawed: thawed === true, portions }),
});
