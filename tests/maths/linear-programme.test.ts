/** Linear programmes: the answer, and what is said where there is none. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type LinearProgramme,
  type Solved,
  type Solving,
  solver,
  withoutBadStart,
} from '../../src/maths/linear-programme.ts';

const NO_BOUND = Number.POSITIVE_INFINITY;
const solve = await solver();

/** Two columns, each at most 10, and rows given as [least, most, factor, factor]. */
const programme = (
  rows: readonly (readonly [number, number, number, number])[],
  over: Partial<LinearProgramme> = {},
): LinearProgramme => ({
  sense: 'most',
  worth: Float64Array.of(3, 2),
  most: Float64Array.of(10, 10),
  rows: rows.map(([least, most, ...factors]) => ({ least, most, columns: [0, 1], factors })),
  ...over,
});

describe('a linear programme', () => {
  it('finds the corner worked out by hand', () => {
    const solved = solve(
      programme([
        [0, 4, 1, 1],
        [0, 6, 1, 3],
      ]),
    );
    expect(solved).toEqual({ status: 'optimal', value: 12, bound: 12, columns: Float64Array.of(4, 0) });
  });

  it('says when nothing satisfies it and when nothing bounds it', () => {
    expect(solve(programme([[25, NO_BOUND, 1, 1]])).status).toBe('infeasible');
    const unbounded = programme([[0, NO_BOUND, 1, 1]], { most: Float64Array.of(NO_BOUND, NO_BOUND) });
    expect(solve(unbounded).status).toBe('unbounded');
  });

  it('is never worse than any point of a grid that satisfies it', () => {
    const factor = fc.integer({ min: 1, max: 9 });
    const bound = fc.integer({ min: 5, max: 40 });
    fc.assert(
      fc.property(fc.array(fc.tuple(bound, factor, factor), { minLength: 1, maxLength: 4 }), (limits) => {
        const solved = solve(programme(limits.map(([most, a, b]) => [0, most, a, b] as const)));
        if (solved.status !== 'optimal') return false;
        const [x, y] = solved.columns as unknown as [number, number];
        const fits = (a: number, b: number, slack = 0) =>
          limits.every(([most, fa, fb]) => fa * a + fb * b <= most + slack);
        let best = 0;
        for (let a = 0; a <= 10; a += 0.5)
          for (let b = 0; b <= 10; b += 0.5) if (fits(a, b)) best = Math.max(best, 3 * a + 2 * b);
        return fits(x, y, 1e-7) && solved.value >= best - 1e-7;
      }),
      { seed: 1 },
    );
  });
});

describe('a start from which the solver gives up', () => {
  const rows = programme([[0, 4, 1, 1]]);
  const start = { columns: [0], values: [4] };

  /** Gives up, or finds no time, whenever it is told where to begin. */
  function startled(says: Solved | null) {
    const asked: Solving[] = [];
    const ask = withoutBadStart((what, solving) => {
      asked.push(solving);
      return solving.start ? says : solve(what, solving);
    });
    return { asked, ask };
  }

  it('is left out the second time, and nothing else', () => {
    const { asked, ask } = startled(null);
    expect(ask(rows, { gap: 1, start })).toMatchObject({ status: 'optimal', value: 12 });
    expect(asked).toEqual([{ gap: 1, start }, { gap: 1 }]);
  });

  it('is not tried again where only the time was too short', () => {
    const { asked, ask } = startled({ status: 'failed' });
    expect(ask(rows, { seconds: 1, start })).toEqual({ status: 'failed' });
    expect(asked).toHaveLength(1);
  });

  it('is not looked for where there was none', () => {
    let times = 0;
    const failing = withoutBadStart(() => {
      times++;
      return null;
    });
    expect(failing(rows)).toEqual({ status: 'failed' });
    expect(times).toBe(1);
  });
});
