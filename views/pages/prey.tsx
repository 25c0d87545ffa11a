/** One prey species of the Book: what to mind, and every number with its source and what other works say. */
import type { LeftOut } from '../../src/husbandry/prey/index.ts';
import { PERCENT } from '../../src/husbandry/units.ts';
import { counted, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type OtherWork, otherWords, type SourceLine, Sources } from '../partials/sources.tsx';
import { paths } from '../paths.ts';

export interface PreyCautionLine {
  readonly text: string;
  readonly source: string | null;
  readonly others: readonly OtherWork[];
}

/** Numbers that belong together. */
export interface PreyLines {
  /** 'Growth'. */
  readonly about: string;
  readonly lines: readonly SourceLine[];
}

export interface PreyProps {
  readonly shell: Shell;
  readonly name: string;
  readonly commonName: string;
  readonly cautions: readonly PreyCautionLine[];
  readonly notes: readonly string[];
  readonly groups: readonly PreyLines[];
  readonly leftOut: readonly LeftOut[];
}

export const PreyPage = (props: PreyProps) => (
  <Layout shell={props.shell} title={sentenceCase(props.commonName)} here="more">
    <Head {...props} />
    <section aria-labelledby="numbers">
      <h2 id="numbers">Every number it is reckoned by</h2>
      <p class="note">{disputedWords(props)}</p>
      {props.groups.map(({ about, lines }) => (
        <Sources sources={lines} summary={`${about}: ${counted(lines.length, 'number')}`} />
      ))}
    </section>
    <Foretold leftOut={props.leftOut} />
  </Layout>
);

const Head = ({ commonName, name, cautions, notes }: PreyProps) => (
  <header class="page-head">
    <p class="eyebrow">
      <a href={paths.book}>The Book</a> · Prey
    </p>
    <h1>{sentenceCase(commonName)}</h1>
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
      <table class="stacks">
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
