/** Money and the weather outside, for orders and the plan, and how far a plan looks ahead. */
import type { Purse, WeatherSpell } from '../../src/husbandry/orders/index.ts';
import { money, moneyTyped } from '../format/money.ts';
import { counted, dayRange } from '../format.ts';
import { ActForm } from '../partials/act.tsx';
import { DayList } from '../partials/day-list.tsx';
import { entryOf, Field, type Option, type PageForms, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { degrees } from '../supplier-words.ts';

/**
 * Form 'purse' posts `currency`, `hour`, `weekMost`; 'plan' posts `planWeeks`; 'weather' posts `from`, `to`, `outside`
 * (as typed); 'weather-<from>-<to>' posts `from`, `to` to `weather/remove`.
 */
export interface MoneyProps {
  readonly forms: PageForms;
  readonly purse: Purse;
  readonly currencies: readonly Option[];
  readonly weather: readonly WeatherSpell[];
  readonly planWeeks: number;
}

export const Money = ({ forms, purse, currencies, planWeeks }: MoneyProps) => {
  const entry = entryOf(forms, 'purse');
  const plan = entryOf(forms, 'plan');
  return (
    <section aria-labelledby="money-head" id="money">
      <h2 id="money-head">Money and the plan</h2>
      <ActForm entry={entry} action={paths.settingsAct('purse')} title={purseWords(purse)} button="Save">
        <Select
          entry={entry}
          name="currency"
          label="Currency"
          options={currencies}
          start={purse.currency}
          hint="Sums already written down keep their figures."
        />
        <Field
          entry={entry}
          name="hour"
          label="An hour of yours is worth"
          start={purse.hourCents === 0 ? '' : moneyTyped(purse.hourCents)}
          hint="Lets the plan weigh work against money; empty: your time is not counted."
        />
        <Field
          entry={entry}
          name="weekMost"
          label="Spend in a week at most"
          start={purse.weekMostCents === null ? '' : moneyTyped(purse.weekMostCents)}
          hint="A week goes from Sunday to Saturday; empty: no bound."
        />
      </ActForm>
      <ActForm
        entry={plan}
        action={paths.settingsAct('plan')}
        title={`A plan looks ${counted(planWeeks, 'week')} ahead`}
        button="Save"
      >
        <Field
          entry={plan}
          name="planWeeks"
          label="Weeks, from 4 to 26"
          type="number"
          start={`${planWeeks}`}
          required
        />
      </ActForm>
      <p>
        <a href={paths.suppliers}>Suppliers</a>: who sends what, and at which price.
      </p>
    </section>
  );
};

/** 'Sums in EUR; your time not counted; no bound for a week'. */
function purseWords({ currency, hourCents, weekMostCents }: Purse): string {
  const hour = hourCents === 0 ? 'your time not counted' : `an hour at ${money(hourCents, currency)}`;
  const most =
    weekMostCents === null ? 'no bound for a week' : `at most ${money(weekMostCents, currency)} a week`;
  return `Sums in ${currency}; ${hour}; ${most}`;
}

export const Weather = ({ forms, weather }: MoneyProps) => {
  const entry = entryOf(forms, 'weather');
  return (
    <section aria-labelledby="weather-head">
      <h2 id="weather-head">The weather outside</h2>
      {weather.length === 0 ? <p>No cold or heat is expected; parcels come as their senders say.</p> : null}
      <DayList forms={forms} form="weather" action={paths.settingsAct('weather/remove')} days={weather}>
        {({ from, to, tempC }) => `${degrees(tempC)}, ${dayRange(from, to)}`}
      </DayList>
      <ActForm
        entry={entry}
        action={paths.settingsAct('weather')}
        title="Expect cold or heat"
        button="Expect it"
      >
        <p class="note">Suppliers hold parcels back by it, each at their own limit.</p>
        <Field entry={entry} name="from" label="First day" type="date" required />
        <Field entry={entry} name="to" label="Last day" type="date" required />
        <Field
          entry={entry}
          name="outside"
          label="As cold, or as hot, as"
          hint="-5 C, 34 C or 23 F."
          required
        />
      </ActForm>
    </section>
  );
};
