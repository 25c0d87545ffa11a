/** The method of a week: doubt of a bin, learning, what fits whom, demand, who gets what, and the words of the answer. */
import type { Child } from 'hono/jsx';
import { Equation, Symbols, Topic, V } from './method-topic.tsx';

interface WeekProps {
  /** The numbers of these groups, each with its form. */
  readonly numbersOf: (...abouts: readonly string[]) => Child;
}

export const WeekTopics = ({ numbersOf }: WeekProps) => (
  <>
    <Doubt />
    {numbersOf('Doubt of a bin', 'Bins unlike the Book')}
    <Learning />
    <Matching />
    <Demand />
    {numbersOf('Demand')}
    <Allocation />
    <Verdict />
    {numbersOf('Verdict')}
  </>
);

const Doubt = () => (
  <Topic
    id="doubt"
    title="What is not known about a bin"
    source="Shapes and spreads are our own starting values; laboratories differ by 20 to 40 % on the growth of crickets."
  >
    <p>
      Shared by all heads in a bin, and drawn once for each of the times a week is played through: how many
      there are, how fast they grow, how many die, and now and then a die-off.
    </p>
    <Equation>
      heads = count × e
      <sup>
        σ<V>z</V> − σ²/2
      </sup>
      ; growth = Book × e
      <sup>
        <V>τ</V>
        <V>z</V>
      </sup>
      ; deaths = Book × <V>g</V>
    </Equation>
    <Symbols
      of={[
        [<V>z</V>, 'a normal draw, mean 0, spread 1'],
        ['σ', 'spread of the last look, growing with the days since'],
        ['τ', 'spread of growth from bin to bin'],
        [<V>g</V>, 'a gamma draw, mean 1'],
      ]}
    />
  </Topic>
);

const Learning = () => (
  <Topic
    id="learning"
    title="What a look teaches"
    source="Bayes’ rule on a grid of growth speeds and death rates; checked on invented worlds by a separate program of the tests."
  >
    <Equation>what is thought after ∝ what was thought before × chance of seeing this</Equation>
    <ul>
      <li>Counts, levels by eye, weighings and the dead taken out teach numbers and deaths, never growth.</li>
      <li>Sizes, samples weighed and first adults teach growth, never deaths.</li>
      <li>It begins with the Book: one species, one spread for all bins of it.</li>
      <li>Of species that hardly die there is too little to learn from, and the page says so.</li>
    </ul>
  </Topic>
);

const Matching = () => (
  <Topic
    id="matching"
    title="Which prey suits whom"
    source="Our own choice; the windows have their sources in each kind’s rule."
  >
    <Equation>
      suits = sin²(π/2 · ln(<V>l</V> / edge) / ln(best / edge)); counts for (<V>l</V> / best)³ items
    </Equation>
    <Symbols of={[[<V>l</V>, 'length of the prey, mm; edge and best: of the animal’s window, mm']]} />
  </Topic>
);

const Demand = () => (
  <Topic
    id="demand"
    title="Who wants how much, and when"
    source="Renewal: Cox (1962), Renewal Theory. Moults follow temperature by a Q10 of 2 (Hatton et al. 2019). The rest is the rule of each kind."
  >
    <ul>
      <li>
        Days between meals and items of a meal are drawn evenly from the rule’s range; once an animal has
        enough on record, its own days take over.
      </li>
      <li>
        How much you give is learned: items given over items meant, of all whole meals written down since each
        animal has its size.
      </li>
      <li>
        Late in its moult cycle it takes less often; after the moult it waits; then it is longer and its
        window has moved.
      </li>
      <li>Evenings skipped and how much you offer are shared by all animals of one time played.</li>
    </ul>
    <Equation>
      mean meals a day = 1 / mean days between meals; items = floor(<V>m</V> <V>G</V> + <V>u</V>)
    </Equation>
    <Symbols
      of={[
        [<V>m</V>, 'items drawn for the meal'],
        [<V>G</V>, 'your generosity that time: log-normal, of mean 1 until meals on record say what it is'],
        [<V>u</V>, 'an even draw from 0 to 1: rounds without bias'],
      ]}
    />
  </Topic>
);

const Allocation = () => (
  <Topic
    id="allocation"
    title="Who gets what"
    source="Our own choice. Against the most meals possible on one evening it loses 4 to 8 %."
  >
    <ol>
      <li>Fragile animals first, then those with the narrowest window.</li>
      <li>
        Each takes the prey nearest to outgrowing it; then dead stock; then prey killed first; then portions.
      </li>
      <li>A species beyond its share in the diet is taken only when nothing else is left.</li>
    </ol>
  </Topic>
);

const Verdict = () => (
  <Topic
    id="verdict"
    title="Lasts, tight, runs short"
    source="The words are our own choice, fixed once and for all screens."
  >
    <p>
      A meal is late when it is not offered within its range; missed when later than range and grace for want
      of prey, and one more each time the longest interval has gone by since; a danger, once, when the
      animal’s safe gap has passed. The week is played through many times:
    </p>
    <Equation>
      <V>p</V> = times with nothing missed / times played; give or take √(<V>p</V> (1 − <V>p</V>) / times)
    </Equation>
    <p>
      It lasts, is tight or runs short by <V>p</V>; it runs short too when a danger is likelier than 1 in 20.
    </p>
  </Topic>
);
