/** Which other bins may go the way of one that crashed: what they share with it. */
import type { Bin } from '../larder/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { sameOrigin } from './same-origin.ts';

export interface AtRisk {
  readonly bin: string;
  readonly species: string;
  /** The nearest thing they share. */
  readonly shares: 'origin' | 'species and room';
}

/** Bins of the same origin, whatever they hold; then of the same species in the same room. */
export function atRisk({ bins }: Snapshot, lost: Bin): AtRisk[] {
  const others = bins.filter((bin) => bin.code !== lost.code && bin.role !== 'frozen');
  const related = others.filter((bin) => sameOrigin(bin, lost));
  const beside = others.filter(
    (bin) => !related.includes(bin) && bin.species === lost.species && bin.room === lost.room,
  );
  const risk = (shares: AtRisk['shares']) => (bin: Bin) => ({ bin: bin.code, species: bin.species, shares });
  return [...related.map(risk('origin')), ...beside.map(risk('species and room'))];
}
