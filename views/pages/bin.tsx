/** One bin, colony or cup: what lives in it and where it goes, what you see, and what was done with it. */
import type { BinOutlook } from '../../src/husbandry/colony/index.ts';
import type { BinAnswer, BinGoes, BinLearned, BinToday } from '../../src/husbandry/supply/index.ts';
import { BIN_CAUTION, preyCautions, STOCK_CAUTION } from '../cautions.ts';
import { type LengthUnit, roundly, sentenceCase } from '../format.ts';
import { Layout } from '../layout.tsx';
import { headsOfSize, type Names, nameOf, preyName } from '../names.ts';
import { aliveWords, comesTo, cupLooks, type Kept, keptWords } from '../partials/bin-words.ts';
import { History, type HistoryLine } from '../partials/history.tsx';
import { type SourceLine, Sources } from '../partials/sources.tsx';
import { paths } from '../paths.ts';
import type { BinActsProps } from './bin-act-parts.tsx';
import { BinActs } from './bin-acts.tsx';
import { AfterCrash, type CrashShown } from './bin-crash.tsx';
import { BinFacts } from './bin-facts.tsx';
import { BinPictures } from './bin-pictures.tsx';

export interface BinPageProps extends BinActsProps {
  readonly unit: LengthUnit;
  readonly names: Names;
  /** What must be said of its warmth, or of how long it keeps, in sentences. */
  readonly remarks: readonly string[];
  /** How long it is kept apart, and keeps. */
  readonly kept: Kept;
  readonly now: BinToday;
  /** The last count, level by eye or weighing against what was expected; null where nothing was known before. */
  readonly lastLook: BinLearned['looks'][number] | null;
  /** Where it is likeliest to go; null for a cup and for what is frozen. */
  readonly goes: BinGoes | null;
  /** Temperatures by day and by night today. */
  readonly warmth: { readonly minC: number; readonly maxC: number };
  /** The coming weeks; null until they are worked out. */
  readonly outlook: BinOutlook | null;
  /** Whether everything that takes a while is there; otherwise the page asks for it once it is shown. */
  readonly whole: boolean;
  /** Its part of the Sunday answer; null when that is not known just now. */
  readonly answer: BinAnswer | null;
  readonly horizonDays: number;
  /** A loss of the last days; null where there was none. */
  readonly crash: CrashShown | null;
  readonly sources: readonly SourceLine[];
  readonly history: readonly HistoryLine[];
}

export const BinPage = (props: BinPageProps) => {
  const { shell, bin, forms, history, outlook, crash, whole } = props;
  return (
    <Layout shell={shell} title={bin.name} here="larder">
      <div id="bin-answer" {...(whole ? {} : asksFor(bin.code))}>
        <Head {...props} />
        {crash === null ? null : <AfterCrash {...props} crash={crash} />}
        {outlook === null ? null : <BinPictures {...props} outlook={outlook} />}
        {whole ? null : <Soon code={bin.code} />}
        <BinFacts {...props} />
      </div>
      {cautionsOf(props).map((sentence) => (
        <p class="caution">{sentence}</p>
      ))}
      <BinActs {...props} />
      <HowKnown {...props} />
      <History lines={history} formId={forms.formId} />
    </Layout>
  );
};

/** The same page with everything worked out, of which this part takes the place; when the server is busy the page stays as it is. */
const asksFor = (code: string) => ({
  'data-hx-get': paths.binWhole(code),
  'data-hx-trigger': 'load',
  'data-hx-select': '#bin-answer',
  'data-hx-target': '#bin-answer',
  'data-hx-swap': 'outerHTML',
  'data-hx-status:5xx': 'swap:none',
});

const Soon = ({ code }: { code: string }) => (
  <p class="soon" role="status">
    The coming weeks are being worked out …{' '}
    <a class="button quiet" href={paths.binWhole(code)}>
      Wait for them
    </a>
  </p>
);

const Head = (props: BinPageProps) => {
  const { bin, names } = props;
  const kept = keptWords(props.kept, props.shell.today);
  return (
    <header class="page-head">
      <p class="eyebrow">
        <a href={paths.larder}>Larder</a> · {nameOf(names.rooms, bin.room)}
      </p>
      <h1>{headline(props)}</h1>
      <p>
        {sentenceCase(preyName(names.species, bin.species))}.{' '}
        <a href={paths.editBin(bin.code)}>Change this {WORDS[bin.role]}</a>
      </p>
      {kept.length === 0 ? null : <p class="look">{sentenceCase(kept.join('; '))}.</p>}
    </header>
  );
};

/** What matters before it is opened; none for the frozen, which neither dust nor escape. */
function cautionsOf({ bin, species }: BinPageProps): readonly string[] {
  if (bin.role === 'frozen') return [];
  const stock = bin.role === 'holding' ? BIN_CAUTION : `${BIN_CAUTION} ${STOCK_CAUTION}`;
  return [stock, ...preyCautions(species)];
}

const WORDS = { holding: 'bin', colony: 'colony', cup: 'cup', frozen: 'frozen stock' } as const;

/** How many there are, and what they come to first. */
function headline({ bin, now, goes, outlook, shell, crash, kept }: BinPageProps): string {
  const words = aliveWords(now);
  if (crash !== null) return `${bin.name} crashed: ${words === 'none' ? 'nothing' : words} left alive`;
  if (bin.role === 'cup') return `${bin.name}: ${cupLooks(bin, shell.today)}`;
  if (words === 'none') return `${bin.name}: empty`;
  if (now.headsNow.high < 1) return `${bin.name}: ${words}`;
  const first = goes === null ? [] : comesTo({ bin, goes, today: shell.today }).slice(0, 1);
  const alive = bin.role === 'frozen' ? 'frozen' : 'alive';
  const take = kept.restsUntil === null ? takeWords(goes, outlook) : [];
  return [`${bin.name}: ${words} ${alive}`, ...first, ...take].join('; ');
}

/** From this share of its room on a colony is taken to be full. */
const FULL_FROM = 0.8;

/** The middle size of those that can be taken from a colony that is full. */
function takeWords(goes: BinGoes | null, outlook: BinOutlook | null): readonly string[] {
  const most = outlook?.takes?.most.filter(({ heads }) => heads >= 1) ?? [];
  const middle = most[Math.floor(most.length / 2)];
  if (middle === undefined || (goes?.full ?? 0) < FULL_FROM) return [];
  return [`take up to ${headsOfSize(`${roundly(middle.heads)}`, middle.size)} a week`];
}

const HowKnown = ({ species, outlook, sources }: BinPageProps) => (
  <section aria-labelledby="how-known">
    <h2 id="how-known">Where the numbers come from</h2>
    <p>
      {outlook === null
        ? ''
        : `The weeks were played through ${outlook.replicates} times, faster and slower, warmer and cooler, with more and with fewer in it. `}
      <a href={paths.prey(species.code)}>Every number of this species in the Book</a>
    </p>
    <Sources sources={sources} />
  </section>
);
