/** The answer to a colony start: words, picture, what it takes, what insures it, and where it is set up. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { ColonyQuestion, ColonyStart } from '../../src/husbandry/colony/index.ts';
import type { DayTemp, PreySpecies } from '../../src/husbandry/prey/index.ts';
import { BIN_CAUTION, preyCautions, QUARANTINE_CAUTION, STOCK_CAUTION } from '../cautions.ts';
import { ColonyCosts } from '../charts/colony-costs.tsx';
import { ColonyPath } from '../charts/colony-path.tsx';
import type { LengthUnit } from '../format.ts';
import type { Names } from '../names.ts';
import { type FormEntry, PostForm } from '../partials/form.tsx';
import { type SourceLine, Sources } from '../partials/sources.tsx';
import { NoAnswer, WorkingOut } from '../partials/worked-out.tsx';
import { paths } from '../paths.ts';
import { ColonyNeeds, Insured } from './colony-needs.tsx';
import { breedersWords, bridgeWords, colonyHeadline } from './colony-words.ts';

/** Chances that every line is lost within a year. */
export interface LostLines {
  readonly one: number;
  /** Two lines that share a room or an origin. */
  readonly together: number;
  /** Two that share neither. */
  readonly apart: number;
}

export interface ColonyTold {
  readonly start: ColonyStart;
  readonly question: ColonyQuestion;
  readonly species: PreySpecies;
  readonly names: Names;
  readonly unit: LengthUnit;
  /** As typed; '' where none is. */
  readonly currency: string;
  /** Day from which the whole harvest is wanted; null where any day will do. */
  readonly readyOn: DayNumber | null;
  readonly today: DayNumber;
  readonly room: { readonly name: string; readonly temp: DayTemp };
  /** What must be said of the temperature. */
  readonly remarks: readonly string[];
  readonly lost: LostLines;
  /** A harvest lasts when met in this share of the weeks of so many years. */
  readonly lasts: { readonly weeksMet: number; readonly years: number };
  readonly sources: readonly SourceLine[];
  /** Sets the colony up; the question is in the address. */
  readonly setUp: { readonly entry: FormEntry; readonly action: string };
  /** The same begun with all the breeders it takes; null where it is. */
  readonly enoughAt: string | null;
}

export type ColonyShown =
  /** Looked for meanwhile; without script it is waited for. */
  | { readonly state: 'working'; readonly answerAt: string; readonly waitAt: string }
  | { readonly state: 'none'; readonly sentence: string; readonly again: string }
  | { readonly state: 'told'; readonly told: ColonyTold };

const LOOK = 'colony-answer';

export const ColonyAnswerPart = ({ shown }: { shown: ColonyShown }) => {
  if (shown.state === 'working')
    return (
      <WorkingOut
        {...shown}
        look={LOOK}
        words="Colonies of several sizes are lived through, week by week for years. It takes some seconds."
      />
    );
  if (shown.state === 'told') return <Told {...shown.told} />;
  const { sentence, again } = shown;
  return (
    <NoAnswer
      look={LOOK}
      title="No answer yet"
      sentence={sentence}
      to={{ href: again, label: 'Ask again' }}
    />
  );
};

const Told = (told: ColonyTold) => (
  <section class={LOOK}>
    <header class="page-head">
      <h1>{colonyHeadline(told)}</h1>
      <p class="lede">{bridgeWords(told)}</p>
      <Otherwise {...told} />
    </header>
    <div class="facts">
      <ColonyPath id="colony-path" told={told} />
      <ColonyNeeds {...told} />
    </div>
    <SetUp {...told} />
    {told.start.costs === null ? null : (
      <ColonyCosts id="colony-costs" told={told} costs={told.start.costs} />
    )}
    <Insured {...told} />
    <section aria-labelledby="colony-sources">
      <h2 id="colony-sources">Where the numbers come from</h2>
      {told.remarks.map((remark) => (
        <p class="note">{remark}</p>
      ))}
      <p>
        The weeks of the picture are means: your colony will run ahead of them or behind.{' '}
        <a href={paths.prey(told.species.code)}>Every number of the {told.species.commonName}</a> is in the
        Book.
      </p>
      <Sources sources={told.sources} />
    </section>
  </section>
);

const Otherwise = ({ enoughAt, start: { sustaining } }: ColonyTold) => (
  <p>
    {enoughAt === null || sustaining === null ? null : (
      <>
        It takes {breedersWords(sustaining)} in the end. <a href={enoughAt}>Begin with all of them</a> or{' '}
      </>
    )}
    <a href="#colony-question">{enoughAt === null ? 'Ask it otherwise' : 'ask it otherwise'}</a>.
  </p>
);

const SetUp = ({ setUp, species }: ColonyTold) => (
  <section class="act colony-set-up" aria-labelledby="set-up">
    <h2 id="set-up">Are they here?</h2>
    <div class="cautions">
      <p class="caution">{STOCK_CAUTION}</p>
      {preyCautions(species).map((text) => (
        <p class="caution">{text}</p>
      ))}
      <p class="caution">{BIN_CAUTION}</p>
      {species.form === 'cricket' ? <p class="caution">{QUARANTINE_CAUTION}</p> : null}
    </div>
    <PostForm {...setUp}>
      <button type="submit" class="act-here">
        Set up this colony
      </button>
      <small class="hint">Adds it to the larder with its starters, counted today.</small>
    </PostForm>
  </section>
);
