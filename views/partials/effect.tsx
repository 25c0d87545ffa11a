/** What a change of the Book does to the keeper's own animals: before and after, while it is written. */
import { RulerHead, type Window, WindowBracket } from '../charts/window-bracket.tsx';
import type { LengthUnit } from '../format.ts';

export interface EffectSide {
  /** 'takes 11–15 mm, best 13 mm: medium house crickets'. */
  readonly takes: string;
  /** '1 to 3 every 8 to 12 days, due Thu 26 Nov'. */
  readonly often: string;
  /** 'about right: 2.1 % of its own mass a week; its need is 0.8 % to 2.5 %'. */
  readonly need: string;
  readonly window: Window;
  readonly ownLengthMm: number;
}

export interface EffectLine {
  /** 'Clove (48 mm)'. */
  readonly who: string;
  readonly before: EffectSide;
  readonly after: EffectSide;
}

export interface Effect {
  /** The answer in a sentence: 'Changes the meals of 3 of your 6.' */
  readonly finding: string;
  /** Why what is typed cannot stand yet. */
  readonly wrong: readonly string[];
  readonly lines: readonly EffectLine[];
  /** Animals not listed. */
  readonly more: number;
  /** Together, a week: items and mass before and after; null where nobody is of the kind. */
  readonly week: { readonly before: string; readonly after: string } | null;
}

interface EffectProps {
  readonly effect: Effect;
  readonly unit: LengthUnit;
  /** Where the form is posted for a look; every input asks again. */
  readonly action: string;
}

export const EffectView = ({ effect, unit, action }: EffectProps) => (
  <section class="effect" aria-labelledby="effect-head">
    <h3 id="effect-head">What it does to yours</h3>
    <div
      aria-live="polite"
      data-hx-post={action}
      data-hx-include="closest form"
      data-hx-trigger="input from:'closest form' delay:300ms"
      data-hx-target="#effect"
      data-hx-select="#effect"
      data-hx-swap="outerHTML"
    >
      <div id="effect">
        <p class="finding">{effect.finding}</p>
        {effect.wrong.map((sentence) => (
          <p class="problem">{sentence}</p>
        ))}
        <div class="effect-ruler">
          <RulerHead unit={unit} />
        </div>
        {effect.lines.map((line, at) => (
          <EffectOf line={line} unit={unit} id={`effect-${at}`} />
        ))}
        {effect.more === 0 ? null : <p class="note">And {effect.more} more of yours.</p>}
        {effect.week === null ? null : <Week week={effect.week} />}
      </div>
    </div>
  </section>
);

const SIDES = ['takes', 'often', 'need'] as const;

const EffectOf = ({ line, unit, id }: { line: EffectLine; unit: LengthUnit; id: string }) => (
  <div class="effect-of">
    <h4>{line.who}</h4>
    {sameWindow(line) ? null : (
      <div class="was">
        <WindowBracket
          id={`${id}-was`}
          name={`${line.who} now`}
          window={line.before.window}
          ownLengthMm={line.before.ownLengthMm}
          unit={unit}
        />
      </div>
    )}
    <WindowBracket
      id={id}
      name={line.who}
      window={line.after.window}
      ownLengthMm={line.after.ownLengthMm}
      unit={unit}
    />
    <ul>
      {SIDES.map((side) => (
        <Side before={line.before[side]} after={line.after[side]} />
      ))}
    </ul>
  </div>
);

const sameWindow = ({ before, after }: EffectLine): boolean =>
  before.ownLengthMm === after.ownLengthMm && before.takes === after.takes;

/** One line as it will be, and as it is where that differs. */
const Side = ({ before, after }: { before: string; after: string }) =>
  before === after ? (
    <li>{after}</li>
  ) : (
    <li class="is-new">
      <strong>{after}</strong>
      <small>
        before: <span>{before}</span>
      </small>
    </li>
  );

const Week = ({ week }: { week: NonNullable<Effect['week']> }) => (
  <p>
    A week for all of them: <strong>{week.after}</strong>
    {week.before === week.after ? '' : `, before ${week.before}`}.{' '}
    <small>
      By the rule’s own arithmetic: mean meal × 7 ÷ mean days between meals, every meal taken on time; moults,
      refusals and skipped evenings are left out.
    </small>
  </p>
);
