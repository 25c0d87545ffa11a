/** Reads the words after a command: options by name, the rest in order; each wrong one is a sentence. */
import { parseArgs } from 'node:util';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';

/** Options of a command: a switch, a value, or a value that may be said several times. */
export type Options = Readonly<Record<string, 'switch' | 'value' | 'values'>>;

export interface Words {
  readonly switches: ReadonlySet<string>;
  /** Values by option, in the order said. */
  readonly values: ReadonlyMap<string, readonly string[]>;
  readonly rest: readonly string[];
}

/** The words sorted out, or the first that is not understood. */
export function readWords(words: readonly string[], options: Options): Result<Words> {
  const { tokens } = parseArgs({
    args: [...words],
    options: Object.fromEntries(
      Object.entries(options).map(([name, kind]) => [
        name,
        { type: kind === 'switch' ? 'boolean' : 'string' } as const,
      ]),
    ),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const switches = new Set<string>();
  const values = new Map<string, string[]>();
  const rest: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') rest.push(token.value);
    if (token.kind !== 'option') continue;
    const kind = options[token.name];
    const before = values.get(token.name) ?? [];
    const wrong = wrongOption(token, { kind, known: Object.keys(options), said: before.length });
    if (wrong !== null) return err(problem('bad-option', wrong));
    if (kind === 'switch') switches.add(token.name);
    else values.set(token.name, [...before, token.value as string]);
  }
  return ok({ switches, values, rest });
}

interface OptionToken {
  readonly rawName: string;
  readonly value?: string | undefined;
}

interface Expected {
  readonly kind: Options[string] | undefined;
  readonly known: readonly string[];
  /** How often it was said before. */
  readonly said: number;
}

function wrongOption({ rawName, value }: OptionToken, { kind, known, said }: Expected): string | null {
  if (kind === undefined)
    return `"${rawName}" is not an option here; there are ${known.map((name) => `--${name}`).join(', ')}.`;
  if (kind === 'switch')
    return value === undefined ? null : `"${rawName}" takes no value, but is given "${value}".`;
  if (value === undefined || value === '') return `"${rawName}" needs a value after it.`;
  return kind === 'value' && said > 0 ? `"${rawName}" is said twice.` : null;
}

/** The value of an option that is said at most once. */
export const optionValue = ({ values }: Words, name: string): string | undefined => values.get(name)?.[0];
