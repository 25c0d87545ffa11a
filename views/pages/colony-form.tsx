/** The form of a colony start: what is wanted, where it stands, what it begins with, bins and prices. */
import type { Crowding } from '../../src/husbandry/prey/index.ts';
import { plural } from '../../src/husbandry/words.ts';
import { lengthRange, sentenceCase } from '../format.ts';
import { RadioButtons } from '../partials/choices.tsx';
import { Field, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { sizeField } from './colony-fields.ts';
import type { ColonyStartProps } from './colony-start.tsx';

/**
 * Sends `species`, `want-SIZE` heads, `room`, `day` and `night` (temperatures or ''), `begin` ('adults' or 'young'),
 * `females`, `males`, `young`, `size`, `space` ('60 dm2' or ''), `capacity` (heads or ''), `head`, `starters`,
 * `week` (prices), `currency` and `ready` (a date or '').
 */
export const ColonyForm = (props: ColonyStartProps) => (
  <form method="get" action={paths.colonyStart} class="form colony-form" id={props.asked.name}>
    <input type="hidden" name="species" value={props.prey.species.code} />
    <Wanted {...props} />
    <Field
      entry={props.asked}
      name="ready"
      label="From which day"
      type="date"
      hint="Leave empty to start today."
    />
    <Place {...props} />
    <Beginning {...props} />
    <Bins {...props} />
    <Prices {...props} />
    <button type="submit">Work it out</button>
  </form>
);

const Wanted = ({ asked, prey: { species }, unit }: ColonyStartProps) => {
  const wrong = asked.problems.wanted;
  return (
    <fieldset {...(wrong === undefined ? {} : { 'aria-describedby': 'colony-wanted-problem' })}>
      <legend>How many {plural(species.commonName)} a week</legend>
      <div class="small-fields">
        {species.sizeClasses.value.map(({ name, fromMm, toMm }) => (
          <Field
            entry={asked}
            name={sizeField(name)}
            label={sentenceCase(name)}
            type="number"
            min="0"
            hint={lengthRange(fromMm, toMm, unit)}
          />
        ))}
      </div>
      {wrong === undefined ? null : (
        <p class="problem" id="colony-wanted-problem">
          {wrong}
        </p>
      )}
    </fieldset>
  );
};

const Place = ({ asked, rooms }: ColonyStartProps) => (
  <fieldset>
    <legend>Where it stands</legend>
    <Select
      entry={asked}
      name="room"
      label="Room"
      options={rooms.map(({ value, label, temp }) => ({
        value,
        label: `${label} (${temp.maxC} °C by day, ${temp.minC} °C by night)`,
      }))}
    />
    <div class="small-fields">
      <Field entry={asked} name="day" label="Kept by day at" placeholder="as the room" />
      <Field entry={asked} name="night" label="By night at" placeholder="as the room" />
    </div>
    <small class="hint">Where it has heat of its own, such as 29 C or 85 F.</small>
  </fieldset>
);

const Beginning = ({ asked, sizes }: ColonyStartProps) => (
  <fieldset>
    <legend>What you begin with</legend>
    <RadioButtons
      entry={asked}
      name="begin"
      legend="They are"
      options={[
        { value: 'adults', label: 'Adults' },
        { value: 'young', label: 'Young' },
      ]}
    />
    <div class="small-fields of-adults">
      <Field entry={asked} name="females" label="Females" type="number" min="0" />
      <Field entry={asked} name="males" label="Males" type="number" min="0" />
    </div>
    <div class="small-fields of-young">
      <Field entry={asked} name="young" label="Young" type="number" min="0" />
      <Select entry={asked} name="size" label="Of size" options={sizes} />
    </div>
  </fieldset>
);

const SUCH_AS: Readonly<Record<Crowding['by'], string>> = {
  area: 'Its surface with egg cartons, such as 60 dm2.',
  volume: 'Such as 40 l.',
  medium: 'Its medium, such as 500 g.',
};

const Bins = ({ asked, prey: { species } }: ColonyStartProps) => (
  <fieldset>
    <legend>How large one bin is</legend>
    <div class="small-fields">
      {species.crowding === undefined ? null : (
        <Field entry={asked} name="space" label="Size" hint={SUCH_AS[species.crowding.by]} />
      )}
      <Field
        entry={asked}
        name="capacity"
        label="Heads when full"
        type="number"
        min="1"
        hint="If you know no size."
      />
    </div>
  </fieldset>
);

const Prices = ({ asked }: ColonyStartProps) => (
  <fieldset>
    <legend>What it costs, if you like</legend>
    <div class="small-fields">
      <Field entry={asked} name="head" label="One bought" placeholder="such as 0.25" />
      <Field entry={asked} name="starters" label="Starters and bins" placeholder="such as 60" />
      <Field entry={asked} name="week" label="Heat and feed a week" placeholder="such as 3" />
      <Field entry={asked} name="currency" label="Currency" placeholder="such as EUR" />
    </div>
  </fieldset>
);
