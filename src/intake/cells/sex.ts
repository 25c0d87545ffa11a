/** Sexes as keepers write them: words, signs, or counts of males.females.unsexed such as 0.1 and 0.0.12. */
import type { Sex } from '../../husbandry/animals/index.ts';
import { plainWords } from '../names/plain.ts';

export interface SexPart {
  readonly sex: Sex;
  readonly count: number;
}

export interface SexRead {
  /** One part for each sex that has heads. */
  readonly parts: readonly SexPart[];
  /** Written as counts: the heads are known. */
  readonly counted: boolean;
  /** The keeper doubts it ("F?"); read as unsexed. */
  readonly doubted: boolean;
}

const TRIPLE = /^(\d{1,5})[.,:](\d{1,5})(?:[.,:](\d{1,6}))?$/;
const DOUBT =
  /\?|\b(poss|possible|possibly|prob|probable|probably|suspected|suspect|sus|maybe|likely|evtl|vermutlich)\b/i;
const MALE = new Set('m|male|mm|am|boy|mannlich|mannchen|bock|macho|♂'.split('|'));
const FEMALE = new Set('f|female|af|mf|girl|weiblich|weibchen|femelle|hembra|♀|w'.split('|'));
const UNSEXED = new Set(
  'u|us|un|unsexed|unknown|not sexed|no|nn|ns|unbestimmt|unbekannt|ug|non sexe|indetermine|sin sexar'.split(
    '|',
  ),
);

function countedSexes(text: string): SexRead | null {
  const match = TRIPLE.exec(text.replace(/\s/g, ''));
  if (!match) return null;
  const [males = 0, females = 0, unsexed = 0] = match.slice(1).map((part) => Number(part ?? 0));
  const all: SexPart[] = [
    { sex: 'male', count: males },
    { sex: 'female', count: females },
    { sex: 'unsexed', count: unsexed },
  ];
  const parts = all.filter(({ count }) => count > 0);
  return parts.length === 0 ? null : { parts, counted: true, doubted: false };
}

function sexOfWord(word: string): Sex | null {
  if (MALE.has(word)) return 'male';
  if (FEMALE.has(word)) return 'female';
  return UNSEXED.has(word) ? 'unsexed' : null;
}

/** The sexes of a cell; null when it cannot be read. */
export function readSex(text: string): SexRead | null {
  const counted = countedSexes(text);
  if (counted) return counted;
  const doubted = DOUBT.test(text);
  const bare = text.replace(new RegExp(DOUBT, 'gi'), ' ').trim();
  const sex = sexOfWord(bare) ?? sexOfWord(plainWords(bare));
  if (sex === null) return null;
  return { parts: [{ sex: doubted ? 'unsexed' : sex, count: 1 }], counted: false, doubted };
}
