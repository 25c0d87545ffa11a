/** The windows of the groups as brackets under the spectrum, named, none on another. */
import type { GroupAnswer } from '../../src/husbandry/supply/index.ts';
import type { Mm } from '../../src/husbandry/units.ts';
import { lanes, textWidth, within } from './label-places.ts';
import { place, rulerScale } from './ruler.tsx';

/** The spectrum is laid out twice, for a desk and for a phone, so that its text keeps its size. */
export interface SpectrumSize {
  readonly name: 'desk' | 'phone';
  readonly width: number;
  readonly height: number;
  readonly fontSize: number;
  /** Most species that are named; all are drawn. */
  readonly named: number;
  readonly marks: 'many' | 'few';
  /** Most groups whose window is drawn. */
  readonly brackets: number;
}
/** Space left and right of the ruler's ends. */
export const MARGIN = 12;

interface PlacedWindow {
  readonly name: string;
  readonly verdict: GroupAnswer['verdict'];
  readonly from: number;
  readonly to: number;
  readonly label: number;
  readonly lane: number;
}

interface NamedWindow extends Pick<PlacedWindow, 'name' | 'verdict'> {
  readonly minMm: Mm;
  readonly maxMm: Mm;
  readonly heads: number;
}

const NEED: Readonly<Record<GroupAnswer['verdict'], number>> = {
  'runs short': 0,
  tight: 1,
  lasts: 2,
  empty: 3,
};

/** What is drawn of a group; `heads` decides who is drawn where there is no room for all. */
export type DrawnGroup = Pick<GroupAnswer, 'name' | 'verdict' | 'heads'> & {
  readonly window: Pick<GroupAnswer['window'], 'minMm' | 'maxMm'>;
};

/** Groups of one name as one stretch; those that run short apart from those that last, with the worst verdict among them. */
function byName(groups: readonly DrawnGroup[]): NamedWindow[] {
  const named = new Map<string, NamedWindow>();
  for (const { name, verdict, heads, window } of groups) {
    const key = `${name} ${verdict === 'lasts'}`;
    const so = named.get(key) ?? { name, verdict, heads: 0, minMm: window.minMm, maxMm: window.maxMm };
    named.set(key, {
      name,
      verdict: NEED[verdict] < NEED[so.verdict] ? verdict : so.verdict,
      heads: so.heads + heads,
      minMm: Math.min(so.minMm, window.minMm),
      maxMm: Math.max(so.maxMm, window.maxMm),
    });
  }
  return [...named.values()];
}

/** The windows drawn, those in need first when there is no room for all; left to right. */
export function placeWindows(groups: readonly DrawnGroup[], size: SpectrumSize): PlacedWindow[] {
  const x = rulerScale(MARGIN, size.width - MARGIN);
  const bounds = { left: 2, right: size.width - 2 };
  const drawn = byName(groups)
    .toSorted((a, b) => NEED[a.verdict] - NEED[b.verdict] || b.heads - a.heads)
    .slice(0, size.brackets)
    .toSorted((a, b) => a.minMm - b.minMm);
  const placed = drawn.map(({ name, verdict, minMm, maxMm }) => {
    const [from, to] = [x(minMm), x(maxMm)];
    const width = textWidth(name, size.fontSize - 1);
    return { name, verdict, from, to, label: within((from + to) / 2, width, bounds), width };
  });
  const stretches = placed.map(({ from, to, label, width }) => ({
    from: Math.min(from, label - width / 2),
    to: Math.max(to, label + width / 2),
  }));
  return lanes(stretches).map((lane, i) => ({ ...placed[i]!, lane }));
}

/** A bracket from the least to the greatest prey length of a group, with its name. */
export const GroupBracket = ({
  name,
  verdict,
  from,
  to,
  label,
  top,
  fontSize,
}: PlacedWindow & { top: number; fontSize: number }) => (
  <g class={`group-bracket is-${verdict.replace(' ', '-')}`}>
    <path d={`M${place(from)} ${place(top + 7)}v-6H${place(to)}v6`} class="bracket" />
    <text
      x={place(label)}
      y={place(top + 19)}
      text-anchor="middle"
      font-size={fontSize - 1}
      class="bracket-name"
    >
      {name}
    </text>
  </g>
);
