/** A query of the list of animals in words: what it asks for, and the list without each of its parts. */
import { placeOfKey } from '../../husbandry/walk.ts';
import { plural } from '../../husbandry/words.ts';
import type { Trait } from './herd.ts';
import type { HerdQuery } from './herd-query.ts';

/** As said of one or many: 'late', 'about to moult'. */
export const TRAIT_WORDS: Readonly<Record<Trait, string>> = {
  due: 'due tonight',
  late: 'late',
  premoult: 'about to moult',
  hardening: 'hardening',
  refused: 'refused twice or more',
  measure: 'size to be measured',
  fragile: 'fragile',
  group: 'kept as a group',
};

export interface Part {
  readonly words: string;
  /** The query without this part. */
  readonly without: HerdQuery;
}

/** What narrows the list, part by part. */
export function partsOf(query: HerdQuery, rooms: ReadonlyMap<string, string>): readonly Part[] {
  const without = (change: Partial<HerdQuery>): HerdQuery => ({ ...query, ...change, page: 1 });
  const { q, show, group, stage, place } = query;
  return [
    ...(q === '' ? [] : [{ words: `matching “${q}”`, without: without({ q: '' }) }]),
    ...show.map((trait) => ({
      words: TRAIT_WORDS[trait],
      without: without({ show: show.filter((each) => each !== trait) }),
    })),
    ...(group === '' ? [] : [{ words: plural(group), without: without({ group: '' }) }]),
    ...(stage === '' ? [] : [{ words: STAGE_WORDS[stage] ?? stage, without: without({ stage: '' }) }]),
    ...(place === '' ? [] : [{ words: `in ${placeWords(place, rooms)}`, without: without({ place: '' }) }]),
  ];
}

const STAGE_WORDS: Readonly<Record<string, string>> = {
  juvenile: 'juveniles',
  subadult: 'subadults',
  adult: 'adults',
  'mature male': 'mature males',
};

/** 'Spare room, Shelf A'. */
function placeWords(place: string, rooms: ReadonlyMap<string, string>): string {
  const { room, shelf } = placeOfKey(place);
  const name = rooms.get(room) ?? room;
  if (shelf === null) return name;
  return shelf === '' ? `${name}, no shelf` : `${name}, ${shelf}`;
}

/** '14 of 213 found: late, in Spare room.' Nothing when all are shown. */
export function foundWords(found: number, all: number, parts: readonly Part[]): string {
  if (parts.length === 0) return '';
  const words = parts.map((part) => part.words).join(', ');
  const of = all.toLocaleString('en-GB');
  return found === 0
    ? `None of ${of} found: ${words}.`
    : `${found.toLocaleString('en-GB')} of ${of} found: ${words}.`;
}
