/** The short forms of the first steps: one animal, a room's warmth, the feeding days, one bin. */

import type { FeedingCalendar } from '../../src/husbandry/calendar.ts';
import type { Room } from '../../src/husbandry/snapshot.ts';
import { DAY_OPTIONS } from '../format.ts';
import { CheckButtons } from '../partials/choices.tsx';
import {
  entryOf,
  Field,
  type FormEntry,
  type Option,
  type PageForms,
  PostForm,
  Select,
} from '../partials/form.tsx';
import { paths } from '../paths.ts';

interface Rooms {
  readonly rooms: readonly Room[];
}

/** Where it stands; the only room there is goes without saying. */
const RoomChoice = ({ entry, rooms }: Rooms & { entry: FormEntry }) =>
  rooms.length === 1 ? (
    <input type="hidden" name="room" value={rooms[0]!.code} />
  ) : (
    <Select
      entry={entry}
      name="room"
      label="Stands in"
      options={rooms.map(({ code, name }) => ({ value: code, label: name }))}
    />
  );

interface AnimalChoices extends Rooms {
  readonly forms: PageForms;
  readonly kinds: readonly Option[];
  readonly stages: readonly Option[];
}

/** Form 'start-animal' posts `kind`, `name`, `count`, `size` as typed, or `stage` where nobody measured; `room`. */
export const QuickAnimal = ({ forms, kinds, stages, rooms }: AnimalChoices) => {
  const entry = entryOf(forms, 'start-animal');
  return (
    <PostForm entry={entry} action={paths.startAnimal} class="form quick">
      <Select entry={entry} name="kind" label="Kind" options={kinds} none="Choose a kind" />
      <Field entry={entry} name="name" label="Name" hint="Left empty it goes by its kind." />
      <Field entry={entry} name="count" label="How many alike" type="number" min="1" start="1" />
      <Field entry={entry} name="size" label="Size" hint="Such as 45 mm. Not measured? Leave it empty." />
      <Select entry={entry} name="stage" label="or about" options={stages} start="juvenile" />
      <RoomChoice entry={entry} rooms={rooms} />
      <button type="submit">Add it</button>
    </PostForm>
  );
};

interface RoomProps {
  readonly forms: PageForms;
  readonly room: Room;
}

/** Form 'start-room-<code>' posts `room`, `dayTemp` and `nightTemp` as typed. */
export const QuickRoom = ({ forms, room }: RoomProps) => {
  const entry = entryOf(forms, `start-room-${room.code}`);
  return (
    <PostForm entry={entry} action={paths.startRoom} class="form quick">
      <input type="hidden" name="room" value={room.code} />
      <Field
        entry={entry}
        name="dayTemp"
        label={`${room.name} by day`}
        start={`${room.dayTempC} C`}
        hint="26 C or 79 F."
      />
      <Field entry={entry} name="nightTemp" label="by night" start={`${room.nightTempC} C`} />
      <button type="submit">Save</button>
    </PostForm>
  );
};

interface DaysProps {
  readonly forms: PageForms;
  readonly calendar: FeedingCalendar;
}

/** Form 'start-feeding' posts `weekday`, '0' Monday to '6' Sunday, once each. */
export const QuickDays = ({ forms, calendar }: DaysProps) => {
  const entry = entryOf(forms, 'start-feeding');
  const stored = calendar.feedingWeekdays.flatMap((on, i) => (on ? [`${i}`] : []));
  return (
    <PostForm entry={entry} action={paths.startFeeding} class="form">
      <CheckButtons
        entry={entry}
        name="weekday"
        legend="You feed on"
        options={DAY_OPTIONS}
        checked={entry.values.weekday?.split(',') ?? stored}
      />
      <button type="submit">Save the days</button>
    </PostForm>
  );
};

interface BinChoices extends Rooms {
  readonly forms: PageForms;
  readonly species: readonly Option[];
  readonly sizes: readonly Option[];
}

/** Form 'start-bin' posts `species`, `size` (a trade size's value or ''), `heads`, `name` and `room`. */
export const QuickBin = ({ forms, species, sizes, rooms }: BinChoices) => {
  const entry = entryOf(forms, 'start-bin');
  return (
    <PostForm entry={entry} action={paths.startBin} class="form quick">
      <Select entry={entry} name="species" label="Prey" options={species} none="Choose the prey" />
      <Select entry={entry} name="size" label="Size" options={sizes} none="Mixed or not known" />
      <Field entry={entry} name="heads" label="About how many" type="number" min="0" />
      <Field entry={entry} name="name" label="Name of the box" hint="Left empty it goes by its prey." />
      <RoomChoice entry={entry} rooms={rooms} />
      <button type="submit">Add the box</button>
    </PostForm>
  );
};
