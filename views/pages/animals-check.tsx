/** One act on many animals, looked over: what will change in words, who, and one button. */
import { Layout, type Shell } from '../layout.tsx';
import { Toggle } from '../partials/choices.tsx';
import { AsOf, entryOf, type PageForms, PostForm } from '../partials/form.tsx';
import { type HerdAct, paths } from '../paths.ts';
import { type ChosenFields, WhoIsChosen } from './animals-change.tsx';

/** The form posts to `paths.herdAct(act)` what was filled in, who is chosen, and `asOf`; a death also `sure`. */
export interface AnimalsCheckProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly act: HerdAct;
  /** '14 animals move to Shelf B of the Warm room; 3 are there already.' */
  readonly headline: string;
  readonly follows: readonly string[];
  readonly button: string;
  /** Names of those that change, with their codes. */
  readonly who: readonly { readonly code: string; readonly name: string }[];
  readonly chosen: ChosenFields;
  /** What was filled in, by field. */
  readonly filled: Readonly<Record<string, string>>;
  readonly revision: number;
  /** Address the form posts to, and the page before. */
  readonly action: string;
  readonly again: string;
  readonly back: string;
}

export const AnimalsCheckPage = (props: AnimalsCheckProps) => {
  const { shell, forms, act, headline, follows, button, who, chosen, filled, revision } = props;
  const entry = entryOf(forms, act);
  return (
    <Layout shell={shell} title={button} here="animals">
      <header class="page-head">
        <p class="eyebrow">Nothing is written down yet</p>
        <h1>{headline}</h1>
        {follows.map((sentence) => (
          <p>{sentence}</p>
        ))}
      </header>
      <PostForm entry={entry} action={props.action}>
        <AsOf revision={revision} />
        <WhoIsChosen chosen={chosen} />
        {Object.entries(filled).map(([name, value]) => (
          <input type="hidden" name={name} value={value} />
        ))}
        {act === 'died' ? <Sure heads={who.length} /> : null}
        <button type="submit" class="act-here">
          {button}
        </button>
      </PostForm>
      <p class="acts after-form">
        <a class="button quiet" href={props.again}>
          Do something else with them
        </a>
        <a class="button quiet" href={props.back}>
          Back to the list
        </a>
      </p>
      <details class="who-changes" open={who.length <= OPEN_UP_TO}>
        <summary>Who changes</summary>
        <ul class="who-list">
          {who.map(({ code, name }) => (
            <li>
              <a href={paths.animal(code)}>{name}</a>
            </li>
          ))}
        </ul>
      </details>
    </Layout>
  );
};

const OPEN_UP_TO = 30;

/** Deaths of many are not a slip of the thumb. */
const Sure = ({ heads }: { heads: number }) => (
  <div class="field">
    <Toggle name="sure" value="on" label={heads === 1 ? 'Yes, it died' : `Yes, all ${heads} died`} />
  </div>
);
