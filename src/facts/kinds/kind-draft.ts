/** Builds a kind from one row of a table and what its group shares. */
import type { CautionCode, Kind, KindGroup, StageRule } from '../../husbandry/animals/index.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { memory, practice } from '../sourced.ts';
import type { Range } from './rule-draft.ts';

/** Where the sizes of a row were found: pages without sources, a breeder's note, memory of the trade, or chosen by us. */
export type SizeSource = 'care' | 'general' | 'breeder' | 'memory' | 'own';

export interface KindRow {
  readonly code: string;
  readonly name: string;
  readonly commonName: string;
  readonly aliases?: readonly string[];
  readonly habit: string;
  readonly adult: Range;
  readonly first: Range;
  readonly from: SizeSource;
  readonly note?: string;
  readonly cautions?: readonly CautionCode[];
}

export interface GroupTraits {
  readonly group: KindGroup;
  readonly gauge: string;
  readonly bodyPerGauge: Sourced;
  readonly bodyPerGaugeMale: Sourced | null;
  readonly massPerCubicMm: Sourced;
  readonly cautions: readonly CautionCode[];
}

const sized = (value: Range, from: SizeSource, note?: string): Sourced<Range> => {
  if (from === 'memory') return memory(value, 'mm', note, 'tradeMemory');
  if (from === 'own') return memory(value, 'mm', note);
  const page = { care: 'carePages', general: 'generalPages', breeder: 'breederPages' } as const;
  return practice(value, 'mm', note, page[from]);
};

/** 'b. hamorii' from 'Brachypelma hamorii', as keepers write it; nothing for a genus or a group's word. */
const abbreviated = (name: string): readonly string[] => {
  const [genus, epithet] = name.toLowerCase().split(' ');
  return epithet === undefined || !/^[a-z]+$/.test(epithet) || name === name.toLowerCase()
    ? []
    : [`${genus!.charAt(0)}. ${epithet}`];
};

export const kindOf = (traits: GroupTraits, row: KindRow, stages: readonly StageRule[]): Kind => ({
  code: row.code,
  name: row.name,
  commonName: row.commonName,
  aliases: [...new Set([...abbreviated(row.name), ...(row.aliases ?? [])])],
  group: traits.group,
  habit: row.habit,
  gauge: traits.gauge,
  bodyPerGauge: traits.bodyPerGauge,
  bodyPerGaugeMale: traits.bodyPerGaugeMale,
  massPerCubicMm: traits.massPerCubicMm,
  adultGaugeMm: sized(row.adult, row.from, row.note),
  firstFeedingGaugeMm: sized(row.first, row.from),
  stages,
  cautions: [...new Set([...traits.cautions, ...(row.cautions ?? [])])],
});
