/** The page that adds a record or changes what was said of it: one form, with the record's own fields. */
import type { Child } from 'hono/jsx';
import { Layout, type Place, type Shell } from '../layout.tsx';
import { AsOf, type FormEntry, PostForm } from './form.tsx';

interface RecordFormProps {
  readonly shell: Shell;
  readonly here: Place;
  readonly title: string;
  readonly caution?: string;
  readonly entry: FormEntry;
  readonly action: string;
  /** Revision the page shows. */
  readonly revision: number | undefined;
  readonly button: string;
  readonly children?: Child;
}

export const RecordForm = (props: RecordFormProps) => (
  <Layout shell={props.shell} title={props.title} here={props.here}>
    <header class="page-head">
      <h1>{props.title}</h1>
      {props.caution === undefined ? null : <p class="caution">{props.caution}</p>}
    </header>
    <PostForm entry={props.entry} action={props.action} class="form sheet">
      <AsOf revision={props.revision} />
      {props.children}
      <button type="submit" class="act-here">
        {props.button}
      </button>
    </PostForm>
  </Layout>
);
