/** One row on the ruler: the window of prey an animal takes, and the animal's own length. */
import type { PreyForm } from '../../src/husbandry/prey-form.ts';
import type { Mm } from '../../src/husbandry/units.ts';
import { type LengthUnit, lengthRange, lengthText } from '../format.ts';
import { Drawing } from './figure.tsx';
import { hueClass } from './hatches.tsx';
import { place, RULER_TO_MM, Ruler, rulerScale } from './ruler.tsx';

const WIDTH = 240;
const HEIGHT = 26;
const x = rulerScale(10, WIDTH - 10);

export interface Window {
  readonly minMm: Mm;
  readonly idealMm: Mm;
  readonly maxMm: Mm;
}

interface WindowBracketProps {
  readonly id: string;
  readonly name: string;
  readonly window: Window;
  readonly ownLengthMm: Mm;
  readonly unit: LengthUnit;
}

export const WindowBracket = ({ id, name, window, ownLengthMm, unit }: WindowBracketProps) => (
  <Drawing
    id={id}
    class="strip"
    title={`${name} takes prey of ${lengthRange(window.minMm, window.maxMm, unit)}`}
    description={`Best at ${lengthText(window.idealMm, unit)}; its own body is ${lengthText(ownLengthMm, unit)} long.`}
    width={WIDTH}
    height={HEIGHT}
  >
    <line x1="10" x2={WIDTH - 10} y1="13" y2="13" class="strip-line" />
    <path d={`M${place(x(window.minMm))} 19v-12H${place(x(window.maxMm))}v12`} class="bracket strong" />
    <circle cx={place(x(window.idealMm))} cy="7" r="3.4" class="ideal" />
    <OwnLength at={place(x(ownLengthMm))} beyond={ownLengthMm > RULER_TO_MM} />
  </Drawing>
);

/** A body with eight legs in the smallest drawing that can be told; an arrow when it is longer than the ruler. */
export const OwnLength = ({ at, beyond }: { at: number; beyond: boolean }) =>
  beyond ? (
    <path d={`M${at + 3} 8l7 6l-7 6z`} class="own-length beyond" />
  ) : (
    <path d={`M${at} 10.500v8M${at - 5} 9l10 10M${at + 5} 9l-10 10M${at - 6} 14h12`} class="own-length" />
  );

interface PreyStripProps {
  readonly id: string;
  readonly title: string;
  readonly form: PreyForm;
  readonly low: Mm;
  readonly mid: Mm;
  readonly high: Mm;
}

/** Where a bin's prey lies on the ruler now: a lens from its shortest to its longest, thickest in the middle. */
export const PreyStrip = ({ id, title, form, low, mid, high }: PreyStripProps) => {
  const [from, middle, to] = [place(x(low) - 2), place(x(mid)), place(x(high) + 2)];
  return (
    <Drawing
      id={id}
      class="strip"
      title={title}
      description="A lens from the shortest to the longest."
      width={WIDTH}
      height={HEIGHT}
    >
      <line x1="10" x2={WIDTH - 10} y1="13" y2="13" class="strip-line" />
      <path
        d={`M${from} 13Q${middle} 0 ${to} 13Q${middle} 26 ${from} 13z`}
        class={`layer ${hueClass(form)}`}
      />
    </Drawing>
  );
};

/** The ruler over a column of rows. */
export const RulerHead = ({ unit }: { unit: LengthUnit }) => (
  <svg class="drawing strip" viewBox={`0 0 ${WIDTH} 24`} aria-hidden="true" focusable="false">
    <Ruler x={x} top={1} height={22} marks="few" unit={unit} bare />
  </svg>
);
