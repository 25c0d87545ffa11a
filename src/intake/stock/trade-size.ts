/** Body lengths of prey from a size cell: a trade word, a length, or nothing. */

import type { PreySpecies, SizeClass } from '../../husbandry/prey/index.ts';
import { type Problem, problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Mm } from '../../husbandry/units.ts';
import { isBlank } from '../cells/blank.ts';
import { type LengthRead, type LengthUnit, readLength } from '../cells/length.ts';
import { holdsPhrase, plainWords, singularWords } from '../names/plain.ts';
import { either, inMm, quote } from '../quoting.ts';

export interface BandRead {
  readonly fromMm: Mm;
  readonly toMm: Mm;
  readonly assumed: boolean;
  /** How it was read, when not word for word. */
  readonly said: string | null;
}

/** A length between the trade's classes stands for a tenth either way. */
const NARROW = 0.1;
/** Lengths written in inches are rounded: this near a class's own name is that class. */
const SAME_MM = 0.2;

const SHORT_WORDS: Readonly<Record<string, string>> = {
  s: 'small',
  sm: 'small',
  m: 'medium',
  med: 'medium',
  md: 'medium',
  l: 'large',
  lg: 'large',
  xl: 'extra large',
  xs: 'extra small',
  micro: 'pinhead',
  ph: 'pinhead',
  klein: 'small',
  mittel: 'medium',
  gross: 'large',
  petit: 'small',
  moyen: 'medium',
  grand: 'large',
  pequeno: 'small',
  mediano: 'medium',
  grande: 'large',
  adulte: 'adult',
  adulto: 'adult',
};

const plainSize = (text: string): string =>
  singularWords(plainWords(text))
    .split(' ')
    .map((word) => SHORT_WORDS[word] ?? word)
    .join(' ');

const bandOf = ({ fromMm, toMm }: SizeClass, said: string | null, assumed = false): BandRead => ({
  fromMm,
  toMm,
  assumed,
  said,
});

const asBand = (text: string, { name, fromMm, toMm }: SizeClass): string =>
  `${quote(text)} is read as ${name}: ${inMm(fromMm)} to ${inMm(toMm)}.`;

function adultBand(text: string, species: PreySpecies): BandRead {
  const { value } = species.adultLengthMm;
  const [fromMm, toMm] = [value * (1 - NARROW), value * (1 + NARROW)];
  return { fromMm, toMm, assumed: false, said: asBand(text, { name: 'adult', fromMm, toMm }) };
}

const MIXED = new Set(['mixed', 'mix', 'mixed size', 'assorted', 'all size', 'gemischt', 'mixte', 'mixto']);

/** All the trade's classes together, for "mixed"; null where the trade names none. */
function mixedBand(text: string, species: PreySpecies): BandRead | null {
  const all = MIXED.has(plainSize(text)) ? allSizes(species) : null;
  return all && bandOf(all, asBand(text, { ...all, name: 'all sizes' }), true);
}

/** A colony of which no size is given holds all; null where the trade names none. */
export function colonyBand(species: PreySpecies): BandRead | null {
  const all = allSizes(species);
  return all && bandOf(all, `A colony holds all sizes: ${inMm(all.fromMm)} to ${inMm(all.toMm)}.`, true);
}

function allSizes({ sizeClasses: { value: classes } }: PreySpecies): SizeClass | null {
  if (classes.length === 0) return null;
  const fromMm = Math.min(...classes.map((one) => one.fromMm));
  const toMm = Math.max(...classes.map((one) => one.toMm));
  return { name: '', fromMm, toMm };
}

/** The class whose name or other word is the text, or the one class whose name the text holds. */
function byWord(text: string, species: PreySpecies): BandRead | null {
  const classes = species.sizeClasses.value;
  const plain = plainSize(text);
  const same = classes.find(({ name }) => plainSize(name) === plain);
  if (same) return bandOf(same, null);
  const called = classes.find(({ aliases }) => aliases?.some((alias) => plainSize(alias) === plain));
  if (called) return bandOf(called, asBand(text, called));
  const held = classes.filter(({ name }) => holdsPhrase(plain, plainSize(name)));
  const longest = Math.max(...held.map(({ name }) => name.length));
  const [only, second] = held.filter(({ name }) => name.length === longest);
  if (only && !second) return bandOf(only, asBand(text, only));
  return holdsPhrase(plain, 'adult') ? adultBand(text, species) : null;
}

const tooLong = (text: string, species: PreySpecies, longestMm: Mm): Problem =>
  problem(
    'size-over-species',
    `${quote(text)} is longer than any ${species.commonName} (at most ${inMm(longestMm)}).`,
    'size',
  );

const isNamed = ({ name }: SizeClass, mm: Mm): boolean => {
  const own = readLength(name, null);
  return own.ok && Math.abs(own.value.mm - mm) < SAME_MM;
};

function byLength(text: string, length: LengthRead, species: PreySpecies): Result<BandRead> {
  const classes = species.sizeClasses.value;
  const longest = Math.max(species.adultLengthMm.value, ...classes.map(({ toMm }) => toMm));
  if (length.toMm > longest + SAME_MM) return err(tooLong(text, species, longest));
  if (length.range) return ok({ fromMm: length.fromMm, toMm: length.toMm, assumed: false, said: null });
  const { mm } = length;
  const found =
    classes.find((one) => isNamed(one, mm)) ?? classes.find(({ fromMm, toMm }) => fromMm <= mm && mm <= toMm);
  if (found) return ok(bandOf(found, asBand(text, found)));
  const [fromMm, toMm] = [mm * (1 - NARROW), mm * (1 + NARROW)];
  return ok({
    fromMm,
    toMm,
    assumed: false,
    said: `${quote(text)} is read as ${inMm(fromMm)} to ${inMm(toMm)}.`,
  });
}

/** The middle class, for prey of which no size is given. */
export function assumedBand(species: PreySpecies): BandRead {
  const classes = species.sizeClasses.value;
  const middle = classes[Math.floor(classes.length / 2)];
  if (!middle) return { ...adultBand('', species), assumed: true, said: 'Size assumed: adult.' };
  const said = `Size assumed: ${middle.name}, ${inMm(middle.fromMm)} to ${inMm(middle.toMm)}.`;
  return bandOf(middle, said, true);
}

/** The band of lengths a cell stands for; a bare number without a unit is 'size-without-unit'. */
export function readTradeSize(text: string, species: PreySpecies, unit: LengthUnit | null): Result<BandRead> {
  if (isBlank(text)) return ok(assumedBand(species));
  const word = mixedBand(text, species) ?? byWord(text, species);
  if (word) return ok(word);
  const length = readLength(text, unit);
  if (length.ok) return byLength(text, length.value, species);
  if (length.problem.code !== 'not-a-size') return length;
  const names = either(species.sizeClasses.value.map(({ name }) => name));
  const right = `${quote(text)} is not a size of ${species.commonName}; write ${names}, or a length such as 6 mm.`;
  return err(problem('not-a-size', right, 'size'));
}
