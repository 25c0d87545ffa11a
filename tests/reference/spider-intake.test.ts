/**
 * What spiders need, reckoned from metabolism and growth, against the needs of the rules.
 * Resting rates at 25 C of Aphonopelma anax (Shillington 2005, as held in AnimalTraits): female 13.19 g, 966.2 uW;
 * male 7.78 g, 1268.1 uW. A gram of cricket holds 5.87 kJ (recalled from Finke 2002) and 60 % of it is extracted (ours).
 * A wolf spider eats half of the mass it kills (Framenau et al. 2000); growth efficiency is 0.40-0.58 (Hurd 1991).
 */
import { describe, expect, it } from 'vitest';
import { kindsByCode } from '../../src/facts/kinds/index.ts';
import type { LifeStage, StageRule } from '../../src/husbandry/animals/kind.ts';

const WEEK_SECONDS = 7 * 24 * 3600;
const FEMALE = { massG: 13.19, microwatt: 966.2 };
const MALE = { massG: 7.78, microwatt: 1268.1 };
const JOULE_PER_GRAM = 5870;
const EXTRACTED = 0.6;
const EATEN_OF_KILLED = 0.5;
const EFFICIENCY = [0.4, 0.58] as const;

const rule = (stage: LifeStage, code = 'tarantula'): StageRule =>
  kindsByCode.get(code)!.stages.find((candidate) => candidate.stage === stage)!;

/** Killed a week over own mass to grow in mass by `factor` in `days`: (factor - 1) / days x 7 / efficiency / eaten. */
const killedPerWeek = (factor: number, days: number, efficiency: number): number =>
  (((factor - 1) / days) * 7) / efficiency / EATEN_OF_KILLED;

describe('maintenance of an adult tarantula', () => {
  const joulePerWeek = FEMALE.microwatt * 1e-6 * WEEK_SECONDS;
  const gramPerWeek = joulePerWeek / JOULE_PER_GRAM / EXTRACTED;

  it('is 584 J, or 0.166 g of cricket, a week for a female of 13.19 g', () => {
    expect(joulePerWeek).toBeCloseTo(584, 0);
    expect(gramPerWeek).toBeCloseTo(0.166, 3);
  });

  it('is 0.0126 of her mass, inside the weekly need of an adult', () => {
    const share = gramPerWeek / FEMALE.massG;
    const [least, most] = rule('adult').weeklyNeed.value;
    expect(share).toBeCloseTo(0.0126, 4);
    expect(least < share && share < most).toBe(true);
  });

  it('is 2.2 times as much per gram in a male, which bounds the need of mature males', () => {
    const ratio = MALE.microwatt / MALE.massG / (FEMALE.microwatt / FEMALE.massG);
    expect(ratio).toBeCloseTo(2.2, 1);
    expect(rule('mature male').weeklyNeed.value[1] / rule('adult').weeklyNeed.value[1]).toBeCloseTo(ratio, 1);
  });
});

describe('growth of a spiderling', () => {
  const massFactor = rule('young').moult!.lengthFactor.value ** 3;

  it('multiplies its mass by 2.63 at a moult', () => {
    expect(massFactor).toBeCloseTo(2.63, 2);
  });

  it('takes 0.65 to 0.95 of its mass a week to moult every 60 days, inside its weekly need', () => {
    const [hungry, thrifty] = EFFICIENCY.map((efficiency) => killedPerWeek(massFactor, 60, efficiency));
    const [least, most] = rule('young').weeklyNeed.value;
    expect(hungry).toBeCloseTo(0.95, 2);
    expect(thrifty).toBeCloseTo(0.655, 2);
    expect(least < thrifty! && hungry! < most).toBe(true);
  });

  it('is implied by the schedule at 117 days a moult, about twice what the rule of a middling tarantula says', () => {
    const { mealItems, intervalDays, window, moult } = rule('young');
    const itemShare = (0.055 / 0.1) * window.value.ideal ** 3;
    const weekly =
      ((mealItems.value[0] + mealItems.value[1]) / (intervalDays.value[0] + intervalDays.value[1])) *
      itemShare *
      7;
    const gained = weekly * EATEN_OF_KILLED * ((EFFICIENCY[0] + EFFICIENCY[1]) / 2);
    const impliedDays = ((massFactor - 1) / gained) * 7;
    expect(impliedDays).toBeCloseTo(117, 0);
    expect(impliedDays / moult!.meanDays.value).toBeCloseTo(1.96, 2);
  });
});
