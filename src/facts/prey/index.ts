/** The prey species the product knows, and their look-up by code. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { achetaDomesticus } from './acheta-domesticus.ts';
import { blaberusDiscoidalis } from './blaberus-discoidalis.ts';
import { blapticaDubia } from './blaptica-dubia.ts';
import { bombyxMori } from './bombyx-mori.ts';
import { callosobruchusMaculatus } from './callosobruchus-maculatus.ts';
import { drosophilaHydei } from './drosophila-hydei.ts';
import { drosophilaMelanogaster } from './drosophila-melanogaster.ts';
import { folsomiaCandida } from './folsomia-candida.ts';
import { galleriaMellonella } from './galleria-mellonella.ts';
import { gryllodesSigillatus } from './gryllodes-sigillatus.ts';
import { gryllusBimaculatus } from './gryllus-bimaculatus.ts';
import { nauphoetaCinerea } from './nauphoeta-cinerea.ts';
import { periplanetaLateralis } from './periplaneta-lateralis.ts';
import { tenebrioMolitor } from './tenebrio-molitor.ts';
import { triboliumCastaneum } from './tribolium-castaneum.ts';
import { triboliumConfusum } from './tribolium-confusum.ts';
import { zophobasMorio } from './zophobas-morio.ts';

export const preySpecies: readonly PreySpecies[] = [
  achetaDomesticus,
  gryllodesSigillatus,
  gryllusBimaculatus,
  blapticaDubia,
  periplanetaLateralis,
  nauphoetaCinerea,
  blaberusDiscoidalis,
  drosophilaMelanogaster,
  drosophilaHydei,
  folsomiaCandida,
  tenebrioMolitor,
  zophobasMorio,
  triboliumConfusum,
  triboliumCastaneum,
  callosobruchusMaculatus,
  galleriaMellonella,
  bombyxMori,
];

export const speciesByCode: ReadonlyMap<string, PreySpecies> = new Map(
  preySpecies.map((species) => [species.code, species]),
);
