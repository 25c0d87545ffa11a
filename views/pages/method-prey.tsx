/** The method of prey life: growth by temperature, stages, one day, crowding, growth of a colony, harvest. */
import { Equation, Symbols, Topic, V } from './method-topic.tsx';

export const PreyTopics = () => (
  <>
    <Rate />
    <Stages />
    <Day />
    <Crowding />
    <Colony />
    <Harvest />
  </>
);

const Rate = () => (
  <Topic
    id="growth"
    title="How fast prey grows"
    source="Degree-days: Campbell et al. (1974), J. Appl. Ecol. 11:431–438. Single sine: Baskerville and Emin (1969), Ecology 50:514–517. The bend through measured points and the seven-day mean are our own choice."
  >
    <p>
      The rate goes through every temperature that was measured. Elsewhere it follows the degree-day line:
      from nothing at the threshold up to the optimum, then straight down to nothing at the upper stop.
    </p>
    <Equation>
      <V>r</V>(<V>T</V>) = 1 / <V>D</V> where measured, else rising by 1 / <V>K</V> per degree; without any
      measurement (<V>T</V> − <V>T</V>
      <sub>0</sub>) / <V>K</V>
    </Equation>
    <p>
      A room’s day swings as a sine between night and day; the mean of the rate counts, not the rate of the
      mean:
    </p>
    <Equation>
      growth of a day = (1/π) ∫ <V>r</V>(<V>M</V> + <V>A</V> sin <V>t</V>) d<V>t</V>, <V>t</V> from −π/2 to
      π/2
    </Equation>
    <p>
      A hard stop (“nobody grew up at a constant 22 °C”) acts on the mean of seven days, never on single cold
      hours.
    </p>
    <Symbols
      of={[
        [<V>r</V>, 'share of the span gone through per day'],
        [<V>T</V>, 'temperature, °C'],
        [<V>D</V>, 'days measured at that temperature'],
        [
          <>
            <V>T</V>
            <sub>0</sub>
          </>,
          'threshold, °C',
        ],
        [<V>K</V>, 'warmth needed, degree-days'],
        [
          <>
            <V>M</V>, <V>A</V>
          </>,
          'middle of the day’s temperatures and half their difference, °C',
        ],
      ]}
    />
  </Topic>
);

const Stages = () => (
  <Topic
    id="stages"
    title="Stages, spread and deaths"
    source="Exact for any number of steps: survival, mean and spread are checked to one part in 10¹². Erlang stages are common in ecology; the split is our own derivation."
  >
    <p>
      Each stage is a row of equal steps, so that the times of siblings spread as they were measured. Those
      who die leave on the way:
    </p>
    <Equation>
      <V>k</V> = 1 / CV² steps; out of each <V>k</V> / <V>D</V> a day; into the next (<V>k</V> / <V>D</V>){' '}
      <V>s</V>
      <sup>
        1/<V>k</V>
      </sup>{' '}
      a day
    </Equation>
    <p>
      Then the share <V>s</V> gets through, survivors need <V>D</V> days on average, and their spread is CV.
      Outside the temperatures at which survival is known, deaths a day (μ) are those of the nearest; below
      the stop growth ends and deaths go on: into the next <V>k</V> / <V>D</V> − μ a day.
    </p>
    <Symbols
      of={[
        [<V>k</V>, 'steps of the stage; the time to adult shares 1 / CV² among its stages by their days'],
        ['CV', 'spread of the time over its mean'],
        [<V>D</V>, 'mean days of those who get through'],
        [<V>s</V>, 'share that gets through alive'],
        ['μ', 'deaths per head and day'],
      ]}
    />
  </Topic>
);

const Day = () => (
  <Topic
    id="day"
    title="One day of a bin"
    source="Uniformisation: Jensen (1953), Skand. Aktuarietidskr. 36:87–91."
  >
    <p>Heads in all steps go on together, exactly, by the mean of very many small jumps:</p>
    <Equation>
      <V>x</V>(tomorrow) = e
      <sup>
        <V>A</V>
      </sup>{' '}
      <V>x</V> = Σ
      <sub>
        <V>n</V>
      </sub>{' '}
      e
      <sup>
        −<V>q</V>
      </sup>{' '}
      <V>q</V>
      <sup>
        <V>n</V>
      </sup>{' '}
      / <V>n</V>! · (<V>I</V> + <V>A</V> / <V>q</V>)
      <sup>
        <V>n</V>
      </sup>{' '}
      <V>x</V>
    </Equation>
    <p>
      Eggs come by age and temperature. A holding bin lays nothing and loses at least its holding loss; a cup
      raises no more than its medium can, and goes out at its age.
    </p>
    <Symbols
      of={[
        [<V>x</V>, 'heads in each step'],
        [<V>A</V>, 'rates per day from step to step, deaths and births'],
        [<V>q</V>, 'the fastest rate out of any step, per day'],
      ]}
    />
  </Topic>
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
