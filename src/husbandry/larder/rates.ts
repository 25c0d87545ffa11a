/** Daily rates of a chain at a day's temperatures: advance, death, laying. */

import { type PiecewiseLinear, valueAt } from '../../maths/sine-day.ts';
import type { ChainRates } from '../../maths/uniformise.ts';
import {
  type DayTemp,
  type DevelopmentPoint,
  developmentOnDay,
  meanOfDay,
  type PreySpecies,
  type PreyStage,
  type SurvivalPoint,
} from '../prey/index.ts';
import type { TempC } from '../units.ts';
import type { Chain, ChainStage } from './chain.ts';

/** How a bin is kept, and what is peculiar to it. */
export interface Keeping {
  readonly temp: DayTemp;
  /** Mean of seven days, for hard stops. */
  readonly weekMeanC: TempC;
  /** Growth speed of this bin over the published one. */
  readonly speed: number;
  /** Death per day in a holding bin, at least; 0 in a colony. */
  readonly holdingLossPerDay: number;
  /** Share of full laying: 0 in a holding bin, 1 in a colony with room. */
  readonly laying: number;
  /** Larvae that must be alone to become pupae are not: they stay larvae. */
  readonly crowdedLarvae?: boolean;
  /** Many days are like this one. */
  readonly lasting?: boolean;
}

interface StageRate {
  readonly exit: number;
  readonly advance: number;
}

/** Rates of the whole chain for one day. */
export function ratesOfDay(chain: Chain, keeping: Keeping): ChainRates {
  const exit = new Float64Array(chain.size);
  const advance = new Float64Array(chain.size);
  const birth = new Float64Array(chain.size);
  chain.stages.forEach((stage, s) => {
    const rate = stage.young ? youngRate(chain.species, stage, keeping) : adultRate(chain, s, keeping);
    exit.fill(rate.exit, stage.first, stage.first + stage.count);
    advance.fill(rate.advance, stage.first, stage.first + stage.count);
  });
  if (keeping.crowdedLarvae) holdLarvae(chain, { exit, advance });
  layBirths(chain, layingPerHead(chain.species, keeping), birth);
  return { exit, advance, birth, birthInto: 0, lasting: keeping.lasting ?? false };
}

/** Rates of a breeding colony with room, every day alike and all as published. */
export const colonyRates = (chain: Chain, temp: DayTemp): ChainRates =>
  ratesOfDay(chain, {
    temp,
    weekMeanC: meanOfDay(temp),
    speed: 1,
    holdingLossPerDay: 0,
    laying: 1,
    lasting: true,
  });

/** Nobody leaves the last substage before the pupa but by dying. */
function holdLarvae({ stages }: Chain, { exit, advance }: Pick<ChainRates, 'exit' | 'advance'>): void {
  const last = (stages.find(({ kind }) => kind === 'pupa')?.first ?? 0) - 1;
  if (last < 0) return;
  exit[last] = (exit[last] as number) - (advance[last] as number);
  advance[last] = 0;
}

/** Laying by age: the mean rate times the curve at the middle of each part of laying life, the curve's mean made 1. */
function layBirths(chain: Chain, perHead: number, birth: Float64Array): void {
  const { first, count } = chain.stages[chain.stages.length - 1] as ChainStage;
  const byAge = chain.species.laying?.byAge?.value;
  if (!byAge) return void birth.fill(perHead, first, first + count);
  const curve = { x: byAge.map(([share]) => share), y: byAge.map(([, rate]) => rate) };
  const rates = Float64Array.from({ length: count }, (_, j) => valueAt(curve, (j + 1 / 2) / count));
  const mean = rates.reduce((sum, rate) => sum + rate, 0) / count;
  rates.forEach((rate, j) => {
    birth[first + j] = (perHead * rate) / mean;
  });
}

/**
 * Survival s and survivors' mean D over k substages: exit k/D, advance (k/D) s^(1/k), death the rest; then s, D and
 * CV 1/sqrt(k) hold exactly. Outside the published temperatures, or where a holding loss is greater, the hazard mu is
 * given first: advance k/D - mu. Where growth has stopped only the hazard goes on.
 */
export function splitExit(k: number, days: number, survival: number): StageRate {
  const exit = k / days;
  return { exit, advance: exit * survival ** (1 / k) };
}

