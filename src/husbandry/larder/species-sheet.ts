/** What a prey species does at one constant temperature: how long its stages take, who survives, how it grows and breeds. */

import { barren } from '../../maths/chain-step.ts';
import { type ChainRates, dayOfChain } from '../../maths/uniformise.ts';
import type { PreySpecies, StageKind } from '../prey/index.ts';
import { DAYS_PER_WEEK, DAYS_PER_YEAR, type Mg, type Mm, type TempC } from '../units.ts';
import { type Chain, type ChainStage, chainOf } from './chain.ts';
import { colonyGrowth } from './colony-growth.ts';
import { firstAdult, firstYoung, massMg, totalHeads } from './lot.ts';
import { adultDays, type Keeping, ratesOfDay, youngDays } from './rates.ts';
import { remarksAt } from './species-remarks.ts';
import { medianLength } from './taking.ts';

export interface StageSheet {
  readonly name: string;
  readonly kind: StageKind;
  /** Mean days of those that get through; null where development stands still. */
  readonly days: number | null;
  /** Spread (CV) of these days. */
  readonly cv: number;
  /** Share of those entering that leave alive; null where development stands still. */
  readonly survival: number | null;
}

/** The median of those alive at an age. */
export interface AgeSheet {
  readonly ageDays: number;
  readonly massMg: Mg;
  readonly lengthMm: Mm;
  /** Share of the newly hatched that are alive. */
  readonly alive: number;
}

export interface SpeciesSheet {
  readonly species: string;
  readonly name: string;
  readonly commonName: string;
  readonly tempC: TempC;
  /** Whether anybody becomes adult at this temperature. */
  readonly develops: boolean;
  readonly stages: readonly StageSheet[];
  readonly hatchToAdult: Omit<StageSheet, 'name' | 'kind'>;
  /** Mean days of adult life. */
  readonly adultDays: number;
  /** From hatching, week by week, until half of those alive are adult or nobody is left. */
  readonly byAge: readonly AgeSheet[];
  /** Of a colony with room; null where nobody becomes adult or nothing is known of its laying. */
  readonly growth: { readonly perWeek: number; readonly doublingDays: number | null } | null;
  /** What a reader must know of these figures, in sentences. */
  readonly remarks: readonly string[];
}

/** Nobody is followed for longer. */
const MOST_DAYS = 2 * DAYS_PER_YEAR;

/** The sheet of a species at a constant temperature, as published, without the doubts of any one bin. */
export function speciesSheet(species: PreySpecies, tempC: TempC): SpeciesSheet {
  const chain = chainOf(species);
  const keeping: Keeping = {
    temp: { minC: tempC, maxC: tempC },
    weekMeanC: tempC,
    speed: 1,
    holdingLossPerDay: 0,
    laying: 1,
  };
  const rates = ratesOfDay(chain, keeping);
  const stages = chain.stages.flatMap((stage) => stageSheet(stage, { species, rates, keeping }));
  const develops = stages.every(({ days }) => days !== null);
  return {
    species: species.code,
    name: species.name,
    commonName: species.commonName,
    tempC,
    develops,
    stages,
    hatchToAdult: sumOf(stages.filter(({ kind }) => kind !== 'egg')),
    adultDays: adultDays(species, tempC),
    byAge: develops ? agesOf(chain, rates) : [],
    growth: develops && species.laying ? growthAt(rates) : null,
    remarks: remarksAt(species, tempC),
  };
}

interface At {
  readonly species: PreySpecies;
  readonly rates: ChainRates;
  readonly keeping: Keeping;
}

/** An Erlang time of k equal parts has CV 1/sqrt(k); each part is survived with chance advance over exit. */
function stageSheet(stage: ChainStage, { species, rates, keeping }: At): StageSheet[] {
  if (!stage.young) return [];
  const days = youngDays(species, stage.young, keeping);
  const stands = !Number.isFinite(days);
  const part = (rates.advance[stage.first] as number) / (rates.exit[stage.first] as number);
  return [
    {
      name: stage.name,
      kind: stage.kind,
      days: stands ? null : days,
      cv: 1 / Math.sqrt(stage.count),
      survival: stands ? null : part ** stage.count,
    },
  ];
}

/** Stages one after another: days and variances add, survivals multiply. */
function sumOf(stages: readonly StageSheet[]): SpeciesSheet['hatchToAdult'] {
  const days = stages.reduce<number | null>(
    (sum, s) => (sum === null || s.days === null ? null : sum + s.days),
    0,
  );
  const weights = stages.map((stage) => (days === null ? 1 : (stage.days as number)));
  const variance = stages.reduce((sum, { cv }, i) => sum + (cv * (weights[i] as number)) ** 2, 0);
  return {
    days,
    cv: Math.sqrt(variance) / weights.reduce((a, b) => a + b, 0),
    survival: days === null ? null : stages.reduce((share, { survival }) => share * (survival as number), 1),
  };
}

function agesOf(chain: Chain, rates: ChainRates): AgeSheet[] {
  const ages: AgeSheet[] = [];
  const still = barren(rates);
  let heads = new Float64Array(chain.size);
  heads[firstYoung(chain)] = 1;
  for (let week = 0; week * DAYS_PER_WEEK <= MOST_DAYS && totalHeads(heads) > Number.EPSILON; week++) {
    const lengthMm = medianLength(chain, heads);
    ages.push({
      ageDays: week * DAYS_PER_WEEK,
      massMg: massMg(chain.species, lengthMm),
      lengthMm,
      alive: totalHeads(heads),
    });
    if (2 * totalHeads(heads, firstAdult(chain)) >= totalHeads(heads)) break;
    for (let day = 0; day < DAYS_PER_WEEK; day++) heads = dayOfChain(heads, still).heads.slice();
  }
  return ages;
}

/** Growth of a colony with room. */
function growthAt(rates: ChainRates): SpeciesSheet['growth'] {
  const growth = colonyGrowth(rates);
  return growth && { perWeek: growth.perWeek, doublingDays: growth.doublingDays };
}
