/** The codes under which the demo room's animals and bins were written down, by name. */
import type { BinName, CupName } from './larder.ts';

export interface Codes {
  readonly animals: ReadonlyMap<string, string>;
  readonly bins: ReadonlyMap<BinName | CupName, string>;
}

/** The code of a name in the tables; they are wrong when it is missing. */
export function codeOf<N extends string>(codes: ReadonlyMap<N, string>, name: N): string {
  const code = codes.get(name);
  if (code === undefined) throw new Error(`The demo room has no "${name}".`);
  return code;
}
