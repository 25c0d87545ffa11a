/** One Sunday check in a fresh process, cold and then again: prints the times and the answer's mark as one line of JSON. */
import { createHash } from 'node:crypto';
import type { CoverAnswer } from '../../src/husbandry/supply/answer.ts';
import { leastOf, type Spent, spentOn } from './clock.ts';
import { compiledSunday } from './compiled.ts';
import { sundayRoom } from './sunday-rooms.ts';

export interface Once {
  readonly cold: Spent;
  readonly warm: Spent;
  readonly verdict: CoverAnswer['verdict'];
  readonly chance: number;
  readonly standardError: number;
  readonly missed: number;
  readonly act: string | null;
  /** First digits of the answer's hash: moves when any digit of the answer does. */
  readonly mark: string;
}

const WARM_RUNS = 3;
const DAYS = 7;
const MARK_LENGTH = 10;

const { sundayCheck } = await compiledSunday();
const room = sundayRoom(process.argv[2] ?? '');
const ask = () => sundayCheck(room, { days: DAYS });
const cold = await spentOn(ask);
const warm = await leastOf(WARM_RUNS, ask);
const answer = ask();
const once: Once = {
  cold,
  warm,
  verdict: answer.verdict,
  chance: answer.nothingMissed.chance,
  standardError: answer.nothingMissed.standardError,
  missed: answer.missedMeals,
  act: answer.act?.sentence ?? null,
  mark: createHash('sha256').update(JSON.stringify(answer)).digest('hex').slice(0, MARK_LENGTH),
};
process.stdout.write(`${JSON.stringify(once)}\n`);
