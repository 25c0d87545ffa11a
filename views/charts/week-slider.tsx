/** The size spectrum of a coming week, with a slider that moves through the weeks: prey grows, windows move. */
import type { Spectrum, WeekAhead, WeekGroup } from '../../src/husbandry/supply/index.ts';
import { counted, type LengthUnit, shortDay } from '../format.ts';
import type { PreyName } from '../names.ts';
import { paths } from '../paths.ts';
import type { DrawnGroup } from './group-brackets.tsx';
import { SizeSpectrum } from './size-spectrum.tsx';

interface AheadProps {
  /** The week shown. */
  readonly shown: WeekAhead;
  /** All weeks, which share one scale. */
  readonly weeks: readonly WeekAhead[];
  readonly species: ReadonlyMap<string, PreyName>;
  readonly unit: LengthUnit;
}

/** The picture of one week ahead; it takes the place of today's. */
export const SpectrumAhead = ({ shown, weeks, species, unit }: AheadProps) => (
  <SizeSpectrum
    spectrum={shown.spectrum}
    groups={shown.groups.map(drawn)}
    species={species}
    unit={unit}
    when={weekWords(shown)}
    companions={weeks.map(({ spectrum }): Spectrum => spectrum)}
  />
);

/** 'In 2 weeks, from Mon 7 Dec'. */
const weekWords = ({ week, from }: WeekAhead): string =>
  week === 0 ? `This week, from ${shortDay(from)}` : `In ${counted(week, 'week')}, from ${shortDay(from)}`;

/** Fewer items than this not found in a week are not drawn as short. */
const SHORT_FROM = 0.5;

const drawn = ({ name, window, wanted, unmet }: WeekGroup): DrawnGroup => ({
  name,
  window,
  heads: wanted,
  verdict: unmet >= SHORT_FROM ? 'runs short' : 'lasts',
});

interface WeekSliderProps {
  /** Week shown, 0 for today. */
  readonly week: number;
  readonly last: number;
}

/** Moves the picture through the weeks; without script the button shows the week chosen. */
export const WeekSlider = ({ week, last }: WeekSliderProps) => (
  <form method="get" action={paths.sunday} class="week-slider">
    <label for="week">Weeks ahead</label>
    <input
      id="week"
      name="week"
      type="range"
      min="0"
      max={`${last}`}
      step="1"
      value={`${week}`}
      list="week-marks"
      data-hx-get={paths.weeks}
      data-hx-trigger="input changed delay:80ms"
      data-hx-target="#ahead"
      data-hx-swap="innerMorph"
      data-hx-sync="this:replace"
    />
    <datalist id="week-marks">
      {Array.from({ length: last + 1 }, (_, at) => (
        <option value={`${at}`} label={at === 0 ? 'now' : `${at}`}></option>
      ))}
    </datalist>
    <button type="submit" class="quiet small without-script">
      Show
    </button>
  </form>
);
