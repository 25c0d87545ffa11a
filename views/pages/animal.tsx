/** One animal: what it eats next, its ladder of sizes, its appetite, what may be written down, what happened. */
import type { Animal, CautionCode } from '../../src/husbandry/animals/index.ts';
import type { Mm } from '../../src/husbandry/units.ts';
import { animalCaution } from '../cautions.ts';
import { Growth, type GrowthProps } from '../charts/growth.tsx';
import { InstarLadder, type InstarLadderProps } from '../charts/instar-ladder.tsx';
import type { Window } from '../charts/window-bracket.tsx';
import { ago, type LengthUnit, lengthRange, lengthText, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { PageForms } from '../partials/form.tsx';
import { RecordMonths, type RecordPage } from '../partials/record-months.tsx';
import { type SourceLine, Sources } from '../partials/sources.tsx';
import { paths } from '../paths.ts';
import { AnimalActs } from './animal-acts.tsx';
import { Appetite, type AppetiteProps } from './animal-appetite.tsx';

export interface AnimalPageProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly animal: Animal;
  readonly kindName: string;
  /** What is measured, such as 'diagonal leg span'. */
  readonly gaugeWord: string;
  /** Whether its kind moults at all. */
  readonly moults: boolean;
  readonly stageWord: string;
  readonly roomName: string;
  readonly ownLengthMm: Mm;
  readonly window: Window;
  /** The next meal as a sentence: 'Eats Thu 27 Nov: 3 crickets of 6–8 mm.' */
  readonly next: string;
  readonly cautions: readonly CautionCode[];
  readonly ladder: Pick<InstarLadderProps, 'rungs' | 'next' | 'larder' | 'species'>;
  /** Prey alive in the larder that it takes now, and after its next moult: 'about 120 house crickets'; '' for none. */
  readonly fits: { readonly now: string; readonly after: string | null };
  readonly appetite: Omit<AppetiteProps, 'today' | 'stageWord'>;
  /** Null with fewer than two sizes on record. */
  readonly growth: Pick<GrowthProps, 'sizes' | 'expected' | 'moults'> | null;
  /** The rule it lives by, line by line. */
  readonly rule: readonly SourceLine[];
  readonly record: RecordPage;
}

export const AnimalPage = (props: AnimalPageProps) => {
  const { shell, animal, unit, gaugeWord, ladder, appetite, stageWord, growth, record, forms } = props;
  return (
    <Layout shell={shell} title={animal.name} here="animals">
      <Head {...props} />
      <section aria-label="Sizes behind and ahead">
        <InstarLadder {...ladder} today={shell.today} unit={unit} gaugeWord={gaugeWord} />
        <Fits {...props} />
      </section>
      <div class="pair animal-life">
        <div>
          <Appetite {...appetite} today={shell.today} stageWord={stageWord} />
          <Facts {...props} />
          {growth === null ? null : (
            <section aria-labelledby="growth-head">
              <h2 id="growth-head">Growth</h2>
              <Growth {...growth} unit={unit} gaugeWord={gaugeWord} />
            </section>
          )}
        </div>
        <AnimalActs {...props} />
      </div>
      <RecordMonths {...record} formId={forms.formId} />
      <Rule {...props} />
    </Layout>
  );
};

const Head = ({ animal, roomName, next, kindName, stageWord, cautions, moults }: AnimalPageProps) => (
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
    <p class="acts">
      <a class="button quiet" href="#write-down">
        {moults ? 'Write down a moult or a size' : 'Write down a size'}
      </a>
      <a class="button quiet" href={`${paths.changeAnimals}?animal=${animal.code}`}>
        Move, lend or sell
      </a>
      {animal.count > 1 ? (
        <a class="button quiet" href={paths.animalAct(animal.code, 'split')}>
          Split the group
        </a>
      ) : null}
    </p>
  </header>
);

/** What the larder holds for it, now and after the moult. */
const Fits = ({ fits: { now, after } }: AnimalPageProps) => (
  <p class="fits">
    In the larder for it now: {now === '' ? 'nothing that fits' : now}.
    {after === null ? null : ` At its next size: ${after === '' ? 'nothing that fits' : after}.`}
  </p>
);

const Facts = ({ animal, unit, ownLengthMm, window, shell, gaugeWord }: AnimalPageProps) => (
  <section aria-labelledby="facts">
    <h2 id="facts">Size and prey</h2>
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
      <dt>Own body</dt>
      <dd>{lengthText(ownLengthMm, unit)}</dd>
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

const Rule = ({ animal, rule, kindName }: AnimalPageProps) => (
  <section aria-labelledby="rule">
    <h2 id="rule">The rule it lives by</h2>
    <p>
      All of its kind live by it: <a href={paths.kind(animal.kind)}>see or change the {kindName}</a>.
    </p>
    <Sources sources={rule} />
    <p class="acts">
      <a class="button quiet" href={paths.labels}>
        Print its label
      </a>
    </p>
  </section>
);
