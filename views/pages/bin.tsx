/** One bin, colony or cup: what lives in it, what you see, and what was done with it. */
import type { Bin } from '../../src/husbandry/larder/index.ts';
import type { PreySpecies } from '../../src/husbandry/prey/index.ts';
import type { BinAnswer } from '../../src/husbandry/supply/index.ts';
import { BIN_CAUTION, preyCautions, STOCK_CAUTION } from '../cautions.ts';
import { PreyStrip, RulerHead } from '../charts/window-bracket.tsx';
import { ago, counted, isGuess, type LengthUnit, lengthRange, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type Names, nameOf, preyName } from '../names.ts';
import { aliveWords, goes } from '../partials/bin-words.ts';
import type { Option, PageForms } from '../partials/form.tsx';
import { History, type HistoryLine } from '../partials/history.tsx';
import { paths } from '../paths.ts';
import { BinActs } from './bin-acts.tsx';

export interface BinPageProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly names: Names;
  readonly bin: Bin;
  readonly species: PreySpecies;
  /** What must be said of it as it stands, in sentences. */
  readonly remarks: readonly string[];
  /** null when the answer could not be computed. */
  readonly answer: BinAnswer | null;
  readonly horizonDays: number;
  /** Trade sizes of its species. */
  readonly sizes: readonly Option[];
  /** Other bins of its species, to move prey into. */
  readonly otherBins: readonly Option[];
  readonly rooms: readonly Option[];
  readonly quarantineDays: number;
  readonly history: readonly HistoryLine[];
}

export const BinPage = (props: BinPageProps) => {
  const { shell, bin, names, forms, history } = props;
  return (
    <Layout shell={shell} title={bin.name} here="larder">
      <header class="page-head">
        <p class="eyebrow">
          <a href={paths.larder}>Larder</a> · {nameOf(names.rooms, bin.room)}
        </p>
        <h1>{headline(props)}</h1>
        <p>
          {sentenceCase(preyName(names.species, bin.species))}.{' '}
          <a href={paths.editBin(bin.code)}>Change this {WORDS[bin.role]}</a>
        </p>
        {props.remarks.map((sentence) => (
          <p class="note">{sentence}</p>
        ))}
        {cautionsOf(props).map((sentence) => (
          <p class="caution">{sentence}</p>
        ))}
      </header>
      {props.answer === null ? null : <Forecast {...props} answer={props.answer} />}
      <BinActs {...props} />
      <History lines={history} formId={forms.formId} />
    </Layout>
  );
};

/** None for the frozen, which neither dust nor escape. */
function cautionsOf({ bin, species }: BinPageProps): readonly string[] {
  if (bin.role === 'frozen') return [];
  const stock = bin.role === 'holding' ? BIN_CAUTION : `${BIN_CAUTION} ${STOCK_CAUTION}`;
  return [stock, ...preyCautions(species)];
}

const WORDS = { holding: 'bin', colony: 'colony', cup: 'cup', frozen: 'frozen stock' } as const;

function headline({ bin, answer }: BinPageProps): string {
  if (answer === null || bin.role === 'cup') return bin.name;
  const words = aliveWords(answer);
  if (words === 'none') return `${bin.name}: empty`;
  const alive = bin.role === 'frozen' ? 'frozen' : 'alive';
  return `${bin.name}: ${answer.headsNow.high < 1 ? words : `${words} ${alive}`}`;
}

const HowSure = (heads: BinAnswer['headsNow']) => (
  <>
    {isGuess(heads)
      ? ' in 9 cases of 10: too long ago to tell; count it'
      : `, in 9 cases of 10 between ${Math.round(heads.low)} and ${Math.round(heads.high)}`}
  </>
);

const Forecast = ({ bin, answer, names, unit, horizonDays }: BinPageProps & { answer: BinAnswer }) => {
  const { headsNow, lengthsNow } = answer;
  const length = lengthRange(lengthsNow.low, lengthsNow.high, unit);
  const isThere = headsNow.high >= 1;
  return (
    <section class="facts" aria-label="Now and next">
      {isThere ? (
        <div class="strip-box">
          <RulerHead unit={unit} />
          <PreyStrip
            id="size"
            title={`${bin.name}: ${length}`}
            form={names.species.get(bin.species)?.form ?? 'cricket'}
            {...lengthsNow}
          />
        </div>
      ) : null}
      <dl class="pairs">
        <dt>{bin.role === 'frozen' ? 'Frozen' : 'Alive'}</dt>
        <dd>
          {aliveWords(answer)}
          {isThere ? <HowSure {...headsNow} /> : null}
        </dd>
        {isThere ? (
          <>
            <dt>Size now</dt>
            <dd>{length}</dd>
          </>
        ) : null}
        <dt>Last looked</dt>
        <dd>{answer.lookedDaysAgo === null ? 'never' : ago(answer.lookedDaysAgo)}</dd>
        <dt>Next {counted(horizonDays, 'day')}</dt>
        <dd>{goes(answer, bin.role)}</dd>
      </dl>
    </section>
  );
};
