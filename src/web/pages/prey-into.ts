/** Where prey that comes in can go: a bin there is, or a new one in a room; and what was chosen of these. */
import type { Option } from '../../../views/partials/form.tsx';
import { type Bin, isApart } from '../../husbandry/larder/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';

const NEW = 'new:';

/** The living bins, of one species where it is known, then a new one in each room. */
export function intoOptions({ bins, rooms, today }: Snapshot, species?: string): readonly Option[] {
  const fits = bins.filter(
    (bin) => bin.role !== 'frozen' && (species === undefined || bin.species === species),
  );
  const named = fits.map((bin) => ({ value: bin.code, label: labelOf(bin, today), group: 'A bin' }));
  const fresh = rooms.map(({ code, name }) => ({
    value: `${NEW}${code}`,
    label: name,
    group: 'A new bin in',
  }));
  return [...named, ...fresh];
}

const labelOf = (bin: Bin, today: number): string =>
  isApart(bin, today) ? `${bin.name} (kept apart)` : bin.name;

/** The bin or the room chosen. */
export const intoChosen = (chosen: string): { readonly bin: string; readonly room: string } =>
  chosen.startsWith(NEW) ? { bin: '', room: chosen.slice(NEW.length) } : { bin: chosen, room: '' };
