/** What a prey species does at a temperature, in a sentence. */
import type { SpeciesSheet } from '../src/husbandry/larder/index.ts';
import { roundly, sentenceCase, spell } from './format.ts';

/** 'At 28 °C it grows up in about 50 days, and a colony with room doubles in 3 weeks.' */
export function preyLede({ tempC, hatchToAdult, growth }: SpeciesSheet): string {
  const { days } = hatchToAdult;
  if (days === null) return `At ${tempC} °C it never grows up.`;
  const grows = `at ${tempC} °C it grows up in about ${roundly(days)} days`;
  return `${sentenceCase(grows)}${growth === null ? '' : `, and a colony with room ${colonyWords(growth)}`}.`;
}

function colonyWords({ perWeek, doublingDays }: NonNullable<SpeciesSheet['growth']>): string {
  if (doublingDays !== null) return `doubles in ${spell(doublingDays)}`;
  return perWeek < 1 ? 'dwindles' : 'stays as it is';
}
