/** A long record, newest first, month by month and page by page, each line with its undo. */
import { HistoryItem, type HistoryLine } from './history.tsx';

export interface RecordPage {
  readonly months: readonly { readonly title: string; readonly lines: readonly HistoryLine[] }[];
  /** Addresses of the pages beside this one; null where there is none. */
  readonly newer: string | null;
  readonly older: string | null;
}

export const RecordMonths = ({ months, newer, older, formId }: RecordPage & { readonly formId: string }) => (
  <section aria-labelledby="history">
    <h2 id="history">What happened</h2>
    {months.length === 0 ? (
      <p>Nothing is written down yet. Its meals come from the round, all else from above.</p>
    ) : null}
    {months.map(({ title, lines }) => (
      <>
        <h3>{title}</h3>
        <ol class="history">
          {lines.map((line) => (
            <HistoryItem line={line} formId={formId} />
          ))}
        </ol>
      </>
    ))}
    {newer === null && older === null ? null : (
      <nav class="acts" aria-label="Pages of the record">
        {newer === null ? null : (
          <a class="button quiet" href={newer}>
            Newer
          </a>
        )}
        {older === null ? null : (
          <a class="button quiet" href={older}>
            Older
          </a>
        )}
      </nav>
    )}
  </section>
);
