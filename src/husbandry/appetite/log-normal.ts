/** The log-normal distribution by mean and CV. */

/** Standard deviation of the log of a log-normal variable with this CV: sqrt(ln(1 + CV^2)). */
export const logSd = (cv: number): number => Math.sqrt(Math.log1p(cv * cv));
