/** What of the last sending stood written down already: by which act, and where two people said different things. */
import { counted } from '../format.ts';
import { type Names, nameOf } from '../names.ts';
import type { PageForms } from '../partials/form.tsx';
import { paths } from '../paths.ts';

interface WrittenBy {
  readonly act: string;
  /** What the act did, as the keeper would say it. */
  readonly summary: string;
  readonly minutesAgo: number;
  /** What is written of the animal, such as 'not fed'. */
  readonly stands: string;
}
export interface AlreadyTold extends WrittenBy {
  readonly animal: string;
}
export interface AgainstTold extends WrittenBy {
  readonly animal: string;
  /** What the sending said of it, such as 'premoult'. */
  readonly said: string;
}
export interface Told {
  readonly already: readonly AlreadyTold[];
  readonly against: readonly AgainstTold[];
  /** Rows besides that stood written already. */
  readonly untold: number;
}

interface ToldProps {
  readonly told: Told;
  readonly names: Names;
  readonly forms: PageForms;
}

export const ToldSection = ({ told: { already, against, untold }, names, forms }: ToldProps) =>
  already.length + against.length === 0 ? null : (
    <section class="told" aria-labelledby="told">
      <h2 id="told">Somebody else wrote some of this down</h2>
      {against.length === 0 ? null : (
        <ul class="told-against">
          {against.map((each) => (
            <Contradiction {...each} names={names} />
          ))}
        </ul>
      )}
      {acts([...already, ...against]).map(({ act, summary, minutesAgo, rows }) => (
        <div class="told-act">
          <p>
            {summary}, {when(minutesAgo)}:{' '}
            {rows.map(({ animal, stands }) => `${nameOf(names.animals, animal)} ${stands}`).join('; ')}. Not
            written twice.
          </p>
          <form method="post" action={paths.undo(act)}>
            <input type="hidden" name="formId" value={`${forms.formId}.undo-${act}`} />
            <button type="submit" class="quiet">
              Undo all of it<span class="unseen">: {summary}</span>
            </button>
          </form>
        </div>
      ))}
      {untold === 0 ? null : <p>{counted(untold, 'more stands', 'more stand')} written down already.</p>}
    </section>
  );

const Contradiction = ({ animal, said, stands, names }: AgainstTold & { readonly names: Names }) => (
  <li>
    <strong>{nameOf(names.animals, animal)}</strong>: you said “{said}”, the record says “{stands}” and
    stands. If you are right, <a href={paths.animal(animal)}>say it on its page</a>, or undo the act below and
    send yours again.
  </li>
);

interface ByAct {
  readonly act: string;
  readonly summary: string;
  readonly minutesAgo: number;
  readonly rows: readonly AlreadyTold[];
}

function acts(rows: readonly AlreadyTold[]): readonly ByAct[] {
  const byAct = new Map<string, ByAct>();
  for (const row of rows) {
    const { act, summary, minutesAgo } = row;
    const before = byAct.get(act)?.rows ?? [];
    byAct.set(act, { act, summary, minutesAgo, rows: [...before, row] });
  }
  return [...byAct.values()];
}

const MINUTES_PER_HOUR = 60;
const HOURS_TOLD = 36;

function when(minutesAgo: number): string {
  if (minutesAgo < 1) return 'just now';
  if (minutesAgo < MINUTES_PER_HOUR) return `${counted(minutesAgo, 'minute')} ago`;
  const hours = Math.round(minutesAgo / MINUTES_PER_HOUR);
  return hours <= HOURS_TOLD ? `${counted(hours, 'hour')} ago` : 'days ago';
}
