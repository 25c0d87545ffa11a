/** Rooms with their day and night temperatures: they set how fast prey grows and animals moult. */
import type { Room } from '../../src/husbandry/snapshot.ts';
import { ActForm } from '../partials/act.tsx';
import { entryOf, Field, type PageForms, PostForm } from '../partials/form.tsx';
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

/** Form 'remove-<code>' posts `room`; a room in use is not removed. */
const RemoveRoom = ({ forms, room }: { forms: PageForms; room: Room }) => (
  <PostForm entry={entryOf(forms, `remove-${room.code}`)} action={paths.settingsAct('rooms/remove')}>
    <input type="hidden" name="room" value={room.code} />
    <button type="submit" class="quiet small">
      Remove {room.name}
    </button>
  </PostForm>
);
