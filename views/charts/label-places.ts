/** Places labels along a picture so that none lies on another. */

export interface Label {
  readonly text: string;
  /** Centre wished for. */
  readonly x: number;
  /** Base line wished for. */
  readonly y: number;
  readonly width: number;
}

interface Bounds {
  readonly left: number;
  readonly right: number;
}

const LINE = 17;
const GAP = 8;

/** Width of a text at a font size, by the mean width of a letter. */
export const textWidth = (text: string, fontSize: number): number => text.length * fontSize * LETTER_WIDTH;
const LETTER_WIDTH = 0.6;

/** The centre nearest to the wish at which the label lies within the bounds. */
export const within = (x: number, width: number, { left, right }: Bounds): number =>
  Math.min(Math.max(x, left + width / 2), right - width / 2);

const overlaps = (a: Label, b: Label): boolean =>
  Math.abs(a.x - b.x) < (a.width + b.width) / 2 + GAP && Math.abs(a.y - b.y) < LINE;

/** A label over a skyline: where its subject is, and how high the skyline stands between two places. */
interface Wish extends Label {
  readonly subject: Point;
  /** Other places at which it may stand for the same. */
  readonly places?: readonly Point[];
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Shifts tried, in widths of the label. */
const SHIFTS = [0, -0.3, 0.3, -0.5, 0.5];
/** What a leader through another label costs, in points of height. */
const CROSSING = 200;

const crosses = (line: Wish, box: Label): boolean =>
  Math.abs(line.subject.x - box.x) < box.width / 2 + 2 && box.y > line.y && box.y - LINE < line.subject.y;

interface Sky extends Bounds {
  readonly skyline: (from: number, to: number) => number;
}

/** Lifts a label off the skyline and off every label placed before it. */
function lifted<W extends Wish>(wish: W, placed: readonly W[], { skyline }: Sky): W {
  const half = wish.width / 2;
  let next = { ...wish, y: skyline(wish.x - half, wish.x + half) - CLEAR };
  while (placed.some((other) => overlaps(next, other))) next = { ...next, y: next.y - LINE };
  return next;
}
const CLEAR = 7;

/** Places labels near their subjects, lowest subject first: low, little shifted, no leader through a label. */
export function placeAbove<W extends Wish>(wishes: readonly W[], sky: Sky): W[] {
  const placed: W[] = [];
  for (const wish of wishes.toSorted((a, b) => b.subject.y - a.subject.y)) {
    const subjects = [wish.subject, ...(wish.places ?? [])];
    const starts = subjects.flatMap((subject) => SHIFTS.map((shift) => ({ subject, shift })));
    const tries = starts.map(({ subject, shift }) => {
      const x = within(subject.x + shift * wish.width, wish.width, sky);
      const at = lifted({ ...wish, subject, x }, placed, sky);
      const crossings = placed.filter((other) => crosses(at, other) || crosses(other, at)).length;
      const cost = at.subject.y - at.y + Math.abs(x - at.subject.x) / 4 + CROSSING * crossings;
      return { at, cost };
    });
    placed.push(tries.reduce((best, next) => (next.cost < best.cost ? next : best)).at);
  }
  return placed;
}

interface Stretch {
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
