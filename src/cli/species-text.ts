/** The sheet of a species as lines for people. */

import { percent, sentenceCase } from '../../views/format.ts';
import type { SpeciesSheet, StageSheet } from '../husbandry/larder/index.ts';
import { table } from './table.ts';

const oneDecimal = (n: number): string => n.toFixed(1);
const NUMBERS = new Set(['days', 'spread', 'survive', 'mass', 'length', 'alive', 'age']);

export function sheetLines(sheet: SpeciesSheet): readonly string[] {
  const adult = { name: 'hatch to adult', ...sheet.hatchToAdult };
  return [
    `${sentenceCase(sheet.commonName)} (${sheet.name}) at ${sheet.tempC} °C`,
    ...sheet.remarks,
    '',
    ...table(['stage', 'days', 'spread', 'survive'], [...sheet.stages, adult].map(stageRow), NUMBERS),
    `Adults live ${oneDecimal(sheet.adultDays)} days on average.`,
    ...(sheet.byAge.length > 0 ? ['', ...agesOf(sheet)] : []),
    ...growthLine(sheet),
  ];
}

const stageRow = ({ name, days, cv, survival }: Omit<StageSheet, 'kind'>): readonly string[] => [
  name,
  days === null ? 'none' : oneDecimal(days),
  percent(cv),
  survival === null ? 'none' : percent(survival),
];

const agesOf = ({ byAge }: SpeciesSheet): readonly string[] =>
  table(
    ['age', 'length', 'mass', 'alive'],
    byAge.map(({ ageDays, lengthMm, massMg, alive }) => [
      `${ageDays} days`,
      `${oneDecimal(lengthMm)} mm`,
      `${oneDecimal(massMg)} mg`,
      percent(alive),
    ]),
    NUMBERS,
  );

function growthLine({ growth }: SpeciesSheet): readonly string[] {
  if (growth === null) return [];
  const grows = `A colony with room changes by a factor of ${growth.perWeek.toFixed(2)} a week`;
  const doubles =
    growth.doublingDays === null ? '' : ` and doubles in ${oneDecimal(growth.doublingDays)} days`;
  return ['', `${grows}${doubles}.`];
}
