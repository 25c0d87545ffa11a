/** How many heads a surface carries, taken from the one species where survival was measured by density. */
import type { Crowding } from '../../husbandry/prey/index.ts';
import { memory, published } from '../sourced.ts';

/** House crickets per dm2 at which survival was seen to fall; their grown bodies then cover 0.47 of the surface. */
const ACHETA_PER_DM2 = 47;
const ACHETA_BODY_MM2 = 100;

/**
 * Deaths per day for each capacity above the first: survival 31 % lower at 0.47 and 45 % lower at 0.93 crickets per
 * square centimetre, over 41 days to adult: ln(0.69/0.55) / 41 / (0.93/0.47 - 1).
 */
const DEATHS_PER_DAY_OVER = 0.0057;

export const achetaCrowding: Crowding = {
  by: 'area',
  headsPerUnit: {
    ...published(
      ACHETA_PER_DM2,
      'grown crickets per dm2 of surface',
      'mahavidanage2023',
      'derived: survival fell at 0.47 and at 0.93 crickets per square centimetre',
    ),
    why: 'the least density at which losses were seen; egg cartons count as surface',
    others: [
      { said: 'up to 93 per dm2 can be recommended', source: 'mahavidanage2023' },
      { said: '76 litres for 1000 adults', source: 'carePages' },
    ],
  },
  deathsPerDayOver: published(
    DEATHS_PER_DAY_OVER,
    'per day and capacity above the first',
    'mahavidanage2023',
    'derived: survival 31 % and 45 % lower at the two densities, over 41 days (the days are our own)',
  ),
};

/** As many grown heads per dm2 as cover the surface as house crickets do at their limit. */
export const crowdedAsCrickets = (adultMm: number, widthPerLength: number): Crowding => ({
  by: 'area',
  headsPerUnit: memory(
    Math.round((ACHETA_PER_DM2 * ACHETA_BODY_MM2) / (adultMm ** 2 * widthPerLength)),
    'grown heads per dm2 of surface',
    'our own starting value: bodies cover as much of the surface as those of house crickets at 0.47 per square centimetre; egg cartons count as surface',
  ),
  deathsPerDayOver: memory(
    DEATHS_PER_DAY_OVER,
    'per day and capacity above the first',
    'taken from the house cricket',
  ),
});
