/** One kind of the Book: what it eats at each stage on the ruler, every number with its source, and how to change it. */
import type { CautionCode } from '../../src/husbandry/animals/index.ts';
import { animalCaution } from '../cautions.ts';
import { RulerHead, type Window, WindowBracket } from '../charts/window-bracket.tsx';
import { counted, type LengthUnit, oneOf, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { PageForms } from '../partials/form.tsx';
import { History, type HistoryLine } from '../partials/history.tsx';
import { type NumberLine, OwnNumbers } from '../partials/own-numbers.tsx';
import { paths } from '../paths.ts';
import { RuleForm, type RuleFormProps } from './kind-rule-form.tsx';
import { Whole, Yours } from './kind-whole.tsx';
import { WholeForm, type WholeFormProps } from './kind-whole-form.tsx';

export interface StageView {
  readonly stage: string;
  /** 'spiderling'. */
  readonly word: string;
  /** 'from 28 mm', '' for the youngest and for one entered by maturing. */
  readonly from: string;
  /** 'pinhead to small house crickets'. */
  readonly prey: string;
  /** '1 to 2 every 3 to 7 days'. */
  readonly often: string;
  /** Of a typical animal of the stage, of this length. */
  readonly window: Window;
  readonly ownLengthMm: number;
  /** Heads of the keeper's at this stage. */
  readonly heads: number;
  readonly lines: readonly NumberLine[];
}

export interface KindProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly revision: number;
  readonly code: string;
  readonly name: string;
  readonly commonName: string;
  /** 'tarantula'. */
  readonly group: string;
  /** The kind it was made from, by name; null for one of the Book. */
  readonly madeFrom: { readonly code: string; readonly name: string } | null;
  /** The answer: how many of yours, and what they take. */
  readonly lede: string;
  readonly cautions: readonly CautionCode[];
  readonly stages: readonly StageView[];
  readonly whole: readonly NumberLine[];
  readonly animals: readonly { readonly code: string; readonly name: string }[];
  /** The form that is open. */
  readonly open:
    | { readonly what: 'rule'; readonly word: string; readonly form: RuleFormProps }
    | { readonly what: 'kind'; readonly form: WholeFormProps }
    | null;
  readonly history: readonly HistoryLine[];
}

export const KindPage = (props: KindProps) => (
  <Layout shell={props.shell} title={sentenceCase(props.commonName)} here="more">
    <Head {...props} />
    <Stages {...props} />
    <Open {...props} />
    <Numbers {...props} />
    <Whole {...props} />
    <Yours {...props} />
    <History title="What you changed" lines={props.history} formId={props.forms.formId} />
  </Layout>
);

const Head = ({ commonName, name, group, madeFrom, lede, cautions }: KindProps) => (
  <header class="page-head">
    <p class="eyebrow">
      <a href={paths.book}>The Book</a> · {sentenceCase(group)}
    </p>
    <h1>{sentenceCase(commonName)}</h1>
    <p class="lede">{lede}</p>
    <p>
      <i>{name}</i>
      {madeFrom === null ? null : (
        <>
          , a kind of your own, made from <a href={paths.kind(madeFrom.code)}>{madeFrom.name}</a>
        </>
      )}
    </p>
    {cautions.map((code) => (
      <p class="caution">{animalCaution(code)}</p>
    ))}
  </header>
);

const Stages = ({ stages, unit, code }: KindProps) => (
  <section aria-labelledby="stages">
    <h2 id="stages">What it eats, from small to grown</h2>
    <p class="note">
      On the ruler, for one of the middle size of its stage: bracket, the prey it takes; dot, the best length;
      star, its own body.
    </p>
    <table class="animals stacks kind-stages">
      <thead>
        <tr>
          <th scope="col">Stage</th>
          <th scope="col">Prey and meals</th>
          <th scope="col" class="on-ruler">
            Prey it takes, {unit}
            <RulerHead unit={unit} />
          </th>
          <th scope="col">
            <span class="unseen">Change</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {stages.map((stage, at) => (
          <StageRow stage={stage} id={`stage-${at}`} unit={unit} code={code} />
        ))}
      </tbody>
    </table>
  </section>
);

const Numbers = ({ stages, code, forms, revision }: KindProps) => (
  <section aria-labelledby="numbers">
    <h2 id="numbers">Every number of its rules</h2>
    {stages.map(({ stage, word, lines }) => (
      <OwnNumbers
        forms={forms}
        action={paths.kindAct(code, 'reset')}
        revision={revision}
        stage={stage}
        caption={`${sentenceCase(word)}: ${lines.length} values and where they come from`}
        lines={lines}
      />
    ))}
  </section>
);

interface StageRowProps {
  readonly stage: StageView;
  readonly id: string;
  readonly unit: LengthUnit;
  readonly code: string;
}

const StageRow = ({ stage, id, unit, code }: StageRowProps) => {
  const yours = stage.lines.filter(({ own }) => own !== null).length;
  const notes = [
    stage.from,
    stage.heads === 0 ? '' : `${stage.heads} of yours`,
    yours === 0 ? '' : `${counted(yours, 'value')} yours`,
  ];
  return (
    <tr>
      <th scope="row">
        {sentenceCase(stage.word)}
        <small>{notes.filter((note) => note !== '').join('; ')}</small>
      </th>
      <td>
        {sentenceCase(stage.prey)}
        <small>{stage.often}</small>
      </td>
      <td class="on-ruler">
        <WindowBracket
          id={id}
          name={sentenceCase(oneOf(stage.word))}
          window={stage.window}
          ownLengthMm={stage.ownLengthMm}
          unit={unit}
        />
      </td>
      <td>
        <a class="button quiet small" href={paths.changeKind(code, stage.stage)}>
          Change<span class="unseen"> the {stage.word}’s rule</span>
        </a>
      </td>
    </tr>
  );
};

const Open = ({ open }: KindProps) => {
  if (open === null) return null;
  return (
    <section id="change" aria-labelledby="change-head" class="change">
      <h2 id="change-head">
        {open.what === 'rule' ? `Change the ${open.word}’s rule` : 'Change its size and measure'}
      </h2>
      {open.what === 'rule' ? <RuleForm {...open.form} /> : <WholeForm {...open.form} />}
    </section>
  );
};
