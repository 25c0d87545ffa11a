/** The method of many together: crowding, growth of a colony, what can be taken for ever. */
import { Equation, Symbols, Topic, V } from './method-topic.tsx';

export const ColonyTopics = () => (
  <>
    <Crowding />
    <Colony />
    <Harvest />
  </>
);

const Crowding = () => (
  <Topic
    id="crowding"
    title="Crowding and cannibalism"
    source="Eggs and pupae eaten: Dennis, Desharnais, Cushing and Costantino (1995), Ecol. Monogr. 65:261–281. Laying and deaths above capacity: our own choice, with the numbers of each species."
  >
    <Equation>
      above capacity: laying × <V>C</V> / <V>L</V>, and μ<sub>c</sub> (<V>L</V> / <V>C</V> − 1) deaths per
      head and day
    </Equation>
    <Equation>
      not eaten: e
      <sup>
        −Σ <V>c</V> <V>n</V>
      </sup>
    </Equation>
    <Symbols
      of={[
        [<V>L</V>, 'load: heads, each by the square of its length over an adult’s'],
        [<V>C</V>, 'heads the surface, volume or medium carries'],
        [
          <>
            μ<sub>c</sub>
          </>,
          'deaths per head and day for each capacity too much',
        ],
        [<V>n</V>, 'eaters per gram of medium'],
        [<V>c</V>, 'grams of medium per eater'],
      ]}
    />
  </Topic>
);

const Colony = () => (
  <Topic
    id="colony"
    title="How a colony grows"
    source="Euler and Lotka, as in Caswell (2001), Matrix Population Models; generation time: Bienvenu and Legendre (2015), Am. Nat. 185:834–843."
  >
    <p>
      With room, a colony comes to grow at one rate: that at which a newborn is worth exactly its own
      replacement.
    </p>
    <Equation>
      Σ
      <sub>
        <V>j</V>
      </sub>{' '}
      <V>b</V>
      <sub>
        <V>j</V>
      </sub>{' '}
      <V>u</V>
      <sub>
        <V>j</V>
      </sub>
      (<V>r</V>) = 1; λ = e
      <sup>
        7<V>r</V>
      </sup>
      ; doubling = ln 2 / <V>r</V>; <V>T</V> = <V>v</V>·<V>w</V> / <V>b</V>·<V>w</V>
    </Equation>
    <Symbols
      of={[
        [<V>r</V>, 'growth per day; λ: times as many after a week'],
        [<V>b</V>, 'births per head and day in each step'],
        [<V>u</V>, 'days a newborn spends in the step, later ones counted for less by the growth'],
        [<V>w</V>, 'share of the colony in each step in the long run'],
        [<V>v</V>, 'worth of one head to the future colony, a newborn’s being 1'],
        [<V>T</V>, 'generation: mean age of the mothers, days'],
      ]}
    />
  </Topic>
);

const Harvest = () => (
  <Topic
    id="harvest"
    title="What can be taken for ever"
    source="Rorres and Fair (1975), Math. Biosci. 24:31–46, with the room of the bin as a bound."
  >
    <Equation>share of every size, each week: 1 − 1 / λ</Equation>
    <p>
      A number can be promised only where room is limited. It is the most that leaves the colony as it was:
    </p>
    <Equation>
      most Σ <V>h</V> with <V>s</V> = <V>P</V> <V>s</V> − <V>h</V>, room for <V>P</V> <V>s</V> ≤ capacity,{' '}
      <V>h</V> ≤ what is there
    </Equation>
    <Symbols
      of={[
        ['λ', 'times as many after a week without harvest'],
        [<V>s</V>, 'heads left standing in each step after the harvest'],
        [<V>P</V>, 'what a week makes of them'],
        [<V>h</V>, 'heads taken'],
      ]}
    />
  </Topic>
);
