/** Bins laid out once for all that live a plan through: what is believed of a bin takes longest to work out. */
import { type Laid, nothingLaid } from '../supply/index.ts';
import type { LaidOut } from './lay-out.ts';

/** For the engine: the bins of all places, and nothing else yet. */
export function binsLaid({ places, snapshot }: Pick<LaidOut, 'places' | 'snapshot'>): Laid {
  const laid = nothingLaid();
  const codes = [...snapshot.facts.species.keys()].sort();
  for (const { bins, species } of places)
    for (const stock of bins) laid.bins.set(stock.bin, { ...stock, species: codes.indexOf(species) });
  return laid;
}
