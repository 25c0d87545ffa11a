/** A colony start in words: what is begun, what it gives, and when. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { ColonyStart, Starters } from '../../src/husbandry/colony/index.ts';
import type { PreySpecies } from '../../src/husbandry/prey/index.ts';
import { DAYS_PER_WEEK, PERCENT } from '../../src/husbandry/units.ts';
import { plural } from '../../src/husbandry/words.ts';
import { counted, listed, roundly, writtenDay } from '../format.ts';
import { sizedPrey } from '../names.ts';
import type { ColonyTold } from './colony-answer.tsx';

/** '1,260', with no more figures than a guess has. */
export const about = (n: number): string => roundly(n).toLocaleString('en-GB');

/** '96 of 100'; never none and never all. */
export const ofHundred = (chance: number): string =>
  `${Math.min(PERCENT - 1, Math.max(1, Math.round(chance * PERCENT)))} of ${PERCENT}`;

export const sizeName = (
  { sizeClasses }: Pick<PreySpecies, 'sizeClasses'>,
  { fromMm, toMm }: { fromMm: number; toMm: number },
): string => sizeClasses.value.find((size) => size.fromMm === fromMm && size.toMm === toMm)?.name ?? '';

/** '60 medium and 20 small dubia roaches', '60 house crickets (1/4 in) and 20 house crickets (1/2 in)'. */
function wantedWords(species: PreySpecies, { wanted }: ColonyStart): string {
  const prey = plural(species.commonName);
  const sizes = wanted.map((size) => ({ ...size, name: sizeName(species, size) }));
  if (sizes.some(({ name }) => sizedPrey(name, prey) !== `${name} ${prey}`))
    return listed(sizes.map(({ heads, name }) => `${heads} ${sizedPrey(name, prey)}`));
  return `${listed(sizes.map(({ heads, name }) => `${heads} ${name}`))} ${prey}`;
}

/** '10 females and 4 males', '60 small young'. */
function startersWords(species: PreySpecies, starters: Starters): string {
  if (starters.kind === 'adults') return breedersWords(starters);
  return `${starters.heads} ${sizedPrey(sizeName(species, starters), 'young')}`;
}

export const breedersWords = ({ females, males }: { females: number; males: number }): string =>
  males === 0 ? counted(females, 'female') : `${counted(females, 'female')} and ${counted(males, 'male')}`;

/** Day on which it is started: as late as the wanted day allows, but not before today. */
function startDay({ start, readyOn, today }: Dated): DayNumber {
  if (readyOn === null || start.lastsFrom === null) return today;
  return Math.max(today, readyOn - start.lastsFrom * DAYS_PER_WEEK);
}
type Dated = Pick<ColonyTold, 'start' | 'readyOn' | 'today'>;

export const dayOfWeek = (told: Dated, week: number): DayNumber => startDay(told) + week * DAYS_PER_WEEK;

/** 'Start 10 females and 4 males today to take 60 medium dubia roaches a week from about 20 June 2027'. */
export function colonyHeadline(told: ColonyTold): string {
  const { start, question, species, readyOn, today } = told;
  const begun = startersWords(species, question.starters);
  const wanted = `${wantedWords(species, start)} a week`;
  if (start.lastsFrom === null)
    return `Begun with ${begun}, a colony does not come to give ${wanted} for good within ${told.lasts.years} years`;
  const from = writtenDay(dayOfWeek(told, start.lastsFrom));
  if (readyOn !== null && dayOfWeek(told, start.lastsFrom) > readyOn)
    return `Too late for ${writtenDay(readyOn)}: ${begun} started today give ${wanted} from about ${from}`;
  const begin = startDay(told);
  const when = begin === today ? 'today' : `by ${writtenDay(begin)}`;
  return `Start ${begun} ${when} to take ${wanted} from about ${from}`;
}

/** 'Until then buy about 1,900.', and what may be taken before. */
export function bridgeWords({ start, lasts }: ColonyTold): string {
  const { fullHarvest, firstHarvest, lastsFrom, bridge } = start;
  if (bridge < 1) return 'Nothing has to be bought meanwhile.';
  const until = lastsFrom === null ? `In those ${lasts.years} years` : 'Until then';
  const size = start.wanted.length === 1 ? '' : ' of all sizes together';
  return `${until} buy about ${about(bridge)}${size}. ${earlyWords({ fullHarvest, firstHarvest, lastsFrom })}`;
}

/** What comes before the harvest lasts: breeders of one age lay, age and die together. */
function earlyWords({
  firstHarvest,
  fullHarvest,
  lastsFrom,
}: Pick<ColonyTold['start'], 'firstHarvest' | 'fullHarvest' | 'lastsFrom'>): string {
  if (firstHarvest === null || firstHarvest === lastsFrom) return '';
  if (fullHarvest === null || fullHarvest === lastsFrom)
    return `The first can be taken in week ${firstHarvest}.`;
  return `All of them are there in week ${fullHarvest} for the first time, but then fewer again for a while: breeders of one age grow old together.`;
}
