/** What a stage cell adds to an animal: whether it is a mature male, and whether the keeper calls it adult. */
import type { Kind, LifeStage, Sex } from '../../husbandry/animals/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { isBlank } from '../cells/blank.ts';
import { readLength } from '../cells/length.ts';
import { readStage, type StageRead } from '../cells/stage.ts';
import { inMm, quote } from '../quoting.ts';
import { type Note, said, trouble } from '../reading.ts';
import { stageOfGauge } from './assumed-size.ts';
import type { GaugeRead } from './size.ts';

interface StageFacts {
  readonly matured: boolean;
  readonly stageOverride: LifeStage | null;
}

/** A size cell that holds a stage word instead of a length: "sling". */
export const stageInSize = (size: string, kind: Kind): boolean => {
  if (isBlank(size)) return false;
  const length = readLength(size, 'mm');
  return !length.ok && length.problem.code === 'not-a-size' && readStage(size, kind) !== null;
};

export function stageWritten(text: string, kind: Kind, notes: Note[]): StageRead | null {
  if (isBlank(text)) return null;
  const read = readStage(text, kind);
  if (!read)
    notes.push(
      trouble(
        problem(
          'not-a-stage',
          `${quote(text)} is not a stage; write sling, juvenile, subadult, adult or MM.`,
          'stage',
        ),
      ),
    );
  return read;
}

const matures = (kind: Kind): boolean => kind.stages.some(({ stage }) => stage === 'mature male');

function isMatured(stage: StageRead, sex: Sex, kind: Kind, notes: Note[]): boolean {
  if (!stage.matured && !(stage.stage === 'adult' && sex === 'male')) return false;
  if (sex !== 'female') return matures(kind);
  notes.push(
    trouble(
      problem(
        'sex-not-stage',
        'The sex says female, the stage says mature male; the sex was taken.',
        'stage',
      ),
    ),
  );
  return false;
}

/** The size rules over the stage, but for animals the keeper calls adult: small adults grow no more. */
export function stageFacts(
  stage: StageRead | null,
  { kind, sex, gauge, text }: { kind: Kind; sex: Sex; gauge: GaugeRead; text: string },
  notes: Note[],
): StageFacts {
  if (!stage) return { matured: false, stageOverride: null };
  const matured = isMatured(stage, sex, kind, notes);
  const bySize = stageOfGauge(kind, gauge.gaugeMm);
  if (matured || gauge.assumed || stage.stage === null || stage.stage === bySize)
    return { matured, stageOverride: null };
  const beside = `${quote(text)} beside ${inMm(gauge.gaugeMm)}`;
  if (stage.stage === 'adult') {
    notes.push(said('stage-by-keeper', `${beside}: small for an adult, kept as adult.`));
    return { matured, stageOverride: 'adult' };
  }
  notes.push(said('stage-by-size', `${beside}: by its size it is ${bySize}, and the size is taken.`));
  return { matured, stageOverride: null };
}
