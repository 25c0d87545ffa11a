/** Where prey that comes in can go: a bin there is, or a new one in a room; which is proposed, and what was chosen. */
import { sentenceCase } from '../../../views/format.ts';
import { type Names, preyName, sizedPrey } from '../../../views/names.ts';
import type { Option } from '../../../views/partials/form.tsx';
import { askOnce } from '../../actions/index.ts';
import { type Bin, type Filled, fittingBin, isApart, type Lot } from '../../husbandry/larder/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import type { StandingPrey } from '../../husbandry/supply/index.ts';
import type { House } from './house.ts';

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

/** What a new bin for prey of a size is called. */
const newBinName = (
  { species: all }: Names,
  { size, species }: { readonly size: string; readonly species: string },
): string => sentenceCase(sizedPrey(size, preyName(all, species)));

/** The bin or the room chosen, a new bin called by what goes into it. */
export function intoNamed(chosen: string, names: Names, offer: Parameters<typeof newBinName>[1] | undefined) {
  const into = intoChosen(chosen);
  return { ...into, name: into.bin === '' && offer !== undefined ? newBinName(names, offer) : '' };
}

interface Coming extends Pick<Lot, 'fromMm' | 'toMm'> {
  readonly species: string;
}

/** The bins with what stands in them tonight, else with what is on its way to them. */
export async function binsFilled({ answering }: House, snapshot: Snapshot): Promise<readonly Filled[]> {
  const standing = await askOnce('shelves', { options: null, snapshot, answering });
  const meanOf = (code: string) => meanStanding(standing, code) ?? meanComing(snapshot, code);
  return snapshot.bins.map((bin) => ({ bin, meanMm: meanOf(bin.code) }));
}

/** Mean length of what is in a bin; less than a head is nothing. */
function meanStanding(standing: readonly StandingPrey[], code: string): number | null {
  const here = standing.filter(({ bin }) => bin === code);
  const sum = (of: (share: StandingPrey) => number) => here.reduce((total, share) => total + of(share), 0);
  const heads = sum((share) => share.heads * share.lengthsMm.length);
  return heads < 1 ? null : sum((share) => share.heads * total(share.lengthsMm)) / heads;
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);

function meanComing({ deliveries }: Snapshot, code: string): number | null {
  const lot = deliveries.find(({ bin }) => bin === code)?.lot;
  return lot === undefined ? null : (lot.fromMm + lot.toMm) / 2;
}

/** What a form proposes: the bin that fits, else a new one where others of its species stand. */
export function intoProposed(filled: readonly Filled[], coming: Coming, { rooms, today }: Snapshot): string {
  const bin = fittingBin(filled, coming, today);
  if (bin !== null) return bin.code;
  const beside = filled.find((each) => each.bin.species === coming.species)?.bin.room;
  return `${NEW}${beside ?? rooms[0]?.code ?? ''}`;
}
