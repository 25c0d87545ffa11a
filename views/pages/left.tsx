/** The page of an animal that left or of a bin out of use: what became of it, its whole record, and the way back. */
import { Layout, type Place, type Shell } from '../layout.tsx';
import type { PageForms } from '../partials/form.tsx';
import { History, type HistoryLine } from '../partials/history.tsx';
import { paths } from '../paths.ts';
import { BringBack, type GoneLine, whenAndWhy } from './gone.tsx';

export interface LeftProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly here: Place;
  readonly gone: GoneLine;
  /** What it is: 'Mexican redknee tarantula, female', 'house crickets'. */
  readonly is: string;
  /** It comes back on a page of its own. */
  readonly lent: boolean;
  /** What was asked of it that cannot be done any more. */
  readonly refused: readonly string[];
  readonly history: readonly HistoryLine[];
}

export const LeftPage = ({ shell, forms, here, gone, lent, is, refused, history }: LeftProps) => (
  <Layout shell={shell} title={gone.name} here={here}>
    <header class="page-head">
      <p class="eyebrow">
        <a href={paths.gone}>Gone</a> · {gone.code}
      </p>
      <h1>
        {gone.name}
        {gone.count === undefined ? '' : ` × ${gone.count}`}
      </h1>
      <p class="lede">{whenAndWhy(gone)}.</p>
      <p>{is}.</p>
      {refused.map((sentence) => (
        <p class="problem" role="alert">
          {sentence}
        </p>
      ))}
      {lent ? (
        <a class="button" href={paths.animalAct(gone.code, 'came-back')}>
          It came back
        </a>
      ) : (
        <BringBack {...gone} formId={forms.formId} />
      )}
    </header>
    <History lines={history} formId={forms.formId} />
  </Layout>
);
