/** The method of a bulk order: the price of a head that is eaten. */
import { Equation, Symbols, Topic, V } from './method-topic.tsx';

export const BulkOrder = () => (
  <Topic
    id="bulk"
    title="How many a box should hold"
    source="Our own choice: a price a head eaten, not a head bought. It is the lot that costs least by the piece, as in lot sizing, with goods that age."
  >
    <p>
      The room is laid out week by week as for the plan: heads by bands of length, the meals wanted, what is
      there and what is on its way. The box is added to it and nothing else is ordered; whoever eats takes the
      prey nearest to outgrowing, fragile animals first. Heads of the box and of the bin share each band’s
      meals in proportion.
    </p>
    <Equation>
      <V>c</V>(<V>n</V>) = (<V>n</V> <V>p</V>(<V>n</V>) + <V>s</V>(<V>n</V>)) / <V>e</V>(<V>n</V>); best{' '}
      <V>n</V> = the one of least <V>c</V>
    </Equation>
    <Symbols
      of={[
        [<V>n</V>, 'packs'],
        [<V>p</V>, 'price of a pack: the last break reached holds for all of them'],
        [<V>s</V>, 'postage of this parcel sent alone'],
        [<V>e</V>, 'heads of the box eaten within the weeks looked ahead'],
      ]}
    />
    <p>
      Each head more, of the last pack, costs [<V>n</V> <V>p</V>(<V>n</V>) + <V>s</V>(<V>n</V>) − the same of{' '}
      <V>n</V> − 1] / [<V>e</V>(<V>n</V>) − <V>e</V>(<V>n</V> − 1)]. Cooler and warmer are the same room with
      the bins the prey goes to some degrees off.
    </p>
  </Topic>
);
