/** What is alive in the larder as a faint skyline behind a picture on the ruler, its species named at its foot. */
import { area, curveMonotoneX } from 'd3-shape';
import type { Alive } from '../../src/husbandry/supply/index.ts';
import type { PreyName } from '../names.ts';
import { preyName } from '../names.ts';
import { densities, sum } from './densities.ts';
import { hueClass } from './hatches.tsx';
import { placeAbove, textWidth } from './label-places.ts';
import { place, type rulerScale } from './ruler.tsx';
import { SpeciesLabels } from './species-labels.tsx';
import { thickOf } from './thick-places.ts';

interface LarderShadowProps {
  readonly larder: Alive;
  readonly species: ReadonlyMap<string, PreyName>;
  readonly x: ReturnType<typeof rulerScale>;
  /** Where the tallest peak ends and where all stand. */
  readonly top: number;
  readonly foot: number;
  readonly fontSize: number;
  /** Most species named. */
  readonly named: number;
}

interface Slab {
  readonly x: number;
  readonly near: number;
  readonly far: number;
}

const outline = area<Slab>()
  .x((slab) => place(slab.x))
  .y0((slab) => place(slab.near))
  .y1((slab) => place(slab.far))
  .curve(curveMonotoneX)
  .digits(1);

export const LarderShadow = (props: LarderShadowProps) => {
  const layers = layersOf(props);
  return (
    <g class="larder-shadow">
      {layers.map(({ species, path }) => (
        <path d={path} class={`shadow ${hueClass(props.species.get(species)?.form ?? 'cricket')}`} />
      ))}
      <SpeciesLabels labels={labelsOf(props, layers)} fontSize={props.fontSize} />
    </g>
  );
};

interface Layer {
  readonly species: string;
  readonly path: string;
  readonly heads: number;
  /** Place of its greatest density, and those where it is nearly as thick as anywhere. */
  readonly peak: number;
  readonly places: readonly number[];
}

/** Heights go with the square root of the density, shared by the species in proportion, as in the size spectrum. */
function layersOf({ larder: { edgesMm, alive }, x, top, foot }: LarderShadowProps): readonly Layer[] {
  const bands = edgesMm.length - 1;
  const dense = alive.map(({ heads }) => densities(edgesMm, heads));
  const all = sum(dense, bands);
  const tallest = Math.sqrt(Math.max(...all, 0));
  const rise = (part: number, whole: number): number =>
    whole > 0 ? (part / whole) * (Math.sqrt(whole) / tallest) * (foot - top) : 0;
  const mids = all.map((_, i) => x(Math.sqrt((edgesMm[i] as number) * (edgesMm[i + 1] as number))));
  return alive.map(({ species, heads }, layer) => {
    const own = dense[layer] as readonly number[];
    const below = sum(dense.slice(0, layer), bands);
    const slabs = mids.map((at, i) => {
      const [part, under, whole] = [own[i] ?? 0, below[i] ?? 0, all[i] ?? 0];
      return { x: at, near: foot - rise(under, whole), far: foot - rise(under + part, whole) };
    });
    const peak = mids[own.indexOf(Math.max(...own))] ?? 0;
    const places = thickOf(slabs).map((slab) => slab.x);
    return { species, path: outline(slabs) ?? '', heads: heads.reduce((a, b) => a + b, 0), peak, places };
  });
}

/** Names near their peaks; the hue says whose shape it is, so that none needs a leader. */
function labelsOf({ species, x, foot, fontSize, named }: LarderShadowProps, layers: readonly Layer[]) {
  const [left, right] = x.range() as [number, number];
  const wishes = layers
    .filter(({ heads }) => heads >= 1)
    .toSorted((a, b) => b.heads - a.heads)
    .slice(0, named)
    .map(({ species: code, peak, places }) => {
      const text = preyName(species, code);
      const hue = hueClass(species.get(code)?.form ?? 'cricket');
      const at = { x: peak, y: foot };
      return {
        text,
        hue,
        ...at,
        width: textWidth(text, fontSize),
        subject: at,
        places: places.map((along) => ({ x: along, y: foot })),
      };
    });
  const placed = placeAbove(wishes, { left, right, skyline: () => foot });
  return placed.map((label) => ({ ...label, subject: label }));
}
