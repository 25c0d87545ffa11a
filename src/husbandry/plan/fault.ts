/** What may be wrong with a plan. */
export interface Fault {
  readonly what: 'conservation' | 'whole' | 'bounds' | 'meals' | 'late' | 'room' | 'minimum' | 'budget';
  readonly sentence: string;
}

/** Beyond what rounding may leave. */
export const exceeds = (amount: number, most: number, slack: number): boolean =>
  amount > most + slack * (1 + Math.abs(most));
