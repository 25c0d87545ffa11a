/** The geometry of the size spectrum: heads per length band become smooth outlines above and below the ruler. */

import { area, curveMonotoneX } from 'd3-shape';
import type { Spectrum } from '../../src/husbandry/supply/index.ts';
import { sum } from './densities.ts';
import { place } from './ruler.tsx';
import { type Ground, groundOf, type SpectrumFrame } from './spectrum-ground.ts';
import { thicknessOf, thickOf } from './thick-places.ts';

export interface SpectrumShapes {
  readonly layers: readonly {
    readonly species: string;
    readonly path: string;
    readonly peak: Point;
    /** Places on its outline where it is nearly as thick as anywhere. */
    readonly places: readonly Point[];
    readonly thickness: number;
  }[];
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

const outline = area<Slab>()
  .defined((slab) => slab.drawn)
  .x((slab) => place(slab.x))
  .y0((slab) => place(slab.near))
  .y1((slab) => place(slab.far))
  .curve(curveMonotoneX)
  .digits(1);

/** One species' layer, standing on those before it. */
function layerOf(species: string, layer: number, ground: Ground): SpectrumShapes['layers'][number] {
  const { mids, alive, stock, rulerTop, rise, ends, whole } = ground;
  const own = alive[layer]!;
  const below = sum(alive.slice(0, layer), mids.length);
  const isThere = (i: number): boolean => (own[i] ?? 0) > 0;
  const slabs = mids.map((x, i) => ({
    x,
    near: rulerTop - rise(below[i]!, stock[i]!),
    far: rulerTop - rise(below[i]! + own[i]!, stock[i]!),
    drawn: whole || isThere(i - 1) || isThere(i) || isThere(i + 1),
  }));
  const top = own.indexOf(Math.max(...own));
  const thickest = Math.max(...slabs.map(thicknessOf));
  const thick = thickOf(slabs);
  return {
    species,
    path: pathOf(slabs, rulerTop, ends),
    peak: { x: mids[top]!, y: slabs[top]!.far },
    places: thick.map(({ x, far }) => ({ x, y: far })),
    thickness: thickest,
  };
}

/** What is eaten hangs from the ruler; what is missing hangs from what is eaten, drawn only where it is. */
function demandOf(missing: readonly number[], ground: Ground): { eaten: Slab[]; lacking: Slab[] } {
  const { mids, ends, eaten, wanted, lower, rise } = ground;
  const gap = (i: number) => (missing[i] ?? 0) > MISSING_FROM;
  const hanging = mids.map((x, i) => {
    const met = lower + rise(eaten[i]!, wanted[i]!);
    const whole = lower + rise(wanted[i]!, wanted[i]!);
    return { x, met, whole, drawn: gap(i) || gap(i - 1) || gap(i + 1) };
  });
  return {
    eaten: hanging.map(({ x, met }) => ({ x, near: lower, far: met, drawn: true })),
    lacking: [
      { x: ends[0]!, near: lower, far: lower, drawn: gap(0) },
      ...hanging.map(({ x, met, whole, drawn }) => ({ x, near: met, far: whole, drawn })),
      { x: ends[1]!, near: lower, far: lower, drawn: gap(mids.length - 1) },
    ],
  };
}
/** Fewer heads than this in a band are not drawn as missing. */
const MISSING_FROM = 0.05;

/** An outline, drawn only where there is something; at the ends of the ruler it starts and ends on it. */
function pathOf(slabs: readonly Slab[], base: number, ends: readonly number[]): string {
  const foot = (x: number, next: Slab | undefined): Slab => ({
    x,
    near: base,
    far: base,
    drawn: next?.drawn === true,
  });
  return outline([foot(ends[0]!, slabs[0]), ...slabs, foot(ends[1]!, slabs.at(-1))]) ?? '';
}

/** The y of a line through points at a place. */
function heightAt(points: readonly Point[], x: number): number {
  const next = points.findIndex((point) => point.x >= x);
  if (next <= 0) return points.at(next)!.y;
  const [a, b] = [points[next - 1]!, points[next]!];
  return a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y);
}

/** The smallest y of a line through points between two places. */
const highest = (points: readonly Point[], from: number, to: number): number =>
  Math.min(
    heightAt(points, from),
    heightAt(points, to),
    ...points.filter(({ x }) => x >= from && x <= to).map(({ y }) => y),
  );

/**
 * Heights go with the square root of the density, the same above and below, so that twenty large prey stay
 * visible beside a thousand flies; within a height the species share it in proportion. Companions, such as other
 * weeks, share the scale.
 */
export function spectrumShapes(
  spectrum: Spectrum,
  frame: SpectrumFrame,
  companions: readonly Spectrum[] = [],
): SpectrumShapes {
  const ground = groundOf(spectrum, frame, companions);
  const { mids, stock, rulerTop, lower, rise, ends } = ground;
  const { eaten, lacking } = demandOf(spectrum.missing, ground);
  const tops = mids.map((x, i) => ({ x, y: rulerTop - rise(stock[i]!, stock[i]!) }));
  const outlineTops = [{ x: ends[0]!, y: rulerTop }, ...tops, { x: ends[1]!, y: rulerTop }];
  return {
    layers: spectrum.alive.map(({ species }, layer) => layerOf(species, layer, ground)),
    eaten: pathOf(eaten, lower, ends),
    missing: outline(lacking) ?? '',
    rulerTop,
    bottom: Math.max(lower, ...lacking.map(({ far }) => far)),
    skyline: (from, to) => highest(outlineTops, from, to),
  };
}
