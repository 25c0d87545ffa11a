/** What each act on many animals changes, who is so already, and what follows: in words. */
import { counted, longDay, recordDay } from '../../../views/format.ts';
import { type DayNumber, parseCivilDate } from '../../husbandry/calendar.ts';
import { sentenceCase } from '../../husbandry/words.ts';
import type { Seen } from './herd.ts';
import type { Filled } from './herd-acts.ts';
import type { Herd } from './herd-visit.ts';

export interface Planned {
  /** 'move to Shelf B', of many; `one` of one animal. */
  readonly many: string;
  readonly one: string;
  /** 'there', 'so': what those are already that do not change. */
  readonly already: string;
  readonly button: string;
  readonly follows: readonly string[];
  readonly isSo: (seen: Seen) => boolean;
}

/** A date that a field has read already. */
export function dayIn(text: string): DayNumber {
  const day = parseCivilDate(text);
  if (!day.ok) throw new Error(day.problem.sentence);
  return day.value;
}

const never = () => false;
const STAYS = 'Codes, sizes and records stay.';

/** What becomes of those chosen. */
export function planOf(here: Herd, chosen: readonly Seen[], filled: Filled): Planned {
  switch (filled.act) {
    case 'move':
      return moving(here, filled);
    case 'stage':
      return staging(chosen, filled.stage);
    case 'kind':
      return renaming(here, filled.kind);
    case 'gone':
      return going(filled);
    case 'lend':
      return lending(filled);
    case 'died':
      return dying(filled.day);
  }
}

function moving(
  { names }: Herd,
  { room, shelf }: { readonly room: string; readonly shelf: string },
): Planned {
  const inRoom = room === '' ? 'its own room' : (names.rooms.get(room) ?? room);
  const place = shelf === '' ? `${inRoom}, on no shelf` : `${shelf} of ${inRoom}`;
  return {
    many: `move to ${room === '' ? `${shelf}, each in its own room` : place}`,
    one: `moves to ${place}`,
    already: 'there',
    button: 'Move',
    follows: ['The round meets them there from now on.'],
    isSo: ({ animal }) => animal.shelf === shelf && (room === '' || animal.room === room),
  };
}

function staging(chosen: readonly Seen[], stage: Extract<Filled, { act: 'stage' }>['stage']): Planned {
  if (stage === 'by size')
    return {
      many: 'go by size again',
      one: 'goes by size again',
      already: 'so',
      button: 'By size again:',
      follows: ['Each eats by the stage its size gives.'],
      isSo: ({ animal }) => animal.stageOverride === null,
    };
  const without = chosen.filter(({ kind }) => !kind.stages.some((rule) => rule.stage === stage)).length;
  return {
    many: `are fed as ${FED_AS[stage].many}, whatever their size`,
    one: `is fed as ${FED_AS[stage].one}, whatever its size`,
    already: 'so',
    button: `As ${stage}:`,
    follows: [
      'It holds until you let them go by size again.',
      ...(without === 0
        ? []
        : [`${sentenceCase(counted(without, 'has', 'have'))} no such stage in the Book and go on by size.`]),
    ],
    isSo: ({ animal }) => animal.stageOverride === stage,
  };
}

const FED_AS = {
  young: { many: 'young', one: 'young' },
  juvenile: { many: 'juveniles', one: 'a juvenile' },
  subadult: { many: 'subadults', one: 'a subadult' },
  adult: { many: 'adults', one: 'an adult' },
} as const;

function renaming({ snapshot }: Herd, code: string): Planned {
  const kind = snapshot.facts.kinds.get(code);
  const name = `${kind?.name ?? code} (${kind?.commonName ?? ''})`;
  return {
    many: `are ${name} from now on`,
    one: `is ${name} from now on`,
    already: 'so',
    button: 'Change the kind of',
    follows: [STAYS, 'What they eat and when follows the rule of the new kind.'],
    isSo: ({ animal }) => animal.kind === code,
  };
}

const GONE = {
  sold: { many: 'were sold', one: 'was sold', button: 'Write down as sold:' },
  'given away': { many: 'were given away', one: 'was given away', button: 'Write down as given away:' },
  lost: { many: 'were lost', one: 'was lost', button: 'Write down as lost:' },
} as const;

function going({ reason, day }: Extract<Filled, { act: 'gone' }>): Planned {
  const { many, one, button } = GONE[reason];
  const on = `on ${longDay(dayIn(day))}`;
  return {
    many: `${many} ${on}`,
    one: `${one} ${on}`,
    already: 'so',
    button,
    follows: ['They leave the list and are fed no more; their records stay.'],
    isSo: never,
  };
}

function lending({ to, day, back }: Extract<Filled, { act: 'lend' }>): Planned {
  const on = `to ${to} on ${longDay(dayIn(day))}`;
  const until =
    back === undefined
      ? 'No day is set for their return.'
      : `They are expected back on ${recordDay(dayIn(back))}.`;
  return {
    many: `go ${on}`,
    one: `goes ${on}`,
    already: 'so',
    button: 'Lend',
    follows: [
      until,
      'They are not fed here until you write down that they are back; codes and records wait for them.',
    ],
    isSo: never,
  };
}

const dying = (day: string): Planned => ({
  many: `died on ${longDay(dayIn(day))}`,
  one: `died on ${longDay(dayIn(day))}`,
  already: 'so',
  button: 'Write down the death of',
  follows: ['Groups end with all their heads. The records stay.'],
  isSo: never,
});
