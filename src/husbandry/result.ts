/** Expected trouble is a value: a Result holds either what was asked for or a Problem. */
import type { Problem } from './problems.ts';

export type Result<T, P = Problem> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: P };

export const ok = <T>(value: T): Result<T, never> => ({ ok: true, value });
export const err = <P>(problem: P): Result<never, P> => ({ ok: false, problem });
