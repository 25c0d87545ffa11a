/** What a bulk order is reckoned from: who sends, how the prey grows and dies. */
import { counted, percent } from '../../../views/format.ts';
import type { SourceLine } from '../../../views/partials/sources.tsx';
import type { LearnedShare, Offer, SenderRecord, Supplier } from '../../husbandry/orders/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { lineOf } from './source-line.ts';

export function bulkSources(
  { species }: Offer,
  { supplier, record }: { supplier: Supplier; record: SenderRecord },
  { policy, species: known }: Snapshot['facts'],
): readonly SourceLine[] {
  const prey = known.get(species);
  const { moveByC, bulkPacksMost, holdingLossPerDay } = { ...policy, ...prey };
  return [
    sentLine('Dead on arrival', supplier.lossShare, record.loss, policy.deadOnArrivalShare),
    sentLine('Counted over', supplier.overCountShare, record.overCount, policy.overCountShare),
    ...(holdingLossPerDay === undefined
      ? []
      : [lineOf('Lost in the bin each day', holdingLossPerDay, percent(holdingLossPerDay.value))]),
    lineOf('Cooler and warmer by', moveByC, `${moveByC.value} °C`),
    lineOf('Worked out up to', bulkPacksMost, `${bulkPacksMost.value} packs`),
  ];
}

/** The keeper's own word of this supplier, else what its boxes have taught, else what is usual. */
function sentLine(what: string, own: number | null, learned: LearnedShare, usual: Sourced): SourceLine {
  if (own !== null) return { what, value: percent(own), status: 'yours', source: 'as you wrote it down' };
  if (learned.boxes === 0) return lineOf(what, usual, percent(usual.value));
  const { mean, low, high, boxes } = learned;
  return {
    what,
    value: `${percent(mean)} (${percent(low)} to ${percent(high)})`,
    status: 'yours',
    source: `learned from ${counted(boxes, 'box', 'boxes')} of this supplier`,
  };
}
