/** What may be asked of a room, and how each question is answered, here or in a thread: values in, values out. */
import {
  type BinOutlook,
  binOutlook,
  type ColonyAnswer,
  type ColonyQuestion,
  colonyStart,
  type HarvestAnswer,
  type HarvestQuestion,
  largestHarvests,
} from '../husbandry/colony/index.ts';
import {
  type BulkAnswer,
  type BulkNone,
  type BulkQuestion,
  bulkOrder,
  makePlan,
  type PlanAnswer,
  type PlanProgress,
  type PlanQuestion,
} from '../husbandry/plan/index.ts';
import { ok, type Result } from '../husbandry/result.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import {
  type AwayAsked,
  afterBox,
  afterCrash,
  type BinGoes,
  type BinTold,
  type BoxAnswer,
  type BoxLine,
  binsGo,
  binTold,
  type CoverAnswer,
  type CoverOptions,
  type CrashAnswer,
  type CupsHere,
  cupsHere,
  type Fed,
  type StandingPrey,
  standingTonight,
  sundayCheck,
  type UsedBin,
  usedBins,
  type WeeksAnswer,
  type WhileAway,
  weeksAhead,
  whileAway,
} from '../husbandry/supply/index.ts';

/** What is said with a question of each subject, beside the room. */
export interface Options {
  readonly sunday: CoverOptions;
  readonly weeks: CoverOptions;
  readonly 'colony start': ColonyQuestion;
  readonly 'largest harvests': HarvestQuestion;
  readonly bin: OneBin;
  readonly 'bins go': null;
  readonly crash: OneBin;
  readonly box: OneBox;
  readonly plan: PlanQuestion;
  readonly bulk: BulkQuestion;
  readonly shelves: null;
  readonly cups: null;
  readonly 'bin today': OneBin;
  readonly used: Fed;
  readonly away: AwayAsked;
}

interface OneBin {
  /** Its code. */
  readonly bin: string;
}

/** The order, and its lines as they were ordered and as they came. */
interface OneBox {
  readonly purchase: string;
  readonly lines: readonly BoxLine[];
}

/** What was found of one bin; null where there is nothing to tell. */
export interface Found<T> {
  readonly revision: number;
  readonly found: T | null;
}

/** Questions by subject, with what each is answered. */
export interface Answers {
  readonly sunday: CoverAnswer;
  readonly weeks: WeeksAnswer;
  readonly 'colony start': ColonyAnswer;
  readonly 'largest harvests': HarvestAnswer;
  readonly bin: Found<BinOutlook>;
  readonly 'bins go': Found<readonly BinGoes[]>;
  readonly crash: Found<CrashAnswer>;
  readonly box: BoxAnswer;
  readonly plan: PlanAnswer;
  readonly bulk: Found<BulkAnswer | BulkNone>;
  readonly shelves: Found<readonly StandingPrey[]>;
  readonly cups: Found<readonly CupsHere[]>;
  readonly 'bin today': Found<BinTold>;
  readonly used: Found<readonly UsedBin[]>;
  readonly away: Found<WhileAway>;
}
export type Subject = keyof Answers;

export interface Question<S extends Subject = Subject> {
  readonly subject: S;
  /** Same question, same name. */
  readonly name: string;
  readonly snapshot: Snapshot;
  readonly options: Options[S];
}

/** How an answer is computed: here, or in a worker. */
export type Answering = <S extends Subject>(question: Question<S>) => Promise<Result<Answers[S]>>;

/** Questions that are being answered just now, by name: how far each is, and a way to stop it. */
export interface UnderWay {
  /** Null where nothing was told yet, or where the question is not being answered. */
  readonly progressOf: (name: string) => PlanProgress | null;
  /** Whoever waits for it is told that it was stopped. False where it cannot be: it is over, or answered in place. */
  readonly cancel: (name: string) => boolean;
}

type Telling = (progress: PlanProgress) => void;

interface Handled<S extends Subject> {
  /** What tells one question of the subject from another. */
  readonly name: (options: Options[S]) => readonly unknown[];
  readonly answer: (
    snapshot: Snapshot,
    options: Options[S],
    tell?: Telling,
  ) => Answers[S] | Promise<Answers[S]>;
}

const coverName = ({ days, replicates, cut, stretchRobust = false, seeksAct = true }: CoverOptions) => [
  days ?? null,
  replicates ?? null,
  [...(cut ?? [])].sort(),
  stretchRobust,
  seeksAct,
];

const binName = ({ bin }: OneBin) => [bin];

/** The order in which wishes were made says nothing; what is supposed may build on what was supposed before. */
const planName = ({ weeks, wishes, supposed, explained = true, effort = 'whole' }: PlanQuestion) => [
  weeks,
  wishes
    .map(({ key, wish, amount }) => [key, wish, amount] as const)
    .sort(([a], [b]) => (a < b ? -1 : Number(a > b))),
  supposed,
  explained,
  effort,
];

const found =
  <O, T>(of: (snapshot: Snapshot, options: O) => T | null | Promise<T | null>) =>
  async (snapshot: Snapshot, options: O): Promise<Found<T>> => ({
    revision: snapshot.revision,
    found: await of(snapshot, options),
  });

const ofBin = <T>(about: (snapshot: Snapshot, bin: string) => T | null | Promise<T | null>) =>
  found((snapshot, { bin }: OneBin) => about(snapshot, bin));

const HANDLED: { readonly [S in Subject]: Handled<S> } = {
  sunday: { name: coverName, answer: sundayCheck },
  weeks: { name: coverName, answer: weeksAhead },
  'colony start': { name: (question) => [question], answer: colonyStart },
  'largest harvests': { name: (question) => [question], answer: largestHarvests },
  bin: { name: binName, answer: ofBin(binOutlook) },
  'bins go': { name: () => [], answer: found((snapshot) => binsGo(snapshot)) },
  crash: { name: binName, answer: ofBin(afterCrash) },
  box: {
    name: ({ purchase }) => [purchase],
    answer: (snapshot, { lines }) => afterBox(snapshot, lines),
  },
  plan: { name: planName, answer: makePlan },
  bulk: { name: ({ offer, weeks }) => [offer, weeks], answer: found(bulkOrder) },
  shelves: { name: () => [], answer: found((snapshot) => standingTonight(snapshot)) },
  cups: { name: () => [], answer: found((snapshot) => cupsHere(snapshot)) },
  'bin today': { name: binName, answer: ofBin(binTold) },
  used: { name: ({ day, byBin }) => [day, [...byBin]], answer: found(usedBins) },
  away: { name: ({ days, also }) => [days.from, days.to, also], answer: found(whileAway) },
};

export const nameOf = <S extends Subject>(subject: S, options: Options[S]): string =>
  JSON.stringify([subject, ...HANDLED[subject].name(options)]);

/** The answer to a question; how far it is may be told meanwhile. */
export const answerTo = async <S extends Subject>(
  { subject, snapshot, options }: Question<S>,
  tell?: Telling,
): Promise<Answers[S]> => HANDLED[subject].answer(snapshot, options, tell);

/** Computes where it is asked. */
export const answerHere: Answering = async (question) => ok(await answerTo(question));
