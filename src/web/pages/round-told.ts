/** Where a sent round leads, and what the page there tells of rows that were written down by somebody else. */

import { nameOf, preyName } from '../../../views/names.ts';
import type { AgainstTold, AlreadyTold, Told } from '../../../views/pages/tonight-told.tsx';
import { paths } from '../../../views/paths.ts';
import type { Against, Said } from '../../actions/evening-standing.ts';
import { type DayNumber, parseCivilDate } from '../../husbandry/calendar.ts';
import { grouped } from '../../husbandry/grouped.ts';
import type { EveningLine } from '../../store/index.ts';
import { inNames } from './names.ts';
import { chosenBins } from './round-shelves.ts';
import type { Visit } from './visit.ts';

export interface RoundReply {
  readonly evening: string;
  readonly recorded: number;
  readonly already: readonly string[];
  readonly against: readonly Against[];
}

interface Sent {
  readonly today: DayNumber;
  /** Fields as they came. */
  readonly sent: Readonly<Record<string, unknown>>;
}

const BETWEEN = '.';
const WITHIN = '-';
/** Rows told of one by one: an address of thousands is refused by servers on its way. */
const MOST_TOLD = 100;
const SAID: readonly Said[] = ['offered', 'not offered', 'premoult', 'moulted', 'died'];

/** The round again: its evening when it is not tonight, what was not written, and the bins chosen for shelves. */
export function roundAgain(reply: RoundReply, { today, sent }: Sent): string {
  const evening = parseCivilDate(reply.evening);
  const query = new URLSearchParams();
  if (evening.ok && evening.value !== today) query.set('day', reply.evening);
  const against = reply.against.slice(0, MOST_TOLD);
  const already = reply.already.slice(0, MOST_TOLD - against.length);
  const untold = reply.against.length + reply.already.length - against.length - already.length;
  if (already.length > 0) query.set('already', already.join(BETWEEN));
  if (against.length > 0) query.set('against', against.map(markOf).join(BETWEEN));
  if (untold > 0) query.set('untold', `${untold}`);
  for (const [shelf, bin] of sent.shelf === undefined ? [] : chosenBins(sent))
    if (shelf !== sent.shelf) query.set(`from:${shelf}`, bin);
  const text = query.toString();
  return text === '' ? paths.tonight : `${paths.tonight}?${text}`;
}

/** 'A3-2' for a mark, 'A3-0-B4-2' for two heads from B4. */
const markOf = ({ animal, said, bin, heads }: Against): string =>
  [animal, SAID.indexOf(said), ...(bin === undefined ? [] : [bin, heads])].join(WITHIN);

interface Standing {
  readonly query: Readonly<Record<string, string>>;
  readonly lines: readonly EveningLine[];
  readonly moment: string;
}

/** What the address says was not written, beside what stands written now. */
export function toldOf({ names, snapshot }: Visit, { query, lines, moment }: Standing): Told {
  const species = new Map(snapshot.bins.map((bin) => [bin.code, bin.species]));
  const linesOf = grouped(lines, ({ animal }) => animal);
  const of = (code: string) => linesOf.get(code) ?? [];
  const meal = (heads: number, bin: string): string =>
    `offered ${heads} ${preyName(names.species, species.get(bin) ?? '', heads)} from ${nameOf(names.bins, bin)}`;
  const stands = ({ kind, heads, bin }: EveningLine): string =>
    kind === 'offered' ? meal(heads ?? 0, bin ?? '') : WRITTEN[kind];
  const byWhom = ({ act, summary, writtenAt }: EveningLine) => ({
    act: String(act),
    summary: inNames(summary, names),
    minutesAgo: Math.max(0, Math.round((Date.parse(moment) - Date.parse(writtenAt)) / MS_PER_MINUTE)),
  });
  const already = codesIn(query.already).flatMap((animal): AlreadyTold[] => {
    const last = of(animal).at(-1);
    return last === undefined ? [] : [{ animal, stands: stands(last), ...byWhom(last) }];
  });
  const against = codesIn(query.against).flatMap((mark): AgainstTold[] => {
    const [animal = '', at, bin, heads] = mark.split(WITHIN);
    const said = SAID[Number(at)];
    const last = of(animal).findLast(({ kind }) => kind !== 'died');
    if (said === undefined || last === undefined) return [];
    const words = bin === undefined ? MARKED[said] : meal(Number(heads), bin);
    return [{ animal, said: words, stands: stands(last), ...byWhom(last) }];
  });
  return { already, against, untold: Number.parseInt(query.untold ?? '', 10) || 0 };
}

const MS_PER_MINUTE = 60_000;
const WRITTEN = { skipped: 'not fed', premoult: 'premoult', moulted: 'moulted', died: 'died' } as const;
const MARKED = { ...WRITTEN, offered: 'fed as shown', 'not offered': 'not fed' } as const;
const codesIn = (text: string | undefined): readonly string[] => (text ?? '').split(BETWEEN).filter(Boolean);
