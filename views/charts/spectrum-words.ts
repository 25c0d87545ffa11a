/** The size spectrum in words and as a table: its finding, its description, its numbers. */
import type { Spectrum } from '../../src/husbandry/supply/index.ts';
import { MM_PER_INCH } from '../../src/husbandry/units.ts';
import { expected, type LengthUnit, lengthRange, listed } from '../format.ts';
import { type PreyName, preyName } from '../names.ts';
import type { NumbersTable } from './figure.tsx';

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Neighbouring bands in which at least `least` heads are missing, the worst stretch first. */
function gaps({ edgesMm, missing }: Spectrum, least: number): { from: number; to: number; heads: number }[] {
  const found: { from: number; to: number; heads: number; last: number }[] = [];
  missing.forEach((heads, i) => {
    if (heads < least) return;
    const open = found.at(-1);
    const [from, to] = [edgesMm[i]!, edgesMm[i + 1]!];
    if (open?.last === i - 1)
      found[found.length - 1] = { from: open.from, to, heads: open.heads + heads, last: i };
    else found.push({ from, to, heads, last: i });
  });
  return found.toSorted((a, b) => b.heads - a.heads);
}

const LEAST_HEADS = 0.5;

/** A band's edges finely enough to tell neighbours apart: '2.2–2.5 mm'. */
function bandText(fromMm: number, toMm: number, unit: LengthUnit): string {
  const fine = (mm: number) => (unit === 'mm' ? mm.toFixed(1) : (mm / MM_PER_INCH).toFixed(2));
  return `${fine(fromMm)}–${fine(toMm)} ${unit}`;
}

/** 'Prey of 4–7 mm is missing, about 60 items', or that nothing is. */
export function spectrumFinding(spectrum: Spectrum, unit: LengthUnit): string {
  if (total(spectrum.alive.flatMap(({ heads }) => heads)) === 0) return 'No prey is on the books';
  const [worst] = gaps(spectrum, LEAST_HEADS);
  if (worst === undefined) return 'There is prey at every length that is wanted';
  return `Prey of ${lengthRange(worst.from, worst.to, unit)} is missing: ${expected(worst.heads)} more wanted than there`;
}

export function spectrumDescription(
  { alive, eaten, missing }: Spectrum,
  species: ReadonlyMap<string, PreyName>,
): string {
  const kept = alive
    .filter(({ heads }) => total(heads) >= 1)
    .map(({ species: code, heads }) => `${preyName(species, code)} ${expected(total(heads))}`);
  return [
    `Above the ruler, what is alive by length: ${kept.length > 0 ? listed(kept) : 'nothing'}.`,
    `Below it, what will be eaten: ${expected(total(eaten))} items.`,
    `Hatched red, wanted and not there: ${expected(total(missing))}.`,
  ].join(' ');
}

/** Heads to whole numbers in the table; less than half a head is a dash. */
const cell = (heads: number): string => (heads < LEAST_HEADS ? '–' : `${Math.round(heads)}`);

export function spectrumTable(
  { edgesMm, alive, eaten, missing }: Spectrum,
  species: ReadonlyMap<string, PreyName>,
  unit: LengthUnit,
): NumbersTable {
  const rows = eaten.map((_, i) => {
    const numbers = [...alive.map(({ heads }) => heads[i] ?? 0), eaten[i] ?? 0, missing[i] ?? 0];
    return { length: bandText(edgesMm[i]!, edgesMm[i + 1]!, unit), numbers };
  });
  return {
    caption: 'Prey by length: alive now, eaten and missing until the end of the check',
    head: ['Length', ...alive.map(({ species: code }) => preyName(species, code)), 'Eaten', 'Missing'],
    rows: rows
      .filter(({ numbers }) => numbers.some((heads) => heads >= LEAST_HEADS))
      .map(({ length, numbers }) => [length, ...numbers.map(cell)]),
  };
}
