/** The sizes the trade sells, against a window of lengths. */
import type { PreySpecies, SizeClass } from '../prey/index.ts';

/** The trade class whose middle lies within the window, nearest to the ideal; undefined when none does. */
export function nearestClass(
  species: PreySpecies,
  window: { minMm: number; idealMm: number; maxMm: number },
): SizeClass | undefined {
  const fits = species.sizeClasses.value.filter(
    (size) => window.minMm <= middleOf(size) && middleOf(size) <= window.maxMm,
  );
  const off = (size: SizeClass) => Math.abs(Math.log(middleOf(size) / window.idealMm));
  return fits.sort((a, b) => off(a) - off(b))[0];
}

export const middleOf = ({ fromMm, toMm }: SizeClass): number => (fromMm + toMm) / 2;
