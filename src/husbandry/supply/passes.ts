/** The passes over the larder in which a group is served: how prey is given, and whether shares of species are capped. */

/** 'thawed': out of frozen stock, dead already; 'whole': alive, thawed or killed, in no pass. */
export type Preparation = 'alive' | 'thawed' | 'killed' | 'cut' | 'whole';

export interface Pass {
  readonly preparation: Preparation;
  readonly capped: boolean;
}

export const PASSES: readonly Pass[] = [
  { preparation: 'alive', capped: true },
  { preparation: 'thawed', capped: true },
  { preparation: 'killed', capped: true },
  { preparation: 'alive', capped: false },
  { preparation: 'thawed', capped: false },
  { preparation: 'killed', capped: false },
  { preparation: 'cut', capped: false },
];
