/** Acts on deliveries that are on the way: asked for sooner, or doubled. What is part of an order is fixed. */

import type { ExpectedDelivery } from '../larder/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Asking, Candidate } from './candidate.ts';
import type { CoverOptions } from './cover.ts';
import { firstDeliveryDay } from './delivery-days.ts';
import { dayName } from './wording.ts';

export function bringingForward({ snapshot, options }: Asking): Candidate[] {
  const soonest = firstDeliveryDay(snapshot, 1);
  if (soonest === null) return [];
  return snapshot.deliveries
    .filter(({ day, order }) => day > soonest && order === undefined)
    .map((delivery) =>
      deliveryAct(snapshot, { delivery, options, kind: 'bring delivery forward', change: { day: soonest } }),
    );
}

export function enlarging({ snapshot, options }: Asking): Candidate[] {
  return snapshot.deliveries
    .filter(({ order }) => order === undefined)
    .map((delivery) =>
      deliveryAct(snapshot, {
        delivery,
        options,
        kind: 'enlarge delivery',
        change: { lot: { ...delivery.lot, heads: delivery.lot.heads * 2 } },
      }),
    );
}

interface DeliveryAct {
  readonly delivery: ExpectedDelivery;
  readonly options: CoverOptions;
  readonly kind: 'bring delivery forward' | 'enlarge delivery';
  readonly change: Partial<ExpectedDelivery>;
}

function deliveryAct(snapshot: Snapshot, { delivery, options, kind, change }: DeliveryAct): Candidate {
  const prey = snapshot.facts.species.get(delivery.species)?.commonName ?? delivery.species;
  const sooner = `Ask for the ${prey} delivery to come ${dayName(change.day ?? delivery.day, snapshot.today)} instead.`;
  const larger = `Double the ${prey} delivery to ${delivery.lot.heads * 2}.`;
  return {
    kind,
    sentence: kind === 'bring delivery forward' ? sooner : larger,
    bin: delivery.bin,
    species: delivery.species,
    animals: [],
    snapshot: {
      ...snapshot,
      deliveries: snapshot.deliveries.map((each) => (each === delivery ? { ...delivery, ...change } : each)),
    },
    options,
  };
}
