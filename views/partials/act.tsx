/** One act of a record as a disclosure with its form inside; open when it was refused or begun elsewhere. */
import type { Child } from 'hono/jsx';
import { type FormEntry, PostForm } from './form.tsx';

interface ActProps {
  readonly entry: FormEntry;
  readonly action: string;
  readonly title: string;
  readonly button: string;
  readonly caution?: string;
  /** Shown opened, because it is due; so is one that another page began. */
  readonly open?: boolean;
  /** What is sent, in words, where it is kept until the server has it. */
  readonly keep?: string;
  readonly children?: Child;
}

export const ActForm = ({ entry, action, title, button, caution, open, keep, children }: ActProps) => (
  <details
    class="act-form"
    open={open === true || entry.begun === true || Object.keys(entry.problems).length > 0}
  >
    <summary>{title}</summary>
    <PostForm entry={entry} action={action} keep={keep}>
      {caution === undefined ? null : <p class="caution">{caution}</p>}
      {children}
      <button type="submit">{button}</button>
    </PostForm>
  </details>
);
