/** The method of prey life: growth by temperature, stages and deaths, one day of a bin. */
import { Equation, Symbols, Topic, V } from './method-topic.tsx';

export const PreyTopics = () => (
  <>
    <Rate />
    <Stages />
    <Day />
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
