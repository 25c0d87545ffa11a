/** Ends a command: with what was asked for, or with the sentence of a Problem. */
import type { Problem } from '../husbandry/problems.ts';
import type { Result } from '../husbandry/result.ts';
import { EXIT, type World } from './world.ts';

/** Says the sentence and ends in trouble. */
export function refused(world: World, { sentence }: Problem): number {
  world.err(sentence);
  return EXIT.trouble;
}

/** The exit code of a result: what `say` answers, or trouble. */
export const answered = <T>(world: World, result: Result<T>, say: (value: T) => number): number =>
  result.ok ? say(result.value) : refused(world, result.problem);

/** Prints a value for programs. */
export const printJson = (world: World, value: unknown): void => world.out(JSON.stringify(value, null, 2));
