/** Life stages as keepers write them: "sling", "L4", "sub-adult", "AF", "MM". */
import type { Kind, LifeStage, Sex } from '../../husbandry/animals/index.ts';
import { plainWords } from '../names/plain.ts';

export interface StageRead {
  readonly stage: LifeStage | null;
  readonly sex: Sex | null;
  /** Written as a mature male. */
  readonly matured: boolean;
  readonly instar: number | null;
}

type Part = Partial<StageRead>;

const list = (part: Part, words: string): [string, Part][] => words.split('|').map((word) => [word, part]);

const WORDS: ReadonlyMap<string, Part> = new Map([
  ...list(
    { stage: 'young' },
    'sling|slings|spiderling|spiderlings|baby|babies|hatchling|neonate|pling|plings|larva|newborn|scorpling|pedeling|froglet|schlupfling|jungspinne|bebe',
  ),
  ...list(
    { stage: 'juvenile' },
    'juvenile|juveniles|juvenil|juvi|juvie|juv|j|jungtier|presub|presubadult|psa|halbwuchsig',
  ),
  ...list({ stage: 'subadult' }, 'subadult|sub|subad|sa|semiadult|subadulte|subadulto|subadulta'),
  ...list({ stage: 'subadult', sex: 'female' }, 'saf'),
  ...list({ stage: 'subadult', sex: 'male' }, 'sam'),
  ...list({ stage: 'adult' }, 'adult|adults|ad|mature|adulte|adulto|adulta|ausgewachsen|imago|grown'),
  ...list({ stage: 'adult', sex: 'female' }, 'af|mf|adf'),
  ...list({ stage: 'adult', sex: 'male', matured: true }, 'mm|am|adm|um'),
  ...list({ sex: 'female' }, 'female|f|weibchen|femelle|hembra'),
  ...list({ sex: 'male' }, 'male|m|mannchen|macho'),
]);

const PHRASES: readonly (readonly [RegExp, string])[] = [
  [/\bpre ?sub ?adult\b|\bpre sub\b/g, 'presub'],
  [/\b(sub|semi) adult(e|o|a)?\b/g, 'subadult'],
  [/\bultimate male\b/g, 'mm'],
  [/\bfull(y)? grown\b/g, 'grown'],
];

const INSTAR = /^(?:(?:instar|l|i|n|fi)\s?(\d{1,2})|(\d{1,2})\s?(?:i|st|nd|rd|th)?(?:\s?instar)?)$/;
const LAST_INSTAR = 20;

function instarOf(plain: string): number | null {
  const match = INSTAR.exec(plain);
  const instar = Number(match?.[1] ?? match?.[2] ?? 0);
  return instar >= 1 && instar <= LAST_INSTAR ? instar : null;
}

const merged = (parts: readonly Part[]): StageRead => {
  const { stage = null, sex = null, matured = false } = Object.assign({}, ...parts) as Part;
  const grownMale = stage === 'adult' && sex === 'male';
  return { stage, sex, matured: matured || grownMale, instar: null };
};

const ownWords = (kind: Kind, plain: string): LifeStage | null =>
  kind.stages.find(({ words }) => words.some((word) => plainWords(word) === plain))?.stage ?? null;

/** The stage of a cell, in the kind's own words or those of most keepers; null when it cannot be read. */
export function readStage(text: string, kind: Kind): StageRead | null {
  const plain = PHRASES.reduce((now, [from, to]) => now.replace(from, to), plainWords(text));
  const own = ownWords(kind, plain);
  if (own === 'mature male') return merged([{ stage: 'adult', sex: 'male', matured: true }]);
  if (own !== null) return merged([{ stage: own }]);
  const instar = instarOf(plain);
  if (instar !== null) return { ...merged([]), instar };
  const parts = plain.split(' ').flatMap((word) => WORDS.get(word) ?? []);
  return parts.length > 0 ? merged(parts) : null;
}
