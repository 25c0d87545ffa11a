/** Sacs: how each stands, what its young will want and when, and the next step as one tap. */
import type { PlannedChange } from '../../src/husbandry/snapshot.ts';
import type { HatchWave, YoungPrey } from '../../src/husbandry/supply/index.ts';
import { HatchWaveChart } from '../charts/hatch-wave.tsx';
import { type LengthUnit, lengthText, roundly, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type Names, nameOf } from '../names.ts';
import type { Option, PageForms } from '../partials/form.tsx';
import { type SourceLine, Sources } from '../partials/sources.tsx';
import { paths } from '../paths.ts';
import { cupWords, orderWords, sacOf, sacStory, waveWords } from '../sac-words.ts';
import { SacSteps } from './sacs-forms.tsx';
import { NewSac } from './sacs-new.tsx';

/** One sac still expected; `wave` and `prey` are null where nothing of it stays here. */
export interface SacView {
  readonly change: PlannedChange;
  readonly kind: string;
  readonly wave: HatchWave | null;
  readonly prey: YoungPrey | null;
  /** Local rules bind this kind. */
  readonly regulated: boolean;
}

export interface SacsProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly names: Names;
  readonly unit: LengthUnit;
  /** The soonest first feed first. */
  readonly open: readonly SacView[];
  /** Those that are over, in words. */
  readonly past: readonly { readonly code: string; readonly sentence: string }[];
  readonly mothers: readonly Option[];
  /** Chance that a sac comes off, where the keeper says nothing. */
  readonly usualChance: number;
  /** Hours within which prey not taken comes out. */
  readonly leftoversOutHours: number;
  readonly sources: readonly SourceLine[];
  readonly revision: number;
}

export const SacsPage = (props: SacsProps) => (
  <Layout shell={props.shell} title="Sacs" here="more">
    <div class="sacs">
      <header class="page-head">
        <h1>{headline(props)}</h1>
        {props.open.length === 0 ? (
          <p class="lede">
            Say when a sac, an ootheca or a clutch was laid. This page then shows how much small prey the
            young will want from when on, and which cup to start on which day.
          </p>
        ) : null}
      </header>
      {props.open.map((sac, at) => (
        <Sac {...props} sac={sac} first={at === 0} />
      ))}
      <NewSac {...props} />
      {props.past.length === 0 ? null : (
        <section aria-labelledby="past-head">
          <h2 id="past-head">Over</h2>
          <ul class="lines">
            {props.past.map(({ sentence }) => (
              <li>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
      <Sources sources={props.sources} />
    </div>
  </Layout>
);

function headline({ open, names }: SacsProps): string {
  const first = open[0];
  if (first === undefined) return 'No sac is expected';
  return sentenceCase(findingOf(first, names));
}

function findingOf({ change, kind, wave, prey }: SacView, names: Names): string {
  const who = sacOf(change, { names, kind });
  if (wave === null || prey === null) return `${who} will want nothing: none of the young stay`;
  return `${who} ${waveWords(change, wave, { prey, names })}`;
}

type SacProps = SacsProps & { readonly sac: SacView; readonly first: boolean };

const Sac = (props: SacProps) => {
  const { sac, first, names } = props;
  const { change, kind, wave, prey } = sac;
  const id = `sac-${change.code}`;
  return (
    <section class="sac" aria-labelledby={id}>
      <h2 id={id}>
        {first ? sentenceCase(sacOf(change, { names, kind })) : sentenceCase(findingOf(sac, names))}
      </h2>
      <p>
        {sentenceCase(kind)}. {sacStory(change)}
      </p>
      {prey === null ? null : <Advice {...props} prey={prey} />}
      {wave === null ? null : <HatchWaveChart id={`wave-${change.code}`} wave={wave} />}
      <SacSteps {...props} />
    </section>
  );
};

const Advice = ({ sac, prey, names, unit, shell }: SacProps & { readonly prey: YoungPrey }) => {
  const cup = cupWords(prey, { names, today: shell.today });
  const order = orderWords(prey, { names, today: shell.today });
  const { cups } = prey;
  return (
    <div class="advice">
      {cup === null || cups === null ? null : (
        <>
          <p class="lede">
            <strong>{cup}</strong>
          </p>
          <p class="note">
            In {nameOf(names.rooms, cups.room)} the first flies come {cups.gives.firstDay} days after the
            start and most from day {cups.gives.bestDay}: about {roundly(cups.gives.bestWeek)} in its best
            week.
            {cups.spare >= 1
              ? ` The cups there are will have about ${roundly(cups.spare)} a week to spare by then.`
              : ''}
            {isLate(cups.starts[0]?.day, shell.today) && cups.gives.bestDay > sac.change.from - shell.today
              ? ' That is late for the first feed: buy flies until they come.'
              : ''}
          </p>
          <p>
            <a class="button" href={paths.newCup(cups.species)}>
              Start a cup
            </a>
          </p>
        </>
      )}
      {order === null ? null : <p>{cup === null ? sentenceCase(order) : `Or ${order}`}</p>}
      <p class="caution">
        Only prey no longer than the young themselves (about {lengthText(ownLength(sac), unit)}); nothing
        caught outdoors.
        {sac.regulated
          ? ' Check the local rules for this species before you give young away.'
          : ' Check the local rules before you give young away.'}
      </p>
    </div>
  );
};

const isLate = (day: number | undefined, today: number): boolean => day === today;
const ownLength = ({ wave }: SacView): number => wave?.group.window.maxMm ?? 1;
