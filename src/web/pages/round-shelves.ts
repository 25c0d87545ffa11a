/** The shelves of a round: which rows one shelf's button sends, and from which bin each shelf is fed. */
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { placeOf } from './meals.ts';
import type { Row, Sheet } from './round-rows.ts';

/** Rows of the shelf sent and every mark made by hand elsewhere; all rows when no shelf is named. */
export function shelfOf(
  snapshot: Snapshot,
  { shelf, animal }: Sheet,
  rows: readonly Row[],
): Result<readonly Row[]> {
  if (shelf === undefined) return ok(rows);
  const places = placesOf(snapshot);
  if (!animal.some((code) => places.get(code) === shelf))
    return err(
      problem('no-such-shelf', `None of these animals stands on "${shelf}" any more. See where below.`),
    );
  return ok(rows.filter((row) => places.get(row.animal) === shelf || row.bulk !== true));
}

const placesOf = (snapshot: Snapshot): ReadonlyMap<string, string> =>
  new Map(snapshot.animals.map((animal) => [animal.code, placeOf(animal, snapshot)]));

const OF_SHELF = 'from:';

/** Bin chosen for each shelf, from fields or a query named `from:<shelf>`. */
export const chosenBins = (fields: Readonly<Record<string, unknown>>): ReadonlyMap<string, string> =>
  new Map(
    Object.entries(fields).flatMap(([name, bin]) =>
      name.startsWith(OF_SHELF) && typeof bin === 'string' && bin !== ''
        ? [[name.slice(OF_SHELF.length), bin]]
        : [],
    ),
  );

/** The same, by animal. */
export function preferredBins(
  snapshot: Snapshot,
  byShelf: ReadonlyMap<string, string>,
): ReadonlyMap<string, string> {
  return new Map(
    [...placesOf(snapshot)].flatMap(([animal, place]) => {
      const bin = byShelf.get(place);
      return bin === undefined ? [] : [[animal, bin] as const];
    }),
  );
}
