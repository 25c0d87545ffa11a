/** The method of orders: what a supplier's boxes teach of how it sends. */
import { Equation, Symbols, Topic, V } from './method-topic.tsx';

export const Senders = () => (
  <Topic
    id="senders"
    title="What a supplier’s boxes teach"
    source="Conjugate priors: Gelman et al., Bayesian Data Analysis, chapters 2 and 3. That boxes, not heads, are what differs is our own choice, and so are the weights."
  >
    <p>
      Heads of one box live or die together, so a box is one observation however many are in it. What is usual
      counts as some boxes that came before the first.
    </p>
    <Equation>
      dead on arrival = (<V>w</V> <V>L</V>₀ + Σ <V>d</V>) / (<V>w</V> + <V>n</V>)
    </Equation>
    <Symbols
      of={[
        [<V>d</V>, 'share dead of a box: exponential about the supplier’s mean'],
        [
          <>
            <V>L</V>₀, <V>w</V>
          </>,
          'what is usual, and the boxes it weighs; one over the mean is gamma',
        ],
        [<V>n</V>, 'boxes that came'],
      ]}
    />
    <Equation>
      counted over = e
      <sup>
        <V>m</V> + <V>s</V>²/2
      </sup>{' '}
      − 1; <V>m</V> = (<V>m</V>₀ + Σ ln(came / ordered)) / (1 + <V>n</V>)
    </Equation>
    <Symbols
      of={[
        [<V>s</V>, 'spread of the logs from box to box, and from seller to seller'],
        [<V>n</V>, 'boxes that were counted or weighed; a label believed teaches nothing'],
      ]}
    />
    <Equation>
      a day later, each day = (<V>v</V> <V>q</V>₀ + days late) / (<V>v</V> + days late + <V>n</V>)
    </Equation>
    <Symbols
      of={[
        [
          <>
            <V>q</V>₀, <V>v</V>
          </>,
          'what is usual, and the days it weighs; the chance is beta',
        ],
      ]}
    />
  </Topic>
);
