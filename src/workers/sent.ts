/** A question on its way to a thread: the room goes along once, and the Book, most of it by far, once for all rooms. */
import type { Question } from '../actions/index.ts';
import type { Facts, Snapshot } from '../husbandry/snapshot.ts';

export interface Sent {
  readonly question: Omit<Question, 'snapshot'>;
  /** Null where it is the room sent last. */
  readonly room: Omit<Snapshot, 'facts'> | null;
  /** Null where they are the facts sent last. */
  readonly facts: Facts | null;
}

/** `last` is the room of the question before, null before the first. */
export function packed({ snapshot, ...question }: Question, last: Snapshot | null): Sent {
  const { facts, ...room } = snapshot;
  return {
    question,
    room: snapshot === last ? null : room,
    facts: facts === last?.facts ? null : facts,
  };
}

/** The question again, its room the very one of the question before where they were the same. */
export function unpacked({ question, room, facts }: Sent, last: Snapshot | null): Question {
  if (room === null) return { ...question, snapshot: known(last) };
  return { ...question, snapshot: { ...room, facts: facts ?? known(last).facts } };
}

function known(last: Snapshot | null): Snapshot {
  if (last === null) throw new Error('a question came without its room');
  return last;
}
