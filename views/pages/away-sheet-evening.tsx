/** One evening of the sitter's sheet: what to take out first, then box by box what to give. */
import type { CautionCode } from '../../src/husbandry/animals/index.ts';
import type { PreyOffer } from '../../src/husbandry/appetite/index.ts';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { grouped } from '../../src/husbandry/grouped.ts';
import { inBrief } from '../cautions.ts';
import { counted, type LengthUnit, lengthRange, longDay } from '../format.ts';
import { type Names, nameOf, preyName } from '../names.ts';
import { firstWords } from '../offer-words.ts';

export interface SheetRow {
  readonly animal: string;
  readonly place: string;
  readonly offer: PreyOffer | null;
  readonly cautions: readonly CautionCode[];
}

export interface SitterEvening {
  readonly day: DayNumber;
  /** In the order of the walk. */
  readonly rows: readonly SheetRow[];
}

interface EveningProps {
  readonly names: Names;
  readonly unit: LengthUnit;
  /** The bins are not known that far ahead; the prey is then written in by hand. */
  readonly byHand: boolean;
  readonly evening: SitterEvening;
}

/** Rows by place, in the order given. */
const byPlace = (rows: readonly SheetRow[]): ReadonlyMap<string, readonly SheetRow[]> =>
  grouped(rows, ({ place }) => place);

export const SheetEvening = (props: EveningProps) => {
  const { evening, names } = props;
  return (
    <section class="sheet-evening" aria-label={longDay(evening.day)} tabindex={0}>
      <h2>
        <span class="paper-tick" aria-hidden="true"></span>
        {longDay(evening.day)}: {counted(evening.rows.length, 'animal')}
      </h2>
      <TakeOut rows={evening.rows} names={names} />
      <table>
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">Done</span>
            </th>
            <th scope="col">Box</th>
            <th scope="col">Animal</th>
            <th scope="col">Give</th>
            <th scope="col">From</th>
            <th scope="col">Mind</th>
          </tr>
        </thead>
        {[...byPlace(evening.rows)].map(([place, rows]) => (
          <tbody>
            <tr class="sheet-place">
              <th scope="rowgroup" colspan={6}>
                {place === '' ? 'Place not written down' : place}
              </th>
            </tr>
            {rows.map((row) => (
              <SheetLine {...props} row={row} />
            ))}
          </tbody>
        ))}
      </table>
    </section>
  );
};

/** '12 house crickets from Small box' for the whole evening, to be put in a cup before the walk. */
const TakeOut = ({ rows, names }: { rows: readonly SheetRow[]; names: Names }) => {
  const sums = new Map<string, { heads: number; species: string }>();
  for (const { offer } of rows) {
    if (offer === null) continue;
    const before = sums.get(offer.bin)?.heads ?? 0;
    sums.set(offer.bin, { heads: before + offer.heads, species: offer.species });
  }
  if (sums.size === 0) return null;
  return (
    <p>
      Take out first:{' '}
      {[...sums]
        .map(
          ([bin, { heads, species }]) =>
            `${heads} ${preyName(names.species, species, heads)} from ${nameOf(names.bins, bin)}`,
        )
        .join('; ')}
      .
    </p>
  );
};

const SheetLine = ({ row, names, unit, byHand }: EveningProps & { readonly row: SheetRow }) => {
  const { offer } = row;
  return (
    <tr>
      <td>
        <span class="paper-tick" aria-hidden="true"></span>
      </td>
      <td class="sheet-code">{row.animal}</td>
      <th scope="row">{nameOf(names.animals, row.animal)}</th>
      <td>
        {offer === null ? (
          <span class="write-in">{byHand ? '' : 'nothing fits: ask'}</span>
        ) : (
          <>
            <b>{offer.heads}</b> {preyName(names.species, offer.species, offer.heads)},{' '}
            <span class="whole">{lengthRange(offer.fromMm, offer.toMm, unit)}</span>
          </>
        )}
      </td>
      <td>{offer === null ? '' : nameOf(names.bins, offer.bin)}</td>
      <td>
        {[offer === null ? '' : firstWords(offer), inBrief(row.cautions)]
          .filter((words) => words !== '')
          .join('; ')}
      </td>
    </tr>
  );
};
