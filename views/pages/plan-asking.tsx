/** What the plan is asked for: how many weeks, what the keeper insists on or will not have, and what if. */
import { Field, type FormEntry } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { planAt, planQuery, whatIfAt, withoutWish } from '../plan-address.ts';
import type { PlanProps } from './plan.tsx';

/** Every wish with the way to take it back. */
export const WishList = ({ asked, wishes }: PlanProps) =>
  wishes.length === 0 ? null : (
    <section class="plan-wishes" aria-labelledby="plan-wishes">
      <h2 id="plan-wishes">Your wishes</h2>
      <ul class="lines">
        {wishes.map(({ key, words, unmet }) => (
          <li>
            <span>
              {words}
              {unmet ? <strong class="plan-unmet">. It cannot be had so: it is left out</strong> : null}
            </span>
            <a class="button small quiet" href={planAt(withoutWish(asked, key))}>
              Take it back<span class="unseen">: {words}</span>
            </a>
          </li>
        ))}
      </ul>
      <p class="note">
        The wishes are in this page’s address: keep it, and the plan can be asked for again.{' '}
        <a href={planAt({ ...asked, wishes: [] })}>Take all of them back</a>.
      </p>
    </section>
  );

export const PlanAsking = ({ asked, problems }: PlanProps) => {
  const entry: FormEntry = { name: 'plan-weeks', formId: '', values: {}, problems };
  const others = [...new URLSearchParams(planQuery(asked))].filter(([name]) => name !== 'weeks');
  return (
    <section class="plan-asking" aria-labelledby="plan-asking">
      <h2 id="plan-asking">Ask it otherwise</h2>
      <form method="get" action={paths.plan} class="form" id={entry.name}>
        {others.map(([name, value]) => (
          <input type="hidden" name={name} value={value} />
        ))}
        <Field
          entry={entry}
          name="weeks"
          label="Weeks ahead"
          type="number"
          hint="4 to 26. More weeks take longer."
          start={`${asked.weeks}`}
        />
        <button type="submit">Plan so far ahead</button>
      </form>
      <p>
        <a href={whatIfAt({ weeks: asked.weeks, ifs: [] })}>What if …</a> it were warmer, you went away, a sac
        hatched, a supplier stopped? Compared side by side; nothing is applied.
      </p>
    </section>
  );
};
