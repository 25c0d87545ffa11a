/** Whether a place is as full as it may be, after the meals. */
import type { PlanPlace } from './problem.ts';

/** In any period; never where its room is not known. `slack` is what rounding may leave, as a share. */
export const isFull = (room: PlanPlace['room'], left: readonly Float64Array[], slack: number): boolean =>
  room !== null &&
  left.some(
    (heads) =>
      heads.reduce((sum, n, node) => sum + n * (room.footprint[node] as number), 0) >=
      room.most * (1 - slack),
  );
