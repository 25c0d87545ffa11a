/** Names of the species over their peaks in the spectrum, each with a thin leader when it had to move up. */
import { type PreyName, preyName } from '../names.ts';
import type { SpectrumSize } from './group-brackets.tsx';
import { hueClass } from './hatches.tsx';
import { placeAbove, textWidth } from './label-places.ts';
import { place } from './ruler.tsx';
import type { SpectrumShapes } from './spectrum-shapes.ts';

interface PlacedName {
  readonly text: string;
  readonly hue: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly subject: { readonly x: number; readonly y: number };
}

/** Layers thinner than this, in points, are drawn but not named. */
const NAMED_FROM = 1.5;

/** Names of the thickest layers, placed so that none lies on another or on the stock. */
export function placeNames(
  { layers, skyline }: SpectrumShapes,
  species: ReadonlyMap<string, PreyName>,
  size: SpectrumSize,
): PlacedName[] {
  const named = layers
    .filter(({ thickness }) => thickness >= NAMED_FROM)
    .toSorted((a, b) => b.thickness - a.thickness)
    .slice(0, size.named);
  const wishes = named.map(({ species: code, peak, places }) => {
    const text = preyName(species, code);
    const hue = hueClass(species.get(code)?.form ?? 'cricket');
    return { text, hue, subject: peak, places, width: textWidth(text, size.fontSize), ...peak };
  });
  return placeAbove(wishes, { left: 2, right: size.width - 2, skyline });
}

/** A label this far above its peak gets a leader. */
const LEADER_FROM = 14;

export const SpeciesLabels = ({ labels, fontSize }: { labels: readonly PlacedName[]; fontSize: number }) => (
  <g class="species-labels">
    {labels.map(({ text, hue, x, y, subject }) => (
      <>
        {y < subject.y - LEADER_FROM ? (
          <line
            x1={place(subject.x)}
            y1={place(y + 4)}
            x2={place(subject.x)}
            y2={place(subject.y + 3)}
            class="leader"
          />
        ) : null}
        <text
          x={place(x)}
          y={place(y)}
          text-anchor="middle"
          font-size={fontSize}
          class={`species-label ${hue}`}
        >
          {text}
        </text>
      </>
    ))}
  </g>
);
