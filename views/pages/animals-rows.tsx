/** Rows of the list of animals: a tick, the name, the next meal, and the prey it takes on the ruler. */
import type { Mm } from '../../src/husbandry/units.ts';
import { RulerHead, type Window, WindowBracket } from '../charts/window-bracket.tsx';
import { type LengthUnit, lengthRange } from '../format.ts';
import { paths } from '../paths.ts';

export interface AnimalRow {
  readonly code: string;
  readonly name: string;
  readonly kindName: string;
  readonly stageWord: string;
  /** More than 1 for a group kept and fed together. */
  readonly count: number;
  /** Said only where the rows do not stand under their shelf. */
  readonly place: string | null;
  /** Body length, derived from the gauge. */
  readonly ownLengthMm: Mm;
  readonly window: Window;
  /** 'due Thu 27 Nov', 'waits after its moult until 3 Dec' ... */
  readonly next: string;
  /** What is worth a look: 'refused 3 times', 'size assumed'. */
  readonly remarks: readonly string[];
}

export interface HerdSection {
  /** The shelf, or the order the rows stand in. */
  readonly head: string;
  readonly rows: readonly AnimalRow[];
}

export const Rows = ({ section, unit }: { section: HerdSection; unit: LengthUnit }) => (
  <table class="animals stacks">
    <caption>{section.head}</caption>
    <thead>
      <tr>
        <td class="tick-cell"></td>
        <th scope="col">Name and kind</th>
        <th scope="col">Next meal</th>
        <th scope="col" class="on-ruler">
          Prey it takes, {unit}
          <div class="strip-row">
            <RulerHead unit={unit} />
          </div>
        </th>
      </tr>
    </thead>
    <tbody>
      {section.rows.map((row) => (
        <Row row={row} unit={unit} />
      ))}
    </tbody>
  </table>
);

const Row = ({ row, unit }: { row: AnimalRow; unit: LengthUnit }) => (
  <tr>
    <td class="tick-cell">
      <label class="tick">
        <input type="checkbox" name="animal" value={row.code} />
        <span class="unseen">Choose {row.name}</span>
      </label>
    </td>
    <th scope="row">
      <a href={paths.animal(row.code)}>{row.name}</a>
      {row.count > 1 ? ` × ${row.count}` : ''}
      <small>
        {row.kindName}, {row.stageWord}
        {row.place === null ? null : <span class="row-place"> · {row.place}</span>}
      </small>
    </th>
    <td>
      {row.next}
      {row.remarks.length === 0 ? null : <small>{row.remarks.join(', ')}</small>}
    </td>
    <td class="on-ruler">
      <div class="strip-row">
        <WindowBracket
          id={`w-${row.code}`}
          name={row.name}
          window={row.window}
          ownLengthMm={row.ownLengthMm}
          unit={unit}
        />
        <small>{lengthRange(row.window.minMm, row.window.maxMm, unit)}</small>
      </div>
    </td>
  </tr>
);
