/** Columns of a programme as they are added one after the other. */
import type { LinearProgramme, Row } from '../../maths/linear-programme.ts';

interface Column {
  /** What one unit adds to the cost; default 0. */
  readonly worth?: number;
  readonly least?: number;
  /** Default: no bound. */
  readonly most?: number;
  readonly whole?: boolean;
}

/** Grows while a programme is written; each method answers with the number of the first column added. */
export class Columns {
  readonly #worth: number[] = [];
  readonly #least: number[] = [];
  readonly #most: number[] = [];
  readonly #whole: number[] = [];

  one({ worth = 0, least = 0, most = Number.POSITIVE_INFINITY, whole = false }: Column): number {
    this.#least.push(least);
    this.#most.push(most);
    this.#whole.push(Number(whole));
    return this.#worth.push(worth) - 1;
  }

  /** So many alike. */
  many(count: number, column: Column): number {
    const first = this.#worth.length;
    for (let i = 0; i < count; i++) this.one(column);
    return first;
  }

  /** One a worth; `most` by place. */
  each(worths: readonly number[], { most }: { most?: ArrayLike<number> } = {}): number {
    const first = this.#worth.length;
    worths.forEach((worth, i) => {
      this.one({ worth, most: most?.[i] ?? Number.POSITIVE_INFINITY });
    });
    return first;
  }

  programme(rows: readonly Row[]): LinearProgramme {
    return {
      sense: 'least',
      worth: Float64Array.from(this.#worth),
      least: Float64Array.from(this.#least),
      most: Float64Array.from(this.#most),
      whole: Uint8Array.from(this.#whole),
      rows,
    };
  }
}
