/** Settings: when you feed, when prey can come, how warm it is, what you expect to change. */

import type { FeedingCalendar } from '../../src/husbandry/calendar.ts';
import type { PlannedChange, Room } from '../../src/husbandry/snapshot.ts';
import { DAY_OPTIONS, type LengthUnit, listed, WEEKDAYS } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { CheckButtons, RadioButtons, weekdaysTicked } from '../partials/choices.tsx';
import { entryOf, Field, type Option, PostForm } from '../partials/form.tsx';
import { History, type HistoryLine } from '../partials/history.tsx';
import { ThemeForm } from '../partials/theme.tsx';
import { paths } from '../paths.ts';
import { Absences } from './settings-absences.tsx';
import { Changes } from './settings-changes.tsx';
import { Money, type MoneyProps, Weather } from './settings-money.tsx';
import { Rooms } from './settings-rooms.tsx';

/**
 * Forms post to `paths.settingsAct(…)`: feeding (`weekday`, repeated, '0' Monday to '6' Sunday), deliveries
 * (`weekday` as before, `leadTimeDays`), absences (`from`, `to`), absences/remove (`from`, `to`), rooms (`room`
 * or '' for a new one, `name`, `dayTemp`, `nightTemp` as typed), changes (see there), changes/remove (`change`),
 * units (`unit`), theme (`theme`, `back`), and those of money and weather (see there).
 */
export interface SettingsProps extends MoneyProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly calendar: FeedingCalendar;
  readonly deliveryWeekdays: readonly boolean[];
  readonly leadTimeDays: number;
  readonly rooms: readonly Room[];
  readonly changes: readonly PlannedChange[];
  /** Kinds by common name, grouped. */
  readonly kinds: readonly Option[];
  /** Common names by code, as they stand within a sentence. */
  readonly kindNames: ReadonlyMap<string, { readonly commonName: string }>;
  /** Animals by name, for one that is sold. */
  readonly animals: readonly Option[];
  /** What was written down last, newest first. */
  readonly latest: readonly HistoryLine[];
}

export const SettingsPage = (props: SettingsProps) => (
  <Layout shell={props.shell} title="Settings" here="settings">
    <header class="page-head">
      <h1>{headline(props.calendar)}</h1>
    </header>
    <div class="settings">
      <FeedingDays {...props} />
      <Absences {...props} />
      <DeliveryDays {...props} />
      <Weather {...props} />
      <Money {...props} />
      <Rooms {...props} />
      <Changes {...props} />
      <Looks {...props} />
      <OwnRoom {...props} />
    </div>
    <History title="Written down last" lines={props.latest} formId={props.forms.formId} />
  </Layout>
);

function headline({ feedingWeekdays }: FeedingCalendar): string {
  const days = WEEKDAYS.filter((_, i) => feedingWeekdays[i]);
  if (days.length === 0) return 'You have no feeding days yet';
  if (days.length === WEEKDAYS.length) return 'You feed every day';
  return `You feed on ${listed(days.map((day) => `${day}s`))}`;
}

const FeedingDays = ({ forms, calendar }: SettingsProps) => {
  const entry = entryOf(forms, 'feeding');
  return (
    <section aria-labelledby="feeding-head">
      <h2 id="feeding-head">Feeding days</h2>
      <PostForm entry={entry} action={paths.settingsAct('feeding')}>
        <CheckButtons
          entry={entry}
          name="weekday"
          legend="You feed on"
          options={DAY_OPTIONS}
          checked={weekdaysTicked(entry.values.weekday, calendar.feedingWeekdays)}
        />
        <button type="submit">Save</button>
      </PostForm>
    </section>
  );
};

const DeliveryDays = ({ forms, deliveryWeekdays, leadTimeDays }: SettingsProps) => {
  const entry = entryOf(forms, 'deliveries');
  return (
    <section aria-labelledby="delivery-head">
      <h2 id="delivery-head">Delivery days</h2>
      <PostForm entry={entry} action={paths.settingsAct('deliveries')}>
        <CheckButtons
          entry={entry}
          name="weekday"
          legend="A parcel can come on"
          options={DAY_OPTIONS}
          checked={weekdaysTicked(entry.values.weekday, deliveryWeekdays)}
        />
        <Field
          entry={entry}
          name="leadTimeDays"
          label="Days from order to door"
          type="number"
          min="0"
          start={`${leadTimeDays}`}
        />
        <button type="submit">Save</button>
      </PostForm>
    </section>
  );
};

const UNITS = [
  { value: 'mm', label: 'Millimetres' },
  { value: 'in', label: 'Inches' },
];

const Looks = ({ forms, unit, shell }: SettingsProps) => {
  const entry = entryOf(forms, 'units');
  return (
    <section aria-labelledby="looks-head">
      <h2 id="looks-head">Units and light</h2>
      <PostForm entry={entry} action={paths.settingsAct('units')}>
        <RadioButtons entry={entry} name="unit" legend="Lengths in" options={UNITS} start={unit} />
        <button type="submit">Save</button>
      </PostForm>
      <h3>Light</h3>
      <ThemeForm formId={`${forms.formId}.settings`} theme={shell.theme} back={paths.settings} />
    </section>
  );
};

const OwnRoom = ({ forms, shell }: SettingsProps) => (
  <section id="demo" aria-labelledby="demo-head">
    <h2 id="demo-head">{shell.demo ? 'Start your own room' : 'The demo room'}</h2>
    {shell.demo ? (
      <PostForm entry={entryOf(forms, 'demo-remove')} action={paths.removeDemo}>
        <p>
          Takes every demo animal and bin away, with your orders to its suppliers, its sacs and its
          deliveries. What else you added stays.
        </p>
        <button type="submit">Clear the demo room</button>
      </PostForm>
    ) : (
      <PostForm entry={entryOf(forms, 'demo-start')} action={paths.startDemo}>
        <p>Fills the place with invented animals and prey to try things on. They can be cleared again.</p>
        <button type="submit" class="quiet">
          Show the demo room
        </button>
      </PostForm>
    )}
    <p>
      <a href={paths.import}>Bring in a list</a> of animals or prey from a spreadsheet.
    </p>
  </section>
);
