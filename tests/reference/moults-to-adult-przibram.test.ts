/**
 * Moults from one span to another: n = ln(end / start) / ln(factor), tolerance 0.1. Przibram's factor 1.26 (mass
 * doubles; Francke and Sissom 1984) and 1.38 of the tarantula Grammostola vachoni (Zool. Anz. 293:37-45, 2021).
 */
import { describe, expect, it } from 'vitest';
import { kinds, kindsByCode } from '../../src/facts/kinds/index.ts';

const moults = (fromMm: number, toMm: number, factor: number): number =>
  Math.log(toMm / fromMm) / Math.log(factor);

const factorOf = (code: string, stage: string): number =>
  kindsByCode.get(code)!.stages.find((rule) => rule.stage === stage)!.moult!.lengthFactor.value;

describe('moults to adult', () => {
  it('takes 16.1 moults from 6 to 250 mm, and 10.5 from 25 to 280 mm, by the rule of Przibram', () => {
    const przibram = factorOf('phidippus-regius', 'juvenile');
    expect(Math.abs(moults(6, 250, przibram) - 16.1)).toBeLessThan(0.1);
    expect(Math.abs(moults(25, 280, przibram) - 10.5)).toBeLessThan(0.1);
  });

  it('takes 11.6 moults from 6 to 250 mm, and 7.5 from 25 to 280 mm, by the factor of tarantulas', () => {
    const tarantula = factorOf('lasiodora-parahybana', 'young');
    expect(Math.abs(moults(6, 250, tarantula) - 11.6)).toBeLessThan(0.1);
    expect(Math.abs(moults(25, 280, tarantula) - 7.5)).toBeLessThan(0.1);
  });

  it('doubles the mass at a moult by the rule of Przibram, within 1 %', () => {
    expect(Math.abs(factorOf('phidippus-regius', 'young') ** 3 / 2 - 1)).toBeLessThan(0.01);
  });

  it('grows a tarantula up in 5 to 11 moults, as many as Grammostola vachoni took at most', () => {
    const counts = kinds
      .filter(({ group }) => group === 'tarantula')
      .map(({ adultGaugeMm, firstFeedingGaugeMm, code }) =>
        moults(firstFeedingGaugeMm.value[0], 0.85 * adultGaugeMm.value[0], factorOf(code, 'young')),
      );
    expect(Math.min(...counts)).toBeGreaterThan(5);
    expect(Math.max(...counts)).toBeLessThan(11);
  });
});
