/** One hue and one hatch for each form of prey, one red hatch for what is missing, everywhere the same. */
import type { PreyForm } from '../../src/husbandry/prey-form.ts';
import type { PreyName } from '../names.ts';

const FORM_HATCHES: Readonly<Record<PreyForm, string>> = {
  cricket: 'M0 8L8 0M-2 2L2 -2M6 10L10 6',
  roach: 'M0 0L8 8M-2 6L2 10M6 -2L10 2',
  fly: 'M2 2h1.500M6 6h1.500',
  mealworm: 'M0 3h8M0 7h8',
  'flour beetle': 'M3 0v8M7 0v8',
  waxworm: 'M0 4h8M4 0v8',
  superworm: 'M0 4q2 -5 4 0t4 0',
  springtail: 'M4 1v6M1 4h6',
  'bean beetle': 'M2 4a2 2 0 1 1 4 0a2 2 0 1 1 -4 0',
  silkworm: 'M4 0q-5 2 0 4t0 4',
};

const PREY_FORMS = Object.keys(FORM_HATCHES) as PreyForm[];

/** Class that carries a form's hue. */
export const hueClass = (form: PreyForm): string => `hue-${form.replace(' ', '-')}`;

const hatchId = (chart: string, form: PreyForm, wide: boolean): string =>
  `${chart}-${form.replace(' ', '-')}${wide ? '-wide' : ''}`;

/** Fill for a species' hatch: the second species of a form gets the same lines, wider apart. */
export const hatchFill = (chart: string, species: ReadonlyMap<string, PreyName>, code: string): string => {
  const prey = species.get(code);
  if (prey === undefined) return 'none';
  const alike = [...species.values()].filter((other) => other.form === prey.form);
  return `url(#${hatchId(chart, prey.form, alike.findIndex((other) => other.code === code) > 0)})`;
};

export const missingFill = (chart: string): string => `url(#${chart}-missing)`;

const WIDE_SCALE = 1.8;

/** The patterns of one chart; ids carry the chart's name, so that no chart leans on another. */
export const Hatches = ({ chart }: { chart: string }) => (
  <defs>
    {PREY_FORMS.flatMap((form) =>
      [false, true].map((wide) => (
        <pattern
          id={hatchId(chart, form, wide)}
          width="8"
          height="8"
          patternUnits="userSpaceOnUse"
          patternTransform={wide ? `scale(${WIDE_SCALE})` : 'scale(1)'}
        >
          <path d={FORM_HATCHES[form]} class="hatch-line" />
        </pattern>
      )),
    )}
    <MissingPattern chart={chart} />
  </defs>
);

/** Only the red hatch, for charts that show no species. */
export const MissingPattern = ({ chart }: { chart: string }) => (
  <pattern id={`${chart}-missing`} width="8" height="8" patternUnits="userSpaceOnUse">
    <rect width="8" height="8" class="missing-ground" />
    <path d="M0 8L8 0M-2 2L2 -2M6 10L10 6" class="missing-line" />
  </pattern>
);
