/** A plan being made: how far it is, and a way to stop it. */
import type { PlanProgress } from '../../src/husbandry/plan/index.ts';
import { PERCENT } from '../../src/husbandry/units.ts';
import { money } from '../format.ts';
import { type FormEntry, PostForm } from '../partials/form.tsx';

export interface Working {
  /** Address of the next word on it; it answers when there is something new, with the whole page's part when it is done. */
  readonly progressAt: string;
  /** The page that is answered when the plan is made. */
  readonly waitAt: string;
  /** Stops it; null where nothing can be stopped. */
  readonly cancel: { readonly entry: FormEntry; readonly action: string; readonly asked: string };
  readonly progress: PlanProgress | null;
  readonly currency: string;
}

export const WorkingPart = ({ working, title }: { working: Working; title: string }) => (
  <section class="plan-working" aria-labelledby="plan-working">
    <h2 id="plan-working">{title}</h2>
    <ProgressPart working={working} />
    <div class="acts">
      <PostForm entry={working.cancel.entry} action={working.cancel.action} class="inline">
        <input type="hidden" name="asked" value={working.cancel.asked} />
        <button type="submit" class="quiet">
          Stop it
        </button>
      </PostForm>
      <a class="button quiet" href={working.waitAt}>
        Wait for it
      </a>
    </div>
  </section>
);

const STEPS: Readonly<Record<PlanProgress['step'], string>> = {
  'laying out': 'Laying out what grows and who eats …',
  solving: 'Looking for the cheapest orders …',
  judging: 'Playing the plan through, day by day …',
  improving: 'Trying small changes …',
  explaining: 'Asking of every line what happens without it …',
};

/** Asks again for itself; the button beside it stays where it is. */
export const ProgressPart = ({ working: { progress, progressAt, currency } }: { working: Working }) => (
  <div
    class="plan-progress"
    data-hx-get={progressAt}
    data-hx-trigger="load"
    data-hx-swap="outerHTML"
    {...{ 'data-hx-status:5xx': 'swap:none' }}
  >
    <p>
      {progress === null ? 'Waiting for its turn …' : STEPS[progress.step]}
      {progress?.cents == null ? '' : ` ${money(progress.cents, currency)} is the least found so far.`}
    </p>
    <progress aria-label="How far the plan is" max={PERCENT} {...shareDone(progress)}></progress>
  </div>
);

const shareDone = (progress: PlanProgress | null) =>
  progress === null ? {} : { value: Math.round(progress.share * PERCENT) };
