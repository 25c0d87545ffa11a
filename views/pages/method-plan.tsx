/** The method of the plan: what it weighs, and what a keeper may hold dear. */
import { paths } from '../paths.ts';
import { Equation, Symbols, Topic, V } from './method-topic.tsx';

export const HowPlanned = () => (
  <Topic
    id="plan"
    title="How a plan is chosen"
    source="That safety is the price of a miss is the newsvendor’s problem of stock that goes stale. The prices are our own choice: say what you hold dear."
  >
    <p>
      Among plans that can be carried out, the one of least cost is looked for, with everything you would
      rather not see priced in. Prices are told in times what an item of prey costs, so that they hold
      whatever your suppliers ask.
    </p>
    <Equation>
      cost = <V>g</V> + <V>p</V> + <V>k</V> + <V>t</V> + <V>m</V> + <V>l</V> + <V>d</V> − <V>w</V>
    </Equation>
    <Symbols
      of={[
        [
          <>
            <V>g</V>, <V>p</V>
          </>,
          'goods and cups; postage',
        ],
        [<V>k</V>, 'keeping prey: feed, and room'],
        [<V>t</V>, 'your minutes for parcels, the shop and cups, at what an hour of yours is worth'],
        [
          <>
            <V>m</V>, <V>l</V>, <V>d</V>
          </>,
          'meals missed, items that come late, animals in danger',
        ],
        [<V>w</V>, 'what is left at the end, and what colonies are worth to their own future'],
      ]}
    />
    <p>
      Where more meals are missed than you allow, they are priced higher and the plan is made anew: the share
      of meals not to be missed is asked for first, and what a missed meal counts as decides what is then
      worth while. What an hour of yours is worth stands in <a href={paths.settings}>the settings</a>.
    </p>
  </Topic>
);
