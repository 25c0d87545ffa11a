/** The project's own source files, read as text: for tests that look at the shape of the tree. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface SourceFile {
  /** Path from the project root, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

/** Every .ts and .tsx file below a folder. */
export function sourceFiles(folder: string): SourceFile[] {
  return readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)))
    .sort()
    .map((path) => ({ path, text: readFileSync(join(ROOT, path), 'utf8') }));
}

/** The text without comments, strings and templates, line breaks kept: what is left is code. */
export function codeOnly(text: string): string {
  const blank = (found: string) => found.replace(/[^\n]/g, ' ');
  return text.replace(
    /\/\*[\s\S]*?\*\/|\/\/[^\n]*|'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`/g,
    blank,
  );
}

/** Modules a file imports or re-exports: relative ones as paths from the root, others by name. */
export function importsOf({ path, text }: SourceFile): string[] {
  const found = [
    ...text.matchAll(/(?:^|\n)\s*(?:import|export)\s(?:[^'";]*?\sfrom\s)?'([^']+)'/g),
    ...text.matchAll(/\bimport\('([^']+)'\)/g),
  ];
  return found.map((match) => {
    const name = match[1] as string;
    return name.startsWith('.') ? join(path, '..', name) : name;
  });
}
