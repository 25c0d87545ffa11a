/** The size spectrum, our signature: one ruler, what is alive above it, what will be eaten below. */
import type { Spectrum } from '../../src/husbandry/supply/index.ts';
import type { LengthUnit } from '../format.ts';
import type { PreyName } from '../names.ts';
import { Drawing, Numbers } from './figure.tsx';
import { type DrawnGroup, GroupBracket, MARGIN, placeWindows, type SpectrumSize } from './group-brackets.tsx';
import { Hatches, hatchFill, hueClass, missingFill } from './hatches.tsx';

import { Ruler, rulerScale } from './ruler.tsx';
import { placeNames, SpeciesLabels } from './species-labels.tsx';
import { type SpectrumShapes, spectrumShapes } from './spectrum-shapes.ts';
import { spectrumDescription, spectrumFinding, spectrumTable } from './spectrum-words.ts';

interface SizeSpectrumProps {
  readonly spectrum: Spectrum;
  readonly groups: readonly DrawnGroup[];
  /** Said before the finding, such as the week it is about. */
  readonly when?: string;
  /** Spectra that share its scale. */
  readonly companions?: readonly Spectrum[];
  readonly species: ReadonlyMap<string, PreyName>;
  readonly unit: LengthUnit;
}

const SIZES: readonly SpectrumSize[] = [
  { name: 'desk', width: 840, height: 300, fontSize: 15, named: 8, marks: 'many', brackets: 10 },
  { name: 'phone', width: 358, height: 148, fontSize: 13, named: 5, marks: 'few', brackets: 5 },
];

export const SizeSpectrum = (props: SizeSpectrumProps) => {
  const { spectrum, species, unit } = props;
  return (
    <figure class="spectrum">
      <figcaption>
        <strong>{findingOf(props)}</strong>
        <span class="how"> Above the ruler: alive. Below: will be eaten. Red hatch: wanted, not there.</span>
      </figcaption>
      {SIZES.map((size) => (
        <SpectrumDrawing {...props} size={size} />
      ))}
      <Numbers {...spectrumTable(spectrum, species, unit)} />
    </figure>
  );
};

const findingOf = ({ spectrum, unit, when }: SizeSpectrumProps): string =>
  when === undefined
    ? spectrumFinding(spectrum, unit)
    : `${when}: ${uncapped(spectrumFinding(spectrum, unit))}`;

const uncapped = (sentence: string): string => `${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;

const RULER_HEIGHT = 26;
const LANE = 32;

const SpectrumDrawing = ({ size, ...props }: SizeSpectrumProps & { size: SpectrumSize }) => {
  const { spectrum, groups, species, unit, companions } = props;
  const id = `spectrum-${size.name}`;
  const frame = {
    left: MARGIN,
    right: size.width - MARGIN,
    top: 0,
    height: size.height,
    ruler: RULER_HEIGHT,
  };
  const shapes = spectrumShapes(spectrum, frame, companions);
  const labels = placeNames(shapes, species, size);
  const windows = placeWindows(groups, size);
  const bracketTop = shapes.bottom + 12;
  const laneCount = windows.reduce((most, { lane }) => Math.max(most, lane + 1), 0);
  return (
    <Drawing
      id={id}
      class={size.name}
      title={findingOf(props)}
      description={spectrumDescription(spectrum, species)}
      width={size.width}
      top={Math.min(0, ...labels.map(({ y }) => y - size.fontSize))}
      height={bracketTop + laneCount * LANE}
    >
      <Hatches chart={id} />
      <Stock id={id} shapes={shapes} species={species} />
      <path d={shapes.eaten} class="demand" />
      <path d={shapes.missing} class="missing" fill={missingFill(id)} />
      <Ruler
        x={rulerScale(frame.left, frame.right)}
        top={shapes.rulerTop}
        height={RULER_HEIGHT}
        marks={size.marks}
        unit={unit}
      />
      <SpeciesLabels labels={labels} fontSize={size.fontSize} />
      {windows.map((window) => (
        <GroupBracket {...window} top={bracketTop + window.lane * LANE} fontSize={size.fontSize} />
      ))}
    </Drawing>
  );
};

interface StockProps {
  readonly id: string;
  readonly shapes: SpectrumShapes;
  readonly species: ReadonlyMap<string, PreyName>;
}

const Stock = ({ id, shapes, species }: StockProps) => (
  <g class="stock">
    <defs>
      {shapes.layers.map(({ path }, i) => (
        <path id={`${id}-layer-${i}`} d={path} />
      ))}
    </defs>
    {shapes.layers.map(({ species: code }, i) => (
      <>
        <use href={`#${id}-layer-${i}`} class={`layer ${hueClass(species.get(code)?.form ?? 'cricket')}`} />
        <use href={`#${id}-layer-${i}`} fill={hatchFill(id, species, code)} class="layer-hatch" />
      </>
    ))}
  </g>
);
