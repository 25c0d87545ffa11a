/** Words by which keepers name a whole group of animals or a form of prey: tables. */
import type { KindGroup } from '../../husbandry/animals/index.ts';
import type { PreyForm } from '../../husbandry/prey-form.ts';

/** In plain singular words; longer phrases stand before words they hold. */
export const GROUP_WORDS: readonly (readonly [KindGroup, readonly string[]])[] = [
  ['jumping spider', ['jumping spider', 'jumper', 'springspinne', 'araignee sauteuse', 'arana saltadora']],
  ['whip spider', ['whip spider', 'amblypygid', 'amblypygi', 'geisselspinne', 'tailless whip scorpion']],
  ['tarantula', ['tarantula', 'vogelspinne', 'mygale', 'bird spider']],
  ['scorpion', ['scorpion', 'skorpion', 'escorpion']],
  ['mantid', ['mantid', 'manti', 'mantis', 'praying mantis', 'gottesanbeterin', 'mante']],
  ['centipede', ['centipede', 'pede', 'hundertfusser', 'scolopendre', 'ciempi', 'ciempies']],
  ['frog', ['frog', 'toad', 'frosch', 'grenouille', 'rana']],
  ['lizard', ['lizard', 'gecko', 'skink', 'echse', 'lezard', 'lagarto']],
  ['true spider', ['true spider', 'spider', 'spinne', 'araignee', 'arana']],
];

export const HABIT_WORDS: readonly string[] = [
  'arboreal',
  'terrestrial',
  'fossorial',
  'burrowing',
  'desert',
  'forest',
];

export const FORM_WORDS: readonly (readonly [PreyForm, readonly string[]])[] = [
  ['cricket', ['cricket', 'grille', 'grillen', 'grillon', 'grillo']],
  ['roach', ['roach', 'cockroach', 'schabe', 'schaben', 'blatte', 'cucaracha']],
  ['fly', ['fruit fly', 'fruitfly', 'ff', 'fly', 'fliege', 'fliegen', 'mouche', 'mosca']],
  ['superworm', ['superworm', 'super worm', 'riesenmehlwurm', 'riesenmehlwurmer', 'zophoba']],
  ['mealworm', ['mealworm', 'meal worm', 'mehlwurm', 'mehlwurmer', 'ver de farine', 'gusano de la harina']],
  ['bean beetle', ['bean beetle', 'bean weevil', 'bohnenkafer']],
  ['flour beetle', ['flour beetle', 'beetle']],
  ['waxworm', ['waxworm', 'wax worm', 'wachsmotte', 'wachsmaden', 'teigne']],
  ['springtail', ['springtail', 'springschwanz', 'springschwanze', 'collembole', 'colembolo']],
  ['silkworm', ['silkworm', 'silk worm', 'seidenraupe', 'seidenraupen', 'ver a soie', 'gusano de seda']],
];

/** Where a form's plain word is most often one species: assumed, and said. */
export const USUAL_SPECIES: Readonly<Partial<Record<PreyForm, string>>> = { cricket: 'acheta domesticus' };
