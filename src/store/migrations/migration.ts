/** A step of the schema: its number and the statements that lead to it; a released step never changes. */

export interface Migration {
  readonly version: number;
  readonly statements: readonly string[];
}
