/** The geometry of the size spectrum: heads per length band become smooth outlines above and below the ruler. */
import { area, curveMonotoneX } from 'd3-shape';
import type { Spectrum } from '../../src/husbandry/supply/answer.ts';
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

export interface SpectrumShapes {
  readonly layers: readonly { readonly species: string; readonly path: string; readonly peak: Point }[];
  readonly eaten: string;
  readonly missing: string;
  readonly rulerTop: number;
  readonly bottom: number;
  /** Upper outline: smallest y between two places. */
  readonly skyline: (from: number, to: number) => number;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

interface Slab {
  readonly x: number;
  readonly near: number;
  readonly far: number;
  readonly drawn: boolean;
}

/** Heads per unit of log length, so that a band's area is its heads whatever its width. */
const densities = (edges: readonly number[], heads: readonly number[]): number[] =>
  heads.map((n, i) => n / Math.log(edges[i + 1]! / edges[i]!));

const sum = (columns: readonly (readonly number[])[], bands: number): number[] =>
  Array.from({ length: bands }, (_, i) => columns.reduce((total, column) => total + (column[i] ?? 0), 0));

const outline = area<Slab>()
  .defined((slab) => slab.drawn)
  .x((slab) => place(slab.x))
  .y0((slab) => place(slab.near))
  .y1((slab) => place(slab.far))
  .curve(curveMonotoneX);

const LEAST_PART = 0.22;

/** Share of the height given to the upper part: as its tallest peak to both, never squeezed away. */
function upperShare(stockPeak: number, demandPeak: number): number {
  const both = stockPeak + demandPeak;
  return both === 0 ? 1 / 2 : Math.min(1 - LEAST_PART, Math.max(LEAST_PART, stockPeak / both));
}

/**
 * Heights go with the square root of the density, the same above and below, so that twenty large prey stay
 * visible beside a thousand flies; within a height the species share it in proportion.
 */
export function spectrumShapes(spectrum: Spectrum, frame: SpectrumFrame): SpectrumShapes {
  const { edgesMm: edges } = spectrum;
  const bands = edges.length - 1;
  const x = rulerScale(frame.left, frame.right);
  const mids = Array.from({ length: bands }, (_, i) => x(Math.sqrt(edges[i]! * edges[i + 1]!)));
  const alive = spectrum.alive.map(({ heads }) => densities(edges, heads));
  const stock = sum(alive, bands);
  const eaten = densities(edges, spectrum.eaten);
  const wanted = sum([eaten, densities(edges, spectrum.missing)], bands);
  const peaks = [Math.sqrt(Math.max(0, ...stock)), Math.sqrt(Math.max(0, ...wanted))] as const;
  const share = upperShare(...peaks);
  const rulerTop = place(frame.top + frame.height * share);
  const lower = rulerTop + frame.ruler;
  const scale = Math.min(
    peaks[0] === 0 ? Number.POSITIVE_INFINITY : (frame.height * share) / peaks[0],
    peaks[1] === 0 ? Number.POSITIVE_INFINITY : (frame.height * (1 - share)) / peaks[1],
  );
  /** Height of `part` of `total`: [part/total] x [root of total]. */
  const rise = (part: number, total: number) => (total === 0 ? 0 : (part / total) * Math.sqrt(total) * scale);
  const tops = mids.map((_, i) => rulerTop - rise(stock[i]!, stock[i]!));

  const layers = spectrum.alive.map(({ species }, layer) => {
    const below = sum(alive.slice(0, layer), bands);
    const slabs = mids.map((at, i) => ({
      x: at,
      near: rulerTop - rise(below[i]!, stock[i]!),
      far: rulerTop - rise(below[i]! + alive[layer]![i]!, stock[i]!),
      drawn: true,
    }));
    const own = alive[layer]!;
    const peak = own.indexOf(Math.max(...own));
    return {
      species,
      path: pathOf(slabs, rulerTop, x.range()),
      peak: { x: mids[peak]!, y: slabs[peak]!.far },
    };
  });
  const demand = mids.map((at, i) => ({
    x: at,
    near: lower,
    far: lower + rise(eaten[i]!, wanted[i]!),
    drawn: true,
  }));
  const gap = (i: number) => (spectrum.missing[i] ?? 0) > MISSING_FROM;
  const lacking = mids.map((at, i) => ({
    x: at,
    near: demand[i]!.far,
    far: lower + rise(wanted[i]!, wanted[i]!),
    drawn: gap(i) || gap(i - 1) || gap(i + 1),
  }));
  return {
    layers,
    eaten: pathOf(demand, lower, x.range()),
    missing: outline(lacking) ?? '',
    rulerTop,
    bottom: Math.max(lower, ...lacking.map((slab) => slab.far)),
    skyline: (from, to) => Math.min(rulerTop, ...tops.filter((_, i) => mids[i]! >= from && mids[i]! <= to)),
  };
}
/** Fewer heads than this in a band are not drawn as missing. */
const MISSING_FROM = 0.05;

/** An outline that starts and ends on the ruler. */
function pathOf(slabs: readonly Slab[], base: number, ends: readonly number[]): string {
  const foot = (x: number): Slab => ({ x, near: base, far: base, drawn: true });
  return outline([foot(ends[0]!), ...slabs, foot(ends[1]!)]) ?? '';
}
