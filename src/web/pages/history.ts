/** What happened to an animal or a bin, as sentences. */
import { type LengthUnit, lengthRange, lengthText, recordDay, sentenceCase } from '../../../views/format.ts';
import { type Names, nameOf, preyName } from '../../../views/names.ts';
import type { HistoryLine } from '../../../views/partials/history.tsx';
import type { Kind } from '../../husbandry/animals/index.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import { MG_PER_GRAM } from '../../husbandry/units.ts';
import type { Act, ActAbout, EntryLine } from '../../store/index.ts';
import { changedWords } from './changed-words.ts';
import { inNames } from './names.ts';
import { OF_MANY } from './verb-groups.ts';

export interface Telling {
  readonly about: 'animal' | 'bin';
  readonly names: Names;
  readonly unit: LengthUnit;
  /** Prey species of a bin, by its code. */
  readonly speciesOf: ReadonlyMap<string, string>;
  /** Kinds by code, to name one that was changed. */
  readonly kinds?: ReadonlyMap<string, Kind>;
}

export const historyLines = (acts: readonly ActAbout[], telling: Telling): readonly HistoryLine[] =>
  acts.map((act) => ({
    id: String(act.act),
    day: dayShown(act),
    sentence: sentenceOf(act, telling),
    undone: act.undone,
    canUndo: !act.undone && !OF_MANY.includes(act.verb),
  }));

/** The latest acts of any kind, each with its undo: also those of many, which no record undoes. */
export const latestLines = (acts: readonly Act[], names: Names): readonly HistoryLine[] =>
  acts.map(({ id, day, summary, voidedAt, verb }) => ({
    id: String(id),
    day,
    sentence: `${inNames(summary, names)}.`,
    undone: voidedAt !== null,
    canUndo: voidedAt === null && verb !== 'first-room',
  }));

/** The day it happened; of one that was new, the day it was written down. */
const dayShown = ({ lines, day, change }: ActAbout): DayNumber =>
  change?.before === null ? day : (lines[0]?.day ?? day);

/** What the journal says of it, then what changed of its row; an act that shows neither is told as a whole. */
function sentenceOf(act: ActAbout, telling: Telling): string {
  const shown = dayShown(act);
  const dated = (line: EntryLine) => (line.day === shown ? '' : ` on ${recordDay(line.day)}`);
  const lines = together(act.lines).flatMap((line) => {
    const clause = clauseOf(line, telling);
    return clause === '' ? [] : [`${clause}${dated(line)}`];
  });
  const changes = changesIn(act, telling);
  const clauses = act.change?.before === null ? [...changes, ...lines] : [...lines, ...changes];
  if (clauses.length === 0) return `${inNames(act.summary, telling.names)}.`;
  return `${sentenceCase(clauses.join(', '))}.`;
}

/** Lots of one act that came in together, as one. */
function together(lines: readonly EntryLine[]): readonly EntryLine[] {
  const [first, ...rest] = lines.filter(({ kind }) => kind === 'moved in');
  if (first === undefined || rest.length === 0) return lines;
  const lots = [first, ...rest];
  const known = (mm: readonly (number | null)[]) => mm.filter((each) => each !== null);
  const whole: EntryLine = {
    ...first,
    heads: lots.reduce((sum, { heads }) => sum + (heads ?? 0), 0),
    fromMm: Math.min(...known(lots.map(({ fromMm }) => fromMm))),
    toMm: Math.max(...known(lots.map(({ toMm }) => toMm))),
  };
  return lines.flatMap((line) => (line === first ? whole : rest.includes(line) ? [] : line));
}

function changesIn({ change, lines, day }: ActAbout, { names, unit, kinds }: Telling): readonly string[] {
  if (change === null) return [];
  const said = {
    size: lines.some(({ details }) => details.gaugeMm !== undefined),
    death: lines.some(({ kind }) => kind === 'died'),
    maturity: lines.some(({ kind }) => kind === 'matured'),
  };
  return changedWords(change, { names, unit, day, said, ...(kinds === undefined ? {} : { kinds }) });
}

const TOLD_BY = {
  whole: '',
  part: ', counted in part',
  sample: ', by a sample',
  weighed: ', by weight',
  label: ', by the label',
} as const;

