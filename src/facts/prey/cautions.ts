/** Cautions that hold for more than one prey species. */
import type { PreyCaution } from '../../husbandry/prey/index.ts';
import { memory, practice, published } from '../sourced.ts';

const SENTENCE = 'sentence';

export const cricketAllergy: PreyCaution = {
  about: 'allergy',
  text: published(
    'Dust, skins and frass of crickets can bring on allergy; most reported cases are people who work with them. Wear a mask for cleaning out.',
    SENTENCE,
    'pener2016',
  ),
};

export const larvaAllergy: PreyCaution = {
  about: 'allergy',
  text: published(
    'Dust of farmed insects can bring on allergy: 31 % of the employees tested had a positive skin test. Wear a mask for cleaning out.',
    SENTENCE,
    'ganseman2023',
    'derived: 30.7 %, of few people; 60 % of 15 exposed reported symptoms of the airways',
  ),
};

export const roachAllergy: PreyCaution = {
  about: 'allergy',
  text: practice(
    'Frass and skins of roaches are known to bring on allergy. Wear a mask for cleaning out.',
    SENTENCE,
  ),
};

export const cricketBites: PreyCaution = {
  about: 'bites',
  text: practice('Gnaws at an animal that moults: take out what is not eaten.', SENTENCE),
};

export const carriesVirus: PreyCaution = {
  about: 'virus',
  text: published(
    'Carries the densovirus that kills house crickets without dying of it: keep tools and bins apart from theirs.',
    SENTENCE,
    'weissman2012',
  ),
};

export const notWildCaught: PreyCaution = {
  about: 'wild-caught',
  text: practice('Never take it from outdoors: wild prey brings parasites, poisons and disease.', SENTENCE),
};

export const storedFoodPest: PreyCaution = {
  about: 'escape',
  text: practice(
    'A pest of stored food: keep it behind a lid that holds, far from the kitchen, and freeze what goes out.',
    SENTENCE,
  ),
};

export const climbsOut: PreyCaution = {
  about: 'escape',
  text: memory('Climbs smooth walls: a tight lid or a barrier at the rim is needed.', SENTENCE),
};
