/** Whole numbers that are all as likely. */

/** Variance of one of n successive whole numbers, each as likely: (n^2 - 1)/12. */
export const evenVariance = (n: number): number => (n * n - 1) / 12;
