/** Places labels along a picture so that none lies on another. */

export interface Label {
  readonly text: string;
  /** Centre wished for. */
  readonly x: number;
  /** Base line wished for. */
  readonly y: number;
  readonly width: number;
}

export interface Bounds {
  readonly left: number;
  readonly right: number;
}

const LINE = 17;
const GAP = 8;

/** Width of a text at a font size, by the mean width of a letter. */
export const textWidth = (text: string, fontSize: number): number => text.length * fontSize * LETTER_WIDTH;
const LETTER_WIDTH = 0.56;

/** The centre nearest to the wish at which the label lies within the bounds. */
export const within = (x: number, width: number, { left, right }: Bounds): number =>
  Math.min(Math.max(x, left + width / 2), right - width / 2);

const overlaps = (a: Label, b: Label): boolean =>
  Math.abs(a.x - b.x) < (a.width + b.width) / 2 + GAP && Math.abs(a.y - b.y) < LINE;

/** Moves labels upwards, lowest wish first, until none overlaps one already placed. */
export function placeAbove<L extends Label>(labels: readonly L[], bounds: Bounds): L[] {
  const placed: L[] = [];
  for (const label of labels.toSorted((a, b) => b.y - a.y)) {
    let next = { ...label, x: within(label.x, label.width, bounds) };
    while (placed.some((other) => overlaps(next, other))) next = { ...next, y: next.y - LINE };
    placed.push(next);
  }
  return placed;
}

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** First free lane, from 0, for each stretch in the order given; stretches of one lane do not touch. */
export function lanes(stretches: readonly Stretch[]): number[] {
  const ends: number[] = [];
  return stretches.map(({ from, to }) => {
    const free = ends.findIndex((end) => end + GAP <= from);
    const lane = free === -1 ? ends.length : free;
    ends[lane] = to;
    return lane;
  });
}
