/** One animal of a sheet keyed in: what was printed, and the cell beside it. */
import type { PreyOffer } from '../../src/husbandry/appetite/index.ts';
import { NOTHING_SHOWN, offerText } from '../offer-text.ts';
import type { FormEntry } from '../partials/form.tsx';
import type { SheetRow } from './evening-sheet.tsx';

export interface KeyRow {
  readonly code: string;
  readonly name: string;
  /** As it stands on the evening's sheet; null where it does not. */
  readonly printed: SheetRow | null;
  /** What the sheet proposes; null where it proposes nothing, absent where it does not list the animal as eating. */
  readonly offer: PreyOffer | null | undefined;
}

export const KeyLine = ({ row, entry }: { row: KeyRow; entry: FormEntry }) => {
  const { code, name, printed, offer } = row;
  const cell = `cell:${code}`;
  const problem = entry.problems[cell];
  return (
    <li>
      <input type="hidden" name="animal" value={code} />
      {offer === undefined ? null : (
        <input
          type="hidden"
          name={`offer:${code}`}
          value={offer === null ? NOTHING_SHOWN : offerText(offer)}
        />
      )}
      <label for={`key-${code}`}>
        <b>{code}</b> {name}
      </label>
      <span class="key-printed" id={`key-${code}-printed`}>
        {printedWords(printed)}
      </span>
      <input
        class="key-cell"
        type="text"
        id={`key-${code}`}
        name={cell}
        value={entry.values[cell] ?? ''}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        maxlength={20}
        aria-describedby={`key-${code}-printed${problem === undefined ? '' : ` key-${code}-problem`}`}
        {...(problem === undefined ? {} : { 'aria-invalid': 'true' })}
      />
      {problem === undefined ? null : (
        <p class="problem" id={`key-${code}-problem`}>
          {problem}
        </p>
      )}
    </li>
  );
};

function printedWords(row: SheetRow | null): string {
  if (row === null) return 'not on the sheet';
  if (row.kind === 'nothing') return 'nothing fits';
  if (row.kind === 'leave') return 'not to be fed';
  return `${row.heads} ${row.prey} from ${row.bin}${row.first === '' ? '' : `, ${row.first}`}`;
}
