/** What a bin's record has taught, in words: beside what is published, and on how much evidence. */
import type { BinLearned } from '../../src/husbandry/supply/index.ts';
import { aboutHeads, counted, listed, sentenceCase, shortDay } from '../format.ts';

type Learned = BinLearned['speed'];

/** How fast they grow, how many die, how much a colony lays, and from what it was learned. */
export const learnedWords = ({ speed, hazard, laying, evidence }: BinLearned): readonly string[] => [
  speed.tooLittle
    ? 'Growth as published: too little to learn from'
    : `Grow ${times(speed)} as fast as published`,
  hazard.tooLittle
    ? 'Deaths as published: too little to learn from'
    : sentenceCase(`${times(hazard)} as many die as published`),
  ...(laying && !laying.tooLittle ? [`Lay ${times(laying)} as much as published, by the counts`] : []),
  `Seen so far: ${evidenceWords(evidence)}`,
];

const DIGITS = 2;
const inDigits = (value: number): string => `${Number(value.toPrecision(DIGITS))}`;

/** 'about 1.2 times (0.9 to 1.5)'. */
const times = ({ low, mid, high }: Learned): string =>
  `about ${inDigits(mid)} times (${inDigits(low)} to ${inDigits(high)})`;

/** '3 counts, 2 looks and 41 dead'. */
function evidenceWords(seen: BinLearned['evidence']): string {
  const said = [
    [seen.counts, counted(seen.counts, 'count')],
    [seen.levels, counted(seen.levels, 'look')],
    [seen.weighings, counted(seen.weighings, 'weighing')],
    [seen.sizes, counted(seen.sizes, 'glance at the size', 'glances at the size')],
    [seen.firstAdults, 'the first adults'],
    [seen.dead, `${seen.dead} dead`],
  ] as const;
  const words = said.flatMap(([n, each]) => (n > 0 ? [each] : []));
  return words.length === 0 ? 'nothing' : listed(words);
}

const VERBS = { counted: 'counted', looked: 'by eye', weighed: 'by weight' } as const;

/** '180 counted on Thu 3 Dec; about 210 were expected'; nothing of a bin that nobody looked into. */
export function lastLookWords(look: BinLearned['looks'][number] | null): string | null {
  if (look === null) return null;
  const { day, kind, heads, expected } = look;
  return `${Math.round(heads)} ${VERBS[kind]} on ${shortDay(day)}; ${aboutHeads(expected)} were expected`;
}
