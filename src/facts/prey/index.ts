/** The prey species the product knows, and their look-up by code. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { achetaDomesticus } from './acheta-domesticus.ts';
import { blapticaDubia } from './blaptica-dubia.ts';
import { drosophilaHydei } from './drosophila-hydei.ts';
import { drosophilaMelanogaster } from './drosophila-melanogaster.ts';
import { galleriaMellonella } from './galleria-mellonella.ts';
import { gryllodesSigillatus } from './gryllodes-sigillatus.ts';
import { gryllusBimaculatus } from './gryllus-bimaculatus.ts';
import { periplanetaLateralis } from './periplaneta-lateralis.ts';
import { tenebrioMolitor } from './tenebrio-molitor.ts';
import { triboliumConfusum } from './tribolium-confusum.ts';

export const preySpecies: readonly PreySpecies[] = [
  achetaDomesticus,
  gryllodesSigillatus,
  gryllusBimaculatus,
  blapticaDubia,
  periplanetaLateralis,
  drosophilaMelanogaster,
  drosophilaHydei,
  tenebrioMolitor,
  triboliumConfusum,
  galleriaMellonella,
];

export const speciesByCode: ReadonlyMap<string, PreySpecies> = new Map(
  preySpecies.map((species) => [species.code, species]),
);
