/** The prey tables keep their own promises: shares, curves, lengths, classes. */
import { describe, expect, it } from 'vitest';
import { preySpecies, speciesByCode } from '../../../src/facts/prey/index.ts';
import type { DevelopmentSpan, PreySpecies } from '../../../src/husbandry/prey/species.ts';

const sharesOf = (species: PreySpecies, span: DevelopmentSpan): number =>
  species.stages.filter((stage) => stage.span === span.code).reduce((sum, stage) => sum + stage.share, 0);

const liveBearing = ['blaptica-dubia', 'nauphoeta-cinerea', 'blaberus-discoidalis'];

const increases = (values: readonly number[]): boolean =>
  values.every((value, i) => i === 0 || value > values[i - 1]!);

it('knows seventeen species, each under its own code', () => {
  expect(preySpecies).toHaveLength(17);
  expect(speciesByCode.size).toBe(17);
});

it('writes every alias in lower case and gives none to two species', () => {
  const aliases = preySpecies.flatMap((species) => species.aliases);
  expect(aliases.filter((alias) => alias !== alias.toLowerCase())).toEqual([]);
  expect(new Set(aliases).size).toBe(aliases.length);
});

describe.each(preySpecies)('$name', (species) => {
  it('has shares of each span that sum to 1, and no stage without a span', () => {
    for (const span of species.spans) expect(sharesOf(species, span)).toBeCloseTo(1, 12);
    const codes = species.spans.map((span) => span.code);
    expect(species.stages.filter((stage) => !codes.includes(stage.span))).toEqual([]);
  });

  it('has rates that increase up to the optimum and limits in order', () => {
    for (const span of species.spans) {
      const below = span.points.value.filter((point) => point.tempC <= span.optimumC.value);
      expect(increases(span.points.value.map((point) => point.tempC))).toBe(true);
      expect(increases([0, ...below.map((point) => 1 / point.days)])).toBe(true);
      expect(below.every((point) => point.tempC > span.lowerThresholdC.value)).toBe(true);
      expect(span.lowerThresholdC.value).toBeLessThan(span.optimumC.value);
      expect(span.optimumC.value).toBeLessThan(span.upperStopC.value);
    }
  });

  it('puts the points near its own degree-day line: within 40 % up to the optimum', () => {
    for (const span of species.spans)
      for (const point of span.points.value.filter(({ tempC }) => tempC <= span.optimumC.value)) {
        const line = span.degreeDays.value / (point.tempC - span.lowerThresholdC.value);
        expect(point.days / line).toBeGreaterThan(1 / 1.4);
        expect(point.days / line).toBeLessThan(1.4);
      }
  });

  it('has survival between 0 and 1 at rising temperatures in every stage', () => {
    for (const stage of species.stages) {
      const points = stage.survival.value;
      expect(points.length).toBeGreaterThan(0);
      expect(points.filter(({ share }) => share <= 0 || share > 1)).toEqual([]);
      expect(increases(points.map(({ tempC }) => tempC))).toBe(true);
    }
  });

  it('grows from share 0 to share 1, always longer', () => {
    const curve = species.lengthByDevelopment.value;
    expect(curve[0]![0]).toBe(0);
    expect(curve.at(-1)![0]).toBe(1);
    expect(increases(curve.map(([share]) => share))).toBe(true);
    expect(increases(curve.map(([, mm]) => mm))).toBe(true);
  });

  it('has size classes in order that reach the lengths it is fed at', () => {
    const classes = species.sizeClasses.value;
    expect(classes.filter(({ fromMm, toMm }) => fromMm >= toMm)).toEqual([]);
    expect(increases(classes.map(({ fromMm }) => fromMm))).toBe(true);
    if (species.adult.fed)
      expect(
        classes.some(
          ({ fromMm, toMm }) => fromMm <= species.adultLengthMm.value && species.adultLengthMm.value <= toMm,
        ),
      ).toBe(true);
  });

  it('ends the growth of crickets and roaches at the adult length', () => {
    if (species.form === 'cricket' || species.form === 'roach')
      expect(species.lengthByDevelopment.value.at(-1)![1]).toBeCloseTo(species.adultLengthMm.value, 9);
  });

  it('lists eggs first, and no egg for species that bear live young', () => {
    const kinds = species.stages.map((stage) => stage.kind);
    expect(kinds.lastIndexOf('egg')).toBeLessThanOrEqual(0);
    expect(kinds.includes('egg')).toBe(!liveBearing.includes(species.code));
  });

  it('feeds at least one stage', () => {
    expect(species.adult.fed || species.stages.some((stage) => stage.fed)).toBe(true);
  });

  it('lays in broods what it lays by the day: the young of a brood over the days between broods', () => {
    const { brood, perFemaleDay } = species.laying ?? {};
    if (!brood || !perFemaleDay) return;
    const there = perFemaleDay.value.find(({ tempC }) => tempC === brood.tempC);
    expect(there?.perDay).toBeCloseTo(brood.young.value / brood.intervalDays.value, 9);
  });

  it('lays by an age curve with a mean of 1, at rising shares of its laying life', () => {
    const byAge = species.laying?.byAge?.value;
    if (!byAge) return;
    expect(increases(byAge.map(([share]) => share))).toBe(true);
    expect(byAge.reduce((sum, [, rate]) => sum + rate, 0) / byAge.length).toBeCloseTo(1, 2);
  });

  it('has room for some, and keeps cool within limits that do not harm', () => {
    const { crowding, coldStore } = species;
    expect((crowding?.headsPerUnit.value ?? 1) > 0 && (crowding?.deathsPerDayOver.value ?? 0) >= 0).toBe(
      true,
    );
    expect((crowding?.eaten ?? []).every(({ perEater }) => perEater.value > 0)).toBe(true);
    if (!coldStore) return;
    expect(coldStore.harmBelowC.value).toBeLessThan(coldStore.fromC.value);
    expect(coldStore.fromC.value).toBeLessThan(coldStore.toC.value);
  });

  it('gives its cautions as whole sentences', () => {
    const texts = (species.cautions ?? []).map(({ text }) => text.value);
    expect(texts.filter((text) => !/^[A-Z].*\.$/.test(text))).toEqual([]);
  });
});

it('breeds by broods or egg cases where four roaches and the springtail do', () => {
  expect(preySpecies.filter(({ laying }) => laying?.brood).map(({ code }) => code)).toEqual([
    'blaptica-dubia',
    'periplaneta-lateralis',
    'nauphoeta-cinerea',
    'blaberus-discoidalis',
    'folsomia-candida',
  ]);
});

it('never cools superworms, and lets them pupate only when alone', () => {
  const zophobas = speciesByCode.get('zophobas-morio')!;
  expect(zophobas.coldStore).toBeUndefined();
  expect(zophobas.pupatesAlone).toBe(true);
  expect(preySpecies.filter(({ coldStore }) => coldStore).map(({ code }) => code)).toEqual([
    'tenebrio-molitor',
    'galleria-mellonella',
  ]);
});

it('turns the coefficients of the flour model, per beetle in 20 grams, to grams', () => {
  for (const code of ['tribolium-castaneum', 'tribolium-confusum'])
    expect(speciesByCode.get(code)!.crowding!.eaten!.map(({ perEater }) => perEater.value / 20)).toEqual([
      expect.closeTo(0.0093, 12),
      expect.closeTo(0.011, 12),
      expect.closeTo(0.0178, 12),
    ]);
});
