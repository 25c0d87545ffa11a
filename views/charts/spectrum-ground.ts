/** What the size spectrum is drawn from: densities by length band, and one scale of heights for both its halves. */
import type { Spectrum } from '../../src/husbandry/supply/index.ts';
import { densities, sum } from './densities.ts';
import { place, rulerScale } from './ruler.tsx';

/** Where the picture's parts lie, in points. */
export interface SpectrumFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** Height shared by what is alive and what is eaten. */
  readonly height: number;
  readonly ruler: number;
}

const LEAST_PART = 0.22;

/** Share of the height given to the upper part: as its tallest peak to both, never squeezed away. */
function upperShare(stockPeak: number, demandPeak: number): number {
  const both = stockPeak + demandPeak;
  return both === 0 ? 1 / 2 : Math.min(1 - LEAST_PART, Math.max(LEAST_PART, stockPeak / both));
}

/** What both halves are drawn from: places of the bands, densities, and the one scale of heights. */
export interface Ground extends Amounts {
  readonly mids: readonly number[];
  readonly ends: readonly number[];
  /** Outlines run along the whole ruler, so that one week's can become the next. */
  readonly whole: boolean;
  readonly rulerTop: number;
  readonly lower: number;
  /** Height of `part` of `total`: [part/total] x [root of total] x scale. */
  readonly rise: (part: number, total: number) => number;
}

const peak = (values: readonly number[]): number => Math.sqrt(Math.max(0, ...values));

/** Points for a unit of height at which both halves fit. */
const scaleOf = (parts: readonly (readonly [number, number])[]): number =>
  Math.min(...parts.map(([height, most]) => (most === 0 ? Number.POSITIVE_INFINITY : height / most)));

/** Densities of one spectrum, stacked and mirrored. */
interface Amounts {
  readonly alive: readonly (readonly number[])[];
  readonly stock: readonly number[];
  readonly eaten: readonly number[];
  readonly wanted: readonly number[];
}

function amountsOf(spectrum: Spectrum): Amounts {
  const { edgesMm: edges } = spectrum;
  const bands = edges.length - 1;
  const alive = spectrum.alive.map(({ heads }) => densities(edges, heads));
  const eaten = densities(edges, spectrum.eaten);
  return {
    alive,
    stock: sum(alive, bands),
    eaten,
    wanted: sum([eaten, densities(edges, spectrum.missing)], bands),
  };
}

const highestOf = (all: readonly Amounts[], of: 'stock' | 'wanted'): number =>
  Math.max(...all.map((amounts) => peak(amounts[of])));

/** Ground of one spectrum, at the scale at which it and its companions fit the frame. */
export function groundOf(spectrum: Spectrum, frame: SpectrumFrame, companions: readonly Spectrum[]): Ground {
  const { edgesMm: edges } = spectrum;
  const bands = edges.length - 1;
  const x = rulerScale(frame.left, frame.right);
  const amounts = amountsOf(spectrum);
  const all = [amounts, ...companions.map(amountsOf)];
  const [stockPeak, wantedPeak] = [highestOf(all, 'stock'), highestOf(all, 'wanted')];
  const share = upperShare(stockPeak, wantedPeak);
  const rulerTop = place(frame.top + frame.height * share);
  const scale = scaleOf([
    [frame.height * share, stockPeak],
    [frame.height * (1 - share), wantedPeak],
  ]);
  return {
    mids: Array.from({ length: bands }, (_, i) => x(Math.sqrt(edges[i]! * edges[i + 1]!))),
    ends: x.range(),
    whole: companions.length > 0,
    ...amounts,
    rulerTop,
    lower: rulerTop + frame.ruler,
    rise: (part, total) => (total === 0 ? 0 : (part / total) * Math.sqrt(total) * scale),
  };
}
