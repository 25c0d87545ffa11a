/** What a prey species does at one constant temperature, with the temperature to be chosen. */
import type { SpeciesSheet, StageSheet } from '../../src/husbandry/larder/index.ts';
import { type LengthUnit, lengthText, percent, sentenceCase } from '../format.ts';
import { paths } from '../paths.ts';

export interface SheetProps {
  readonly code: string;
  readonly unit: LengthUnit;
  readonly sheet: SpeciesSheet;
  /** The temperature as typed, and what is wrong with it; sent as `at`. */
  readonly asked: { readonly typed: string; readonly problem: string | null };
}

export const PreySheet = ({ code, unit, sheet, asked }: SheetProps) => (
  <section aria-labelledby="sheet" class="prey-sheet">
    <h2 id="sheet">At a constant {sheet.tempC} °C</h2>
    <form method="get" action={`${paths.prey(code)}#sheet`} class="search at-temperature">
      <label for="at">At another temperature</label>
      <input
        id="at"
        name="at"
        value={asked.typed}
        {...(asked.problem === null ? {} : { 'aria-invalid': 'true', 'aria-describedby': 'at-problem' })}
      />
      <button type="submit" class="quiet">
        Show
      </button>
      {asked.problem === null ? null : (
        <p class="problem" id="at-problem">
          {asked.problem}
        </p>
      )}
    </form>
    {sheet.remarks.map((remark) => (
      <p class="note">{remark}</p>
    ))}
    <Stages sheet={sheet} />
    <p>
      Adults live {Math.round(sheet.adultDays)} days on average. {growthWords(sheet)}
    </p>
    <Ages sheet={sheet} unit={unit} />
  </section>
);

function growthWords({ growth }: SpeciesSheet): string {
  if (growth === null) return '';
  const times = Number(growth.perWeek.toPrecision(FIGURES));
  return `A colony with room and without harvest becomes ${times} times as many in a week.`;
}
const FIGURES = 3;

const Stages = ({ sheet }: { sheet: SpeciesSheet }) => (
  <table class="stacks prey-stages">
    <thead>
      <tr>
        {['Stage', 'Days', 'Spread', 'Get through alive'].map((head) => (
          <th scope="col">{head}</th>
        ))}
      </tr>
    </thead>
    <tbody>
      {[...sheet.stages, { name: 'hatching to adult', ...sheet.hatchToAdult }].map((stage) => (
        <Stage stage={stage} />
      ))}
    </tbody>
  </table>
);

const Stage = ({ stage: { name, days, cv, survival } }: { stage: Omit<StageSheet, 'kind'> }) => (
  <tr>
    <th scope="row">{sentenceCase(name)}</th>
    <td data-label="Days">{days === null ? 'never' : days.toFixed(1)}</td>
    <td data-label="Spread">{percent(cv)}</td>
    <td data-label="Get through alive">{survival === null ? 'none' : percent(survival)}</td>
  </tr>
);

const Ages = ({ sheet, unit }: { sheet: SpeciesSheet; unit: LengthUnit }) =>
  sheet.byAge.length === 0 ? null : (
    <details>
      <summary>Week by week from hatching</summary>
      <table class="stacks prey-stages">
        <thead>
          <tr>
            {['Age', 'Length', 'Mass', 'Alive'].map((head) => (
              <th scope="col">{head}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sheet.byAge.map(({ ageDays, lengthMm, massMg, alive }) => (
            <tr>
              <th scope="row">{ageDays === 0 ? 'Hatched' : `${ageDays} days`}</th>
              <td data-label="Length">{lengthText(lengthMm, unit)}</td>
              <td data-label="Mass">{Number(massMg.toPrecision(2))} mg</td>
              <td data-label="Alive">{percent(alive)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
