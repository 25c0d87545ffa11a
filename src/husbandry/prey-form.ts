/** Forms of prey, as keepers tell them apart; a stage of an animal accepts some of them. */

export type PreyForm =
  | 'cricket'
  | 'roach'
  | 'fly'
  | 'mealworm'
  | 'flour beetle'
  | 'waxworm'
  | 'superworm'
  | 'springtail'
  | 'bean beetle'
  | 'silkworm';
