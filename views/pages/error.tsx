/** When something went wrong: one sentence, a way on, and the number to tell whoever mends it. */
import { Document } from '../document.tsx';
import type { ThemeChoice } from '../partials/theme.tsx';
import { paths } from '../paths.ts';

export interface ErrorProps {
  readonly theme: ThemeChoice;
  /** What happened, for the keeper: 'There is no page here.' */
  readonly sentence: string;
  /** What to do about it; null when there is nothing but going back. */
  readonly advice: string | null;
  readonly requestId: string;
}

export const ErrorPage = ({ theme, sentence, advice, requestId }: ErrorProps) => (
  <Document title={sentence} theme={theme}>
    <main id="main" class="doorstep">
      <p class="brand">Preylarder</p>
      <h1>{sentence}</h1>
      {advice === null ? null : <p class="lede">{advice}</p>}
      <p>
        <a class="button" href={paths.sunday}>
          To the Sunday check
        </a>
      </p>
      <p class="note">
        Request <code>{requestId}</code>
      </p>
    </main>
  </Document>
);
