/** Keeps what was said of a thing apart from what was left unsaid. */

type Said<T> = { [Name in keyof T]: Exclude<T[Name], undefined> };

/** Only the fields that were said. */
export const said = <T extends object>(fields: T): Partial<Said<T>> =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Partial<Said<T>>;
