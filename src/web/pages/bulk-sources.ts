/** What a bulk order is reckoned from: who sends, how the prey grows and dies. */
import { percent } from '../../../views/format.ts';
import type { SourceLine } from '../../../views/partials/sources.tsx';
import type { Offer, Supplier } from '../../husbandry/orders/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { lineOf } from './source-line.ts';

export function bulkSources(
  { species }: Offer,
  supplier: Supplier,
  { policy, species: known }: Snapshot['facts'],
): readonly SourceLine[] {
  const prey = known.get(species);
  const { moveByC, bulkPacksMost, holdingLossPerDay } = { ...policy, ...prey };
  return [
    sentLine('Dead on arrival', supplier.lossShare, policy.deadOnArrivalShare),
    sentLine('Counted over', supplier.overCountShare, policy.overCountShare),
    ...(holdingLossPerDay === undefined
      ? []
      : [lineOf('Lost in the bin each day', holdingLossPerDay, percent(holdingLossPerDay.value))]),
    lineOf('Cooler and warmer by', moveByC, `${moveByC.value} °C`),
    lineOf('Worked out up to', bulkPacksMost, `${bulkPacksMost.value} packs`),
  ];
}

/** What this supplier's boxes taught or the keeper said, else what is usual. */
const sentLine = (what: string, own: number | null, usual: Sourced): SourceLine =>
  own === null
    ? lineOf(what, usual, percent(usual.value))
    : {
        what,
        value: percent(own),
        status: 'yours',
        source: 'this supplier, as written down and as its boxes came',
      };
