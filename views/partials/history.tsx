/** A record's history: what was written down, newest first, each line with its undo. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { recordDay } from '../format.ts';
import { paths } from '../paths.ts';

export interface HistoryLine {
  /** Id of the act, for undo. */
  readonly id: string;
  readonly day: DayNumber;
  readonly sentence: string;
  /** Already undone: shown struck through. */
  readonly undone: boolean;
  readonly canUndo: boolean;
}

interface HistoryProps {
  readonly title?: string;
  readonly lines: readonly HistoryLine[];
  readonly formId: string;
}

export const History = ({ title = 'What happened', lines, formId }: HistoryProps) => (
  <section aria-labelledby="history">
    <h2 id="history">{title}</h2>
    {lines.length === 0 ? <p>Nothing is written down yet.</p> : null}
    <ol class="history">
      {lines.map((line) => (
        <HistoryItem line={line} formId={formId} />
      ))}
    </ol>
  </section>
);

interface ItemProps {
  readonly line: HistoryLine;
  readonly formId: string;
}

/** One line: its day, what was done, and its undo. */
export const HistoryItem = ({ line: { id, day, sentence, undone, canUndo }, formId }: ItemProps) => (
  <li>
    <time>{recordDay(day)}</time>
    {undone ? (
      <span>
        <del>{sentence}</del> undone
      </span>
    ) : (
      <span>{sentence}</span>
    )}
    {canUndo && !undone ? (
      <form method="post" action={paths.undo(id)}>
        <input type="hidden" name="formId" value={`${formId}.undo.${id}`} />
        <button type="submit" class="quiet small">
          Undo<span class="unseen">: {sentence}</span>
        </button>
      </form>
    ) : null}
  </li>
);
