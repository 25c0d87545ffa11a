/** Nothing was changed, because those chosen cannot be told any more: said in a sentence, with the way back. */
import { Layout, type Shell } from '../layout.tsx';

interface AnimalsRefusedProps {
  readonly shell: Shell;
  readonly sentence: string;
  readonly back: string;
}

export const AnimalsRefusedPage = ({ shell, sentence, back }: AnimalsRefusedProps) => (
  <Layout shell={shell} title="Nothing was changed" here="animals">
    <header class="page-head">
      <h1>Nothing was changed</h1>
      <p class="lede" role="alert">
        {sentence}
      </p>
      <p class="acts">
        <a class="button act-here" href={back}>
          Look at the list
        </a>
      </p>
    </header>
  </Layout>
);
