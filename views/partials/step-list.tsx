/** Steps of the keeper as a list, each with its undo, or with what takes it up again. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { counted } from '../format.ts';
import { paths } from '../paths.ts';

export interface StepUndo {
  /** Numbers of the acts, parted by commas, or of the undo that is undone. */
  readonly id: string;
  readonly kind: 'undo' | 'again';
  /** How many acts go together. */
  readonly acts: number;
}

export interface StepLine {
  readonly id: string;
  readonly day: DayNumber;
  /** Time it was written, '21:14'. */
  readonly time: string;
  readonly sentence: string;
  /** Its acts, where it has several. */
  readonly parts: readonly string[];
  readonly undone: boolean;
  readonly undo: StepUndo | null;
  /** Newer acts that rest on it, newest first. */
  readonly resting: readonly string[];
}

export const StepList = ({ lines, formId }: { lines: readonly StepLine[]; formId: string }) => (
  <ol class="steps">
    {lines.map((line) => (
      <Step line={line} formId={formId} />
    ))}
  </ol>
);

const Step = ({ line, formId }: { line: StepLine; formId: string }) => (
  <li>
    <time>{line.time}</time>
    <div>
      {line.undone ? (
        <p>
          <del>{line.sentence}</del> Undone.
        </p>
      ) : (
        <p>{line.sentence}</p>
      )}
      {line.parts.length === 0 ? null : (
        <details>
          <summary>In {counted(line.parts.length, 'part')}</summary>
          <ul>
            {line.parts.map((part) => (
              <li>{part}</li>
            ))}
          </ul>
        </details>
      )}
      {line.resting.length === 0 ? null : <Resting {...line} />}
    </div>
    {line.undo === null ? null : <UndoButton undo={line.undo} sentence={line.sentence} formId={formId} />}
  </li>
);

const TOLD = 5;

const Resting = ({ resting, undo }: StepLine) => (
  <details>
    <summary>{counted(resting.length, 'newer act rests', 'newer acts rest')} on it</summary>
    <ul>
      {resting.slice(0, TOLD).map((newer) => (
        <li>{newer}</li>
      ))}
    </ul>
    {resting.length > TOLD ? <p>And {resting.length - TOLD} more.</p> : null}
    {undo === null ? <p>Too many to undo at once: undo some of the newer ones first.</p> : null}
  </details>
);

const UndoButton = ({ undo, sentence, formId }: { undo: StepUndo; sentence: string; formId: string }) => (
  <form method="post" action={paths.undo(undo.id)}>
    <input type="hidden" name="formId" value={`${formId}.${undo.kind}.${undo.id}`} />
    <button type="submit" class="quiet small">
      {wordsOf(undo)}
      <span class="unseen">: {sentence}</span>
    </button>
  </form>
);

function wordsOf({ kind, acts }: StepUndo): string {
  if (kind === 'again') return acts > 1 ? `Do these ${acts} again` : 'Do it again';
  return acts > 1 ? `Undo these ${acts} together` : 'Undo';
}
