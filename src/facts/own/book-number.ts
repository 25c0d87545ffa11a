/** A number of a prey species or of the method as the Book shows it: what it is, where it stands, and each figure of it. */
import type { Sourced } from '../../husbandry/sourced.ts';

/** What is measured: decides how a figure is written and within what bounds it must be. */
export type Measure =
  | 'share'
  | 'spread'
  | 'temperature'
  | 'degrees'
  | 'days'
  | 'weeks'
  | 'minutes'
  | 'degree-days'
  | 'laid'
  | 'heads'
  | 'boxes'
  | 'length'
  | 'mass'
  | 'times'
  | 'price'
  | 'deaths'
  | 'eaten';

/** Steps into plain data, outermost first. */
export type Path = readonly (string | number)[];

/** One figure that may be changed by itself. */
export interface Figure {
  /** Names it for good, also when the Book's lists grow: 'span.egg.points.25'. */
  readonly key: string;
  readonly path: Path;
  readonly value: number;
  /** Which of several it is: 'at 25 °C'; '' where there is one. */
  readonly at: string;
}

export interface BookNumber {
  readonly key: string;
  /** The group it belongs to: 'Growth: egg'. */
  readonly about: string;
  /** 'days measured'. */
  readonly what: string;
  readonly measure: Measure;
  readonly path: Path;
  /** Null for a plain share that has no source of its own. */
  readonly sourced: Sourced<unknown> | null;
  readonly figures: readonly Figure[];
  /** Narrower bounds than those of its measure, as typed. */
  readonly within?: readonly [least: number, most: number];
}

const step = (name: string | number): string =>
  `${name}`.replace(/[^A-Za-z0-9.]+/g, '-').replace(/^-|-$/g, '');

/** Names joined to a key that fits an id of a page. */
export const keyOf = (...names: readonly (string | number)[]): string => names.map(step).join('.');

interface Place {
  readonly about: string;
  /** First names of its keys. */
  readonly key: string;
  readonly path: Path;
}

/** A sourced list, and what of each item may be changed. */
interface Listed<T> {
  readonly what: string;
  readonly measure: Measure;
  /** Of one item: a word for the key, where the figure stands in it, and which it is in words. */
  readonly figures: (item: T) => readonly (readonly [key: string | number, field: keyof T, at: string])[];
}

/** A sourced record of one figure a key. */
interface Each<K extends string> {
  readonly what: string;
  readonly measure: Measure;
  /** Which one a key stands for: 'for fragile animals'. */
  readonly at: Readonly<Record<K, string>>;
}

/** Builders of the numbers that stand at one place of the data; what the data lack is left out. */
export const numbersAt = ({ about, key: first, path: base }: Place) => ({
  one: (name: string, what: string, measure: Measure, number: Sourced | undefined): readonly BookNumber[] => {
    if (number === undefined) return [];
    const key = keyOf(first, name);
    const path = [...base, name];
    const figures = [{ key, path: [...path, 'value'], value: number.value, at: '' }];
    return [{ key, about, what, measure, path, sourced: number, figures }];
  },
  each: <K extends string>(
    name: string,
    { what, measure, at }: Each<K>,
    number: Sourced<Readonly<Record<K, number>>>,
  ): readonly BookNumber[] => {
    const key = keyOf(first, name);
    const path = [...base, name];
    const figures = (Object.keys(at) as K[]).map((which) => ({
      key: keyOf(key, which),
      path: [...path, 'value', which],
      value: number.value[which],
      at: at[which],
    }));
    return [{ key, about, what, measure, path, sourced: number, figures }];
  },
  list: <T extends object>(
    name: string,
    { what, measure, figures: of }: Listed<T>,
    number: Sourced<readonly T[]> | undefined,
  ): readonly BookNumber[] => {
    if (number === undefined) return [];
    const key = keyOf(first, name);
    const path = [...base, name];
    const figures = number.value.flatMap((item, i) =>
      of(item).map(([word, field, at]) => ({
        key: keyOf(key, word),
        path: [...path, 'value', i, field as string | number],
        value: item[field] as number,
        at,
      })),
    );
    return [{ key, about, what, measure, path, sourced: number, figures }];
  },
});
