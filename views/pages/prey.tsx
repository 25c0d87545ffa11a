/** One prey species of the Book: what it does at a temperature, what to mind, every number with its source and its form. */
import type { LeftOut } from '../../src/husbandry/prey/index.ts';
import { PERCENT } from '../../src/husbandry/units.ts';
import { counted, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { PageForms } from '../partials/form.tsx';
import { History, type HistoryLine } from '../partials/history.tsx';
import {
  NumberForm,
  type NumberFormProps,
  type NumberGroup,
  NumberGroups,
  ResetNumbers,
} from '../partials/number-form.tsx';
import { type OtherWork, otherWords } from '../partials/sources.tsx';
import { paths } from '../paths.ts';
import { preyLede } from '../prey-words.ts';
import { PreySheet, type SheetProps } from './prey-sheet.tsx';

export interface PreyCautionLine {
  readonly text: string;
  readonly source: string | null;
  readonly others: readonly OtherWork[];
}

export interface PreyProps extends SheetProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly revision: number;
  readonly name: string;
  readonly commonName: string;
  readonly cautions: readonly PreyCautionLine[];
  readonly notes: readonly string[];
  readonly groups: readonly NumberGroup[];
  /** The form that is open. */
  readonly form: NumberFormProps | null;
  readonly leftOut: readonly LeftOut[];
  readonly history: readonly HistoryLine[];
}

export const PreyPage = (props: PreyProps) => (
  <Layout shell={props.shell} title={sentenceCase(props.commonName)} here="more">
    <Head {...props} />
    <PreySheet {...props} />
    {props.form === null ? null : <NumberForm {...props.form} />}
    <Numbers {...props} />
    <Foretold leftOut={props.leftOut} />
    <History title="What you changed" lines={props.history} formId={props.forms.formId} />
  </Layout>
);

const Numbers = (props: PreyProps) => (
  <section aria-labelledby="every-number">
    <h2 id="every-number">Every number it is reckoned by</h2>
    <p class="note">
      {disputedWords(props)} What is made of them: <a href={paths.method}>the method</a>.
    </p>
    <NumberGroups {...props} {...acts(props)} />
    <ResetNumbers {...props} {...acts(props)} />
  </section>
);

const acts = ({ code }: PreyProps) => ({
  reset: paths.preyAct(code, 'reset'),
  change: (group: string) => paths.changePrey(code, group),
});

const Head = ({ commonName, name, sheet, cautions, notes }: PreyProps) => (
  <header class="page-head">
    <p class="eyebrow">
      <a href={paths.book}>The Book</a> · Prey
    </p>
    <h1>{sentenceCase(commonName)}</h1>
    <p class="lede">{preyLede(sheet)}</p>
    <p>
      <i>{name}</i>
    </p>
    {cautions.map(({ text, source, others }) => (
      <p class="caution">
        {text}{' '}
        <small>{[source, ...others.map(otherWords)].filter((words) => words !== null).join('. ')}</small>
      </p>
    ))}
    <ul>
      {notes.map((note) => (
        <li>{note}</li>
      ))}
    </ul>
  </header>
);

function disputedWords({ groups }: PreyProps): string {
  const disputed = groups.flatMap(({ lines }) => lines).filter(({ others = [] }) => others.length > 0).length;
  return disputed === 0
    ? 'No other work that we read says otherwise.'
    : `On ${counted(disputed, 'number')} other works disagree: what they say, and why theirs is not used, stands beside the source.`;
}

const Foretold = ({ leftOut }: { leftOut: readonly LeftOut[] }) =>
  leftOut.length === 0 ? null : (
    <section aria-labelledby="foretold">
      <h2 id="foretold">How well it foretells a temperature nobody measured</h2>
      <p class="note">
        Each measured temperature is left out in turn and reckoned from the others. The coldest and the
        warmest lie beyond the others and are the hardest.
      </p>
      <table class="stacks foretold">
        <thead>
          <tr>
            {['Left out', 'Measured', 'Foretold', 'Off by'].map((head) => (
              <th scope="col">{head}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {leftOut.map(({ span, tempC, days, foretoldDays, error, isEnd }) => (
            <tr>
              <th scope="row">
                {sentenceCase(span)} at {tempC} °C{isEnd ? ', beyond the others' : ''}
              </th>
              <td data-label="Measured">{counted(Math.round(days), 'day')}</td>
              <td data-label="Foretold">
                {Number.isFinite(foretoldDays) ? counted(Math.round(foretoldDays), 'day') : 'never'}
              </td>
              <td data-label="Off by">{Number.isFinite(error) ? `${Math.round(error * PERCENT)} %` : '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
