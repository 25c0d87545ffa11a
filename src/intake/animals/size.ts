/** The gauge of one animal from its size, unit and stage cells. */
import { type Kind, tooLarge } from '../../husbandry/animals/index.ts';
import type { Mm } from '../../husbandry/units.ts';
import { isBlank } from '../cells/blank.ts';
import { type LengthUnit, readLength, readUnit } from '../cells/length.ts';
import type { StageRead } from '../cells/stage.ts';
import { inMm, quote } from '../quoting.ts';
import { type Note, said, trouble } from '../reading.ts';
import { gaugeOfInstar, gaugeOfStage } from './assumed-size.ts';

export interface GaugeRead {
  readonly gaugeMm: Mm;
  readonly assumed: boolean;
}

interface SizeCells {
  readonly size: string;
  readonly unit: string;
  /** Unit named by the heading or given for the whole file. */
  readonly fileUnit: LengthUnit | null;
  readonly stage: StageRead | null;
  readonly stageText: string;
}

const GENEROUS = 1.25;

function assumedGauge(kind: Kind, { stage, stageText }: SizeCells, notes: Note[]): GaugeRead {
  const assume = (gaugeMm: Mm, from: string): GaugeRead => {
    notes.push(said('size-assumed', `Size assumed from ${from}: ${inMm(gaugeMm)}.`));
    return { gaugeMm, assumed: true };
  };
  if (stage?.stage) return assume(gaugeOfStage(kind, stage.stage), quote(stageText));
  if (stage?.instar) return assume(gaugeOfInstar(kind, stage.instar), quote(stageText));
  return assume(gaugeOfStage(kind, 'juvenile'), 'the middle of a juvenile, as the row tells no more');
}

/** The gauge, measured or assumed; null while its unit is not known. */
export function readGauge(kind: Kind, cells: SizeCells, notes: Note[]): GaugeRead | null {
  if (isBlank(cells.size)) return assumedGauge(kind, cells, notes);
  const length = readLength(cells.size, readUnit(cells.unit) ?? cells.fileUnit);
  if (!length.ok && length.problem.code === 'size-without-unit') return null;
  if (!length.ok) {
    notes.push(trouble(length.problem));
    return assumedGauge(kind, cells, notes);
  }
  const { mm, range } = length.value;
  const beyond = tooLarge(kind, mm, quote(cells.size));
  if (beyond !== null) {
    notes.push(trouble(beyond));
    return assumedGauge(kind, cells, notes);
  }
  if (range) notes.push(said('size-range', `Size ${inMm(mm)}: the middle of ${quote(cells.size)}.`));
  const [, largest] = kind.adultGaugeMm.value;
  if (mm > largest * GENEROUS)
    notes.push(
      said(
        'size-over-kind',
        `${quote(cells.size)} is more than ${kind.commonName} grows to (${inMm(largest)}).`,
      ),
    );
  return { gaugeMm: mm, assumed: false };
}