/** '412 came, 4-6 mm, by a sample, 20 dead'. */
function cameWords(line: EntryLine, telling: Telling): string {
  const { dead = 0, counted = 'whole' } = line.details;
  const died = dead > 0 ? `, ${dead} dead` : '';
  return `${line.heads ?? 0} came${range(line, telling)}${TOLD_BY[counted]}${died}`;
}

function clauseOf(line: EntryLine, telling: Telling): string {
  const { details } = line;
  const heads = line.heads ?? 1;
  switch (line.kind) {
    case 'offered':
      return offerOf(line, telling);
    case 'taken':
      return 'ate it';
    case 'part-taken':
      return 'ate some of it';
    case 'refused':
      return 'refused it';
    case 'skipped':
      return 'not fed';
    case 'premoult':
      return 'seen in premoult';
    case 'moulted':
      return `moult found${sized(details.gaugeMm, telling)}`;
    case 'measured':
      return `measured${sized(details.gaugeMm, telling)}`;
    case 'matured':
      return 'matured';
    case 'died':
      return heads > 1 ? `${heads} died` : 'died';
    case 'came back':
      return heads > 1 ? `${heads} came back` : 'came back';
    case 'delivered':
      return cameWords(line, telling);
    case 'counted':
      return `counted ${line.heads ?? 0}${range(line, telling)}${grownWords(details.grown)}`;
    case 'looked':
      return `looked: ${details.level ?? 'not said'}`;
    case 'weighed':
      return `weighed ${(details.massMg ?? 0) / MG_PER_GRAM} g`;
    case 'size seen':
      return `looked the size${range(line, telling)}`;
    case 'discarded':
      return `${heads} thrown out`;
    case 'moved in':
      return details.delivery === undefined
        ? `${heads} moved in${range(line, telling)}`
        : `looked again: ${heads} were only chilled`;
    case 'moved out':
      return details.delivery === undefined
        ? `${heads} moved out${range(line, telling)}`
        : `looked again: ${heads} more were dead`;
    case 'found dead':
      return `${heads} found dead`;
    case 'culled':
      return `${heads} culled${range(line, telling)}`;
    case 'died off':
      return `crashed: ${line.heads ?? 0} left`;
    case 'first adults':
      return 'first adults seen';
    case 'sexed':
      return `sexed: ${details.females ?? 0} females, ${details.males ?? 0} males`;
    case 'placed':
      return warmthOf(details);
    case 'cleaned out':
      return 'cleaned out';
    case 'cup looked':
      return `the cup: ${details.look ?? 'not said'}`;
  }
}

/** Temperatures of its own that a bin was given or lost; '' where only its room changed, which its row tells. */
function warmthOf({ before, after }: EntryLine['details']): string {
  const [was, is] = [before?.ownC ?? null, after?.ownC ?? null];
  if (was?.dayC === is?.dayC && was?.nightC === is?.nightC) return '';
  if (is === null) return 'as warm as the room again';
  return is.dayC === is.nightC
    ? `kept at ${is.dayC} °C`
    : `kept at ${is.dayC} °C by day, ${is.nightC} °C by night`;
}

const sized = (gaugeMm: number | undefined, { unit }: Telling): string =>
  gaugeMm === undefined ? '' : `: ${lengthText(gaugeMm, unit)}`;

const range = ({ fromMm, toMm }: EntryLine, { unit }: Telling): string =>
  fromMm === null || toMm === null ? '' : `, ${lengthRange(fromMm, toMm, unit)}`;

const grownWords = (grown: number | undefined): string =>
  grown === undefined ? '' : `, ${grown} of them grown`;

function offerOf(line: EntryLine, telling: Telling): string {
  const { names, about, speciesOf } = telling;
  if (line.heads === null || line.bin === null)
    return `ate${line.details.outcome === 'taken' ? '' : ': not known'}`;
  if (about === 'bin') return `${line.heads} for ${nameOf(names.animals, line.animal ?? '')}`;
  const prey = preyName(names.species, speciesOf.get(line.bin) ?? '', line.heads);
  return `offered ${line.heads} ${prey}${range(line, telling)}, from ${nameOf(names.bins, line.bin)}`;
}
