/** One animal of the morning: what it was offered, and what became of it with one tap. */
import type { FormEntry } from '../partials/form.tsx';
import type { MorningRow } from './morning.tsx';

/** What can have become of a meal; `key` is the key that says it. */
const OUTCOMES = [
  { outcome: 'taken', label: 'Ate', key: '1' },
  { outcome: 'part-taken', label: 'Ate some', key: '2' },
  { outcome: 'refused', label: 'Refused', key: '3' },
  { outcome: 'moulted', label: 'Moulted', key: undefined },
] as const;

interface MorningRowProps {
  readonly row: MorningRow;
  readonly entry: FormEntry;
  /** The part of the page it stands in. */
  readonly at: string;
  readonly showShelf: boolean;
}

export const MorningRowLine = ({ row, entry, at, showShelf }: MorningRowProps) => {
  const { animal, name, offered, shelf, likelyLeft } = row;
  const marked = entry.values[`became:${animal}`];
  return (
    <li class="serving" data-row tabindex={-1}>
      <input type="hidden" name="animal" value={animal} />
      <input type="hidden" name={`at:${animal}`} value={at} />
      <div class="serving-words">
        <strong class="who">{name}</strong>
        <span class="offer">
          {offered}
          {likelyLeft === null ? null : <small>{likelyLeft}</small>}
          {showShelf ? <small>{shelf}</small> : null}
        </span>
      </div>
      <fieldset class="choice-row outcomes">
        <legend class="unseen">{name}: what became of it</legend>
        {OUTCOMES.filter(({ outcome }) => row.moults || outcome !== 'moulted').map(
          ({ outcome, label, key }) => (
            <label class="tap">
              <input
                type="radio"
                name={`became:${animal}`}
                value={outcome}
                checked={marked === outcome}
                {...(key === undefined ? {} : { 'data-key': key })}
              />
              <span>
                {label}
                <span class="unseen"> ({name})</span>
              </span>
            </label>
          ),
        )}
      </fieldset>
    </li>
  );
};
