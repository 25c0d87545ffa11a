/** One animal: what it eats next, what may be written down about it, what happened. */
import type { Animal, CautionCode } from '../../src/husbandry/animals/index.ts';
import type { Mm } from '../../src/husbandry/units.ts';
import { animalCaution } from '../cautions.ts';
import { RulerHead, type Window, WindowBracket } from '../charts/window-bracket.tsx';
import { ago, type LengthUnit, lengthRange, lengthText, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { PageForms } from '../partials/form.tsx';
import { History, type HistoryLine } from '../partials/history.tsx';
import { type SourceLine, Sources } from '../partials/sources.tsx';
import { paths } from '../paths.ts';
import { AnimalActs } from './animal-acts.tsx';

export interface AnimalPageProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly animal: Animal;
  readonly kindName: string;
  /** What is measured, such as 'diagonal leg span'. */
  readonly gaugeWord: string;
  readonly stageWord: string;
  readonly roomName: string;
  readonly ownLengthMm: Mm;
  readonly window: Window;
  /** The next meal as a sentence: 'Eats Thu 27 Nov: 3 crickets of 6–8 mm.' */
  readonly next: string;
  readonly cautions: readonly CautionCode[];
  /** The rule it lives by, line by line. */
  readonly rule: readonly SourceLine[];
  readonly history: readonly HistoryLine[];
}

export const AnimalPage = (props: AnimalPageProps) => {
  const { shell, animal, kindName, stageWord, roomName, next, cautions, rule, history, forms } = props;
  return (
    <Layout shell={shell} title={animal.name} here="animals">
      <header class="page-head">
        <p class="eyebrow">
          <a href={paths.animals}>Animals</a> · {roomName}
          {animal.shelf === '' ? '' : `, ${animal.shelf}`}
        </p>
        <h1>
          {animal.name}
          {animal.count > 1 ? ` × ${animal.count}` : ''}
        </h1>
        <p class="lede">{next}</p>
        <p>
          {kindName}, {stageWord}, {animal.sex}. <a href={paths.editAnimal(animal.code)}>Change these</a>
        </p>
        {cautions.map((code) => (
          <p class="caution">{animalCaution(code)}</p>
        ))}
      </header>
      <Facts {...props} />
      <AnimalActs {...props} />
      <History lines={history} formId={forms.formId} />
      <section aria-labelledby="rule">
        <h2 id="rule">The rule it lives by</h2>
        <Sources sources={rule} />
      </section>
    </Layout>
  );
};

const Facts = ({ animal, unit, ownLengthMm, window, shell, gaugeWord }: AnimalPageProps) => (
  <section class="facts" aria-label="Size and prey">
    <div class="strip-box">
      <RulerHead unit={unit} />
      <WindowBracket id="window" name={animal.name} window={window} ownLengthMm={ownLengthMm} unit={unit} />
    </div>
    <dl class="pairs">
      <dt>Prey it takes</dt>
      <dd>
        {lengthRange(window.minMm, window.maxMm, unit)}, best {lengthText(window.idealMm, unit)}
      </dd>
      <dt>{sentenceCase(gaugeWord)}</dt>
      <dd>
        {lengthText(animal.gaugeMm, unit)}
        {animal.gaugeAssumed ? ' (assumed from its stage: measure it)' : ''}
      </dd>
      <dt>Last meal taken</dt>
      <dd>{animal.lastTaken === null ? 'not on record' : ago(shell.today - animal.lastTaken)}</dd>
      <dt>Last moult found</dt>
      <dd>{animal.lastMoult === null ? 'not on record' : ago(shell.today - animal.lastMoult.found)}</dd>
      <dt>Takes its food</dt>
      <dd>
        {animal.offersOnRecord === 0
          ? 'no offers on record'
          : `${animal.takenOnRecord} of ${animal.offersOnRecord} offers`}
      </dd>
    </dl>
  </section>
);
