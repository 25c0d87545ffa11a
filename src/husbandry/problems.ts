/** A Problem tells the keeper, in a sentence that quotes the value, what is wrong and what would be right. */

export interface Problem {
  /** Stable word for programs, such as 'size-out-of-range'. */
  readonly code: string;
  /** One or two sentences for the keeper. */
  readonly sentence: string;
  /** Name of the form field or column it belongs to. */
  readonly field?: string;
  /** Row of the file, counted as a spreadsheet does: the heading is row 1. */
  readonly row?: number;
}

export const problem = (code: string, sentence: string, field?: string): Problem =>
  field === undefined ? { code, sentence } : { code, sentence, field };
