/** Rooms with their day and night temperatures: they set how fast prey grows and animals moult. */
import type { Room, TempSeries } from '../../src/husbandry/snapshot.ts';
import { counted, recordDay } from '../format.ts';
import { ActForm } from '../partials/act.tsx';
import { FileField } from '../partials/file-field.tsx';
import { entryOf, Field, type PageForms, PostForm, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';

interface RoomsProps {
  readonly forms: PageForms;
  readonly rooms: readonly Room[];
}

export const Rooms = ({ forms, rooms }: RoomsProps) => (
  <section aria-labelledby="rooms-head">
    <h2 id="rooms-head">Rooms</h2>
    {rooms.map((room) => (
      <>
        <RoomForm
          forms={forms}
          room={room}
          title={`${room.name}: ${room.dayTempC} °C by day, ${room.nightTempC} °C by night`}
        />
        <Temperatures forms={forms} room={room} />
        {rooms.length > 1 ? <RemoveRoom forms={forms} room={room} /> : null}
      </>
    ))}
    <RoomForm forms={forms} room={null} title="Add a room" />
  </section>
);

/** Form 'room-<code>', or 'room-new'. */
const RoomForm = ({ forms, room, title }: { forms: PageForms; room: Room | null; title: string }) => {
  const entry = entryOf(forms, `room-${room?.code ?? 'new'}`);
  const shown = (tempC: number | undefined) => (tempC === undefined ? '' : `${tempC} C`);
  return (
    <ActForm
      entry={entry}
      action={paths.settingsAct('rooms')}
      title={title}
      button={room === null ? 'Add it' : 'Save'}
    >
      <input type="hidden" name="room" value={room?.code ?? ''} />
      <Field entry={entry} name="name" label="Name" start={room?.name} required />
      <Field
        entry={entry}
        name="dayTemp"
        label="By day"
        start={shown(room?.dayTempC)}
        hint="26 C or 79 F."
        required
      />
      <Field entry={entry} name="nightTemp" label="By night" start={shown(room?.nightTempC)} required />
    </ActForm>
  );
};

/** Form 'temperatures-<code>' posts `room`, `file` (multipart) and `dates` ('' or the order of day and month). */
const Temperatures = ({ forms, room }: { forms: PageForms; room: Room }) => {
  const entry = entryOf(forms, `temperatures-${room.code}`);
  const said = room.series == null ? 'none yet' : measuredWords(room.series);
  return (
    <details class="act-form" open={Object.keys(entry.problems).length > 0}>
      <summary>
        {room.name}: measured temperatures, {said}
      </summary>
      <PostForm entry={entry} action={paths.settingsAct('rooms/temperatures')} multipart>
        <input type="hidden" name="room" value={room.code} />
        <p class="note">
          A CSV file with a date and a temperature in each row. Of a day with several the least and the
          greatest count; a day without any is taken as the room is set.
        </p>
        <FileField entry={entry} label="A file saved as CSV" />
        <Select
          entry={entry}
          name="dates"
          label="Dates are written"
          none="As the file shows"
          options={ORDERS}
        />
        <button type="submit">Read it</button>
      </PostForm>
    </details>
  );
};

const ORDERS = [
  { value: 'dmy', label: 'Day first' },
  { value: 'mdy', label: 'Month first' },
];

/** '31 days from 1 Mar 2026 to 2 Apr 2026, 2 days between without; 17.5 to 28 °C'. */
function measuredWords({ from, minC, maxC }: TempSeries): string {
  const known = minC.filter((tempC) => tempC !== null);
  const gaps = minC.length - known.length;
  const without = gaps === 0 ? '' : `, ${counted(gaps, 'day')} between without`;
  const warmest = Math.max(...maxC.filter((tempC) => tempC !== null));
  const span = `${recordDay(from)} to ${recordDay(from + minC.length - 1)}`;
  return `${counted(known.length, 'day')}, ${span}${without}; ${Math.min(...known)} to ${warmest} °C`;
}

/** Form 'remove-<code>' posts `room`; a room in use is not removed. */
const RemoveRoom = ({ forms, room }: { forms: PageForms; room: Room }) => (
  <PostForm entry={entryOf(forms, `remove-${room.code}`)} action={paths.settingsAct('rooms/remove')}>
    <input type="hidden" name="room" value={room.code} />
    <button type="submit" class="quiet small">
      Remove {room.name}
    </button>
  </PostForm>
);