function youngRate(species: PreySpecies, stage: ChainStage, keeping: Keeping): StageRate {
  const young = stage.young as PreyStage;
  const days = youngDays(species, young, keeping);
  const within = splitExit(stage.count, days, survivalAt(young, keeping.weekMeanC));
  const floor = Math.max(
    hazardOutside(species, stage, keeping),
    young.kind === 'egg' ? 0 : keeping.holdingLossPerDay,
  );
  if (within.exit - within.advance >= floor) return within;
  return { exit: Math.max(within.exit, floor), advance: Math.max(0, within.exit - floor) };
}

/** Mean days in a stage on such days; Infinity where development stands still. */
export function youngDays(species: PreySpecies, young: PreyStage, keeping: Keeping): number {
  const span = species.spans.find(({ code }) => code === young.span);
  if (!span) throw new Error(`${species.code}: stage ${young.name} names no span of the species`);
  const rate = developmentOnDay(span, keeping.temp, keeping.weekMeanC) * keeping.speed;
  return rate > 0 ? young.share / rate : Number.POSITIVE_INFINITY;
}

const curveOf = <P>(points: readonly P[], x: (p: P) => number, y: (p: P) => number): PiecewiseLinear => {
  const sorted = [...points].sort((a, b) => x(a) - x(b));
  return { x: sorted.map(x), y: sorted.map(y) };
};

/** Share that survive the stage at this temperature: straight between published values, the nearest outside. */
export const survivalAt = (stage: PreyStage, tempC: TempC): number =>
  valueAt(
    curveOf(
      stage.survival.value,
      (p: SurvivalPoint) => p.tempC,
      (p) => p.share,
    ),
    tempC,
  );

/** Death per day at the nearest published temperature, when this one lies outside those published; else 0. */
function hazardOutside(species: PreySpecies, stage: ChainStage, keeping: Keeping): number {
  const young = stage.young as PreyStage;
  const temps = young.survival.value.map(({ tempC }) => tempC);
  const nearest = Math.min(Math.max(keeping.weekMeanC, Math.min(...temps)), Math.max(...temps));
  if (nearest === keeping.weekMeanC) return 0;
  const there = { ...keeping, temp: { minC: nearest, maxC: nearest }, weekMeanC: nearest, speed: 1 };
  const rate = splitExit(stage.count, youngDays(species, young, there), survivalAt(young, nearest));
  return rate.exit - rate.advance;
}

/** Mean days of adult life at this temperature. */
export const adultDays = (species: PreySpecies, tempC: TempC): number =>
  valueAt(
    curveOf(
      species.adult.longevity.value,
      (p: DevelopmentPoint) => p.tempC,
      (p) => p.days,
    ),
    tempC,
  );

function adultRate(chain: Chain, index: number, keeping: Keeping): StageRate {
  const { species, stages } = chain;
  const life = adultDays(species, meanOfDay(keeping.temp));
  const before = Math.min(species.laying?.firstAfterDays.value ?? 0, life / 2);
  const waiting = index < stages.length - 1;
  const ageing = (stages[index] as ChainStage).count / (waiting ? before : life - before);
  return { exit: ageing + keeping.holdingLossPerDay, advance: ageing };
}

/** Eggs or live young that hatch, per adult and day. */
function layingPerHead(species: PreySpecies, keeping: Keeping): number {
  const laying = species.laying;
  if (!laying || keeping.laying <= 0) return 0;
  const perDay = layingCurve(species, laying.perFemaleDay.value);
  const perFemale = valueAt(perDay, meanOfDay(keeping.temp));
  return perFemale * laying.femaleShare.value * laying.hatchShare.value * keeping.laying;
}

function layingCurve(
  species: PreySpecies,
  points: readonly { tempC: TempC; perDay: number }[],
): PiecewiseLinear {
  const spans = species.spans;
  const lower = Math.min(...spans.map((span) => span.lowerThresholdC.value));
  const upper = Math.max(...spans.map((span) => span.upperStopC.value));
  const sorted = [...points].sort((a, b) => a.tempC - b.tempC);
  return {
    x: [lower, ...sorted.map((p) => p.tempC), upper],
    y: [0, ...sorted.map((p) => p.perDay), 0],
  };
}
