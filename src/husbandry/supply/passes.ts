/** The passes over the larder in which a group is served: how prey is given, and whether shares of species are capped. */

/** 'whole': alive or killed, in no pass. */
export type Preparation = 'alive' | 'killed' | 'cut' | 'whole';

export interface Pass {
  readonly preparation: Preparation;
  readonly capped: boolean;
}

export const PASSES: readonly Pass[] = [
  { preparation: 'alive', capped: true },
  { preparation: 'killed', capped: true },
  { preparation: 'alive', capped: false },
  { preparation: 'killed', capped: false },
  { preparation: 'cut', capped: false },
];
