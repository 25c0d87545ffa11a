/** A prey species as a chain of substages: how many, how long the animals in them are, which are fed. */

import { meanOverSineDay, valueAt } from '../../maths/sine-day.ts';
import { type PreySpecies, type PreyStage, rateCurve, type StageKind } from '../prey/index.ts';
import type { Mm } from '../units.ts';

export interface ChainStage {
  readonly name: string;
  readonly kind: StageKind;
  readonly first: number;
  readonly count: number;
  readonly fed: boolean;
  /** The stage's own facts; null for the two adult stages. */
  readonly young: PreyStage | null;
}

export interface Chain {
  readonly species: PreySpecies;
  readonly size: number;
  readonly stages: readonly ChainStage[];
  /** Stage index of each substage. */
  readonly stageOf: Int16Array;
  /** Body length on entering and leaving each substage; 0 for eggs. */
  readonly fromMm: Float64Array;
  readonly toMm: Float64Array;
  /** Room one head takes, against an adult's: the square of its length over the adult's; slender larvae no more than 1. */
  readonly footprint: Float64Array;
  /** First substage that counts as a head: after the egg; where no young are fed the adult. */
  readonly firstHead: number;
}

const isEgg = (stage: PreyStage) => stage.kind === 'egg';

/** Mean days in each immature stage at the optimum of its span, where shares are compared. */
function stageDays(species: PreySpecies): number[] {
  return species.stages.map((stage) => {
    const span = species.spans.find(({ code }) => code === stage.span);
    if (!span) throw new Error(`${species.code}: stage ${stage.name} names no span of the species`);
    const optimum = span.optimumC.value;
    return stage.share / meanOverSineDay(rateCurve(span), optimum, optimum);
  });
}

/**
 * Substages per stage: K = round(1/CV^2) for the time from hatch to adult, shared in proportion to duration; a stage
 * with a measured spread of its own takes its own (an Erlang time of k equal parts has CV 1/sqrt(k)).
 */
function substageCounts(species: PreySpecies, days: readonly number[]): number[] {
  const total = 1 / species.immatureCv.value ** 2;
  const hatchToAdult = species.stages.reduce(
    (sum, stage, i) => sum + (isEgg(stage) ? 0 : (days[i] as number)),
    0,
  );
  return species.stages.map((stage, i) => {
    const wanted = stage.cv ? 1 / stage.cv.value ** 2 : (total * (days[i] as number)) / hatchToAdult;
    return Math.max(1, Math.round(wanted));
  });
}

/** The chain of a species: its immature stages, then adults before laying, then laying adults. */
export function chainOf(species: PreySpecies): Chain {
  const days = stageDays(species);
  const counts = substageCounts(species, days);
  const stages: ChainStage[] = [];
  let first = 0;
  const push = (stage: Omit<ChainStage, 'first'>) => {
    stages.push({ ...stage, first });
    first += stage.count;
  };
  species.stages.forEach((young, i) => {
    push({ name: young.name, kind: young.kind, count: counts[i] as number, fed: young.fed, young });
  });
  const adults = Math.max(1, Math.round(1 / species.adult.cv.value ** 2));
  if (species.laying)
    push({ name: 'adult, not yet laying', kind: 'adult', count: 1, fed: species.adult.fed, young: null });
  push({ name: 'adult', kind: 'adult', count: adults, fed: species.adult.fed, young: null });
  return { species, size: first, stages, ...layOut(species, { stages, days, size: first }) };
}

interface Layout {
  readonly stages: readonly ChainStage[];
  readonly days: readonly number[];
  readonly size: number;
}

function layOut(species: PreySpecies, { stages, days, size }: Layout) {
  const stageOf = new Int16Array(size);
  const fromMm = new Float64Array(size);
  const toMm = new Float64Array(size);
  const total = days.reduce((sum, d, i) => sum + (stages[i]?.kind === 'egg' ? 0 : d), 0);
  let share = 0;
  stages.forEach((stage, s) => {
    const width = stage.young && stage.kind !== 'egg' ? (days[s] as number) / total : 0;
    for (let j = 0; j < stage.count; j++) {
      const at = stage.first + j;
      stageOf[at] = s;
      fromMm[at] = stage.kind === 'egg' ? 0 : lengthAt(species, share + (width * j) / stage.count);
      toMm[at] = stage.kind === 'egg' ? 0 : lengthAt(species, share + (width * (j + 1)) / stage.count);
    }
    share += width;
  });
  const youngAreFed = species.stages.some(({ fed }) => fed);
  const isHead = ({ kind }: ChainStage) => (youngAreFed ? kind !== 'egg' : kind === 'adult');
  const adultMm = species.adultLengthMm.value;
  const footprint = fromMm.map((from, j) => Math.min(1, (from + (toMm[j] as number)) / 2 / adultMm) ** 2);
  return { stageOf, fromMm, toMm, footprint, firstHead: stages.find(isHead)?.first ?? size };
}

/** Body length by share of the time from hatch to adult: straight in the logarithm between the published points. */
function lengthAt(species: PreySpecies, share: number): Mm {
  const points = species.lengthByDevelopment.value;
  return Math.exp(valueAt({ x: points.map(([x]) => x), y: points.map(([, mm]) => Math.log(mm)) }, share));
}
