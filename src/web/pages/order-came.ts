/** The form of a box that came, read into what the act is told: a line for each delivery, and one that nobody had ordered. */
import type { z } from 'zod';
import { civilDay, heads, headsOrNone } from '../../actions/fields.ts';
import { type Problem, problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Facts } from '../../husbandry/snapshot.ts';
import { PERCENT } from '../../husbandry/units.ts';
import { readMass } from '../../intake/index.ts';
import type { DeliveryRow } from '../../store/index.ts';
import { type Lengths, lengthsChosen, speciesChosen } from './choices.ts';
import { intoChosen } from './prey-into.ts';
import { anyText, maybe, typed } from './typed.ts';

const ALIVE = /^alive-(D\d+)$/;
const text = anyText;
const mass = anyText.superRefine((given, context) => {
  const read = given === '' ? ok(0) : readMass(given);
  if (!read.ok) context.addIssue({ code: 'custom', message: read.problem.sentence });
});
const none = (field: z.ZodType) => maybe(field).transform((given) => given ?? '');

/** As many lines as the form has. */
export function boxShape(sent: readonly string[]): Record<string, z.ZodType<string>> {
  const codes = sent.flatMap((name) => ALIVE.exec(name)?.[1] ?? []);
  const lines = codes.flatMap((code) => [
    ...['alive', 'dead'].map((name) => [`${name}-${code}`, none(headsOrNone)]),
    ...['part', 'sampleHeads'].map((name) => [`${name}-${code}`, none(heads)]),
    ...['sampleMass', 'allMass'].map((name) => [`${name}-${code}`, mass]),
    ...['share', 'size', 'into'].map((name) => [`${name}-${code}`, text]),
  ]);
  return {
    ...{ day: typed(civilDay), at: text, warmed: text, apart: text },
    ...{ extraSize: text, extraAlive: none(headsOrNone), extraDead: none(headsOrNone), extraInto: text },
    ...Object.fromEntries(lines),
  };
}

type Given = Readonly<Record<string, string>>;

interface Known {
  readonly facts: Facts;
  readonly ordered: readonly DeliveryRow[];
}

export type BoxGiven = ReturnType<typeof boxOf>;

export function boxGiven(given: Given, known: Known): Result<BoxGiven> {
  const lines: LineGiven[] = [];
  for (const code of Object.keys(given).flatMap((name) => ALIVE.exec(name)?.[1] ?? [])) {
    const line = lineGiven(given, code, known);
    if (!line.ok) return line;
    lines.push(line.value);
  }
  const extra = extraGiven(given, known.facts);
  return extra.ok ? ok(boxOf(given, lines, extra.value)) : extra;
}

const boxOf = (
  { day = '', at, warmed, apart }: Given,
  lines: readonly LineGiven[],
  extra: readonly ExtraGiven[],
) => ({
  day,
  ...(at === undefined || at === '' ? {} : { at }),
  warmed: warmed === 'on',
  apart: apart === 'on',
  lines: [...lines],
  extra: [...extra],
});

type LineGiven = Extract<ReturnType<typeof lineGiven>, { ok: true }>['value'];

function lineGiven(given: Given, delivery: string, { facts, ordered }: Known) {
  const said = (name: string): string => given[`${name}-${delivery}`] ?? '';
  const came = cameGiven(said);
  if (!came.ok) return err({ ...came.problem, field: `${came.problem.field}-${delivery}` });
  const sized = sizeGiven(said('size'), facts, `size-${delivery}`);
  if (!sized.ok) return sized;
  const { species = '', ...lengths } = sized.value;
  const asOrdered = ordered.find(({ code }) => code === delivery)?.species === species;
  return ok({
    ...{ delivery, came: came.value, dead: said('dead') || '0', ...lengths },
    ...{ species: asOrdered ? '' : species, ...intoChosen(said('into')) },
  });
}

/** Counted whole where a number is there, else in part, else weighed; else as on the label. */
function cameGiven(said: (name: string) => string) {
  const [alive, part, share, sample] = ['alive', 'part', 'share', 'sampleHeads'].map(said) as [
    string,
    string,
    string,
    string,
  ];
  const [sampleMass, allMass] = [massOf(said('sampleMass')), massOf(said('allMass'))];
  if (alive !== '') return ok({ how: 'whole' as const, alive });
  if (part !== '' || share !== '') return partGiven(part, share);
  if (sample === '' && sampleMass === null)
    return ok(allMass === null ? { how: 'label' as const } : { how: 'weighed' as const, allMg: allMass });
  if (sample === '' || sampleMass === null || allMass === null) return err(HALF_A_SAMPLE);
  return ok({ how: 'sample' as const, heads: sample, massMg: sampleMass, allMg: allMass });
}

const HALF_A_SAMPLE = problem(
  'half-a-sample',
  'Of a sample three are needed: how many, what they weigh, and what all weigh.',
  'sampleHeads',
);

function partGiven(part: string, share: string) {
  const percent = Number(share.replace(',', '.').replace('%', ''));
  if (part === '') return err(problem('half-a-part', 'Say how many were counted in that part.', 'part'));
  if (share === '' || !(percent > 0 && percent <= PERCENT))
    return err(
      problem('no-share', `"${share}" is no part of a box; write it in percent, such as 25.`, 'share'),
    );
  return ok({ how: 'part' as const, heads: part, share: percent / PERCENT });
}

function massOf(given: string): number | null {
  const read = given === '' ? null : readMass(given);
  return read?.ok ? read.value : null;
}

interface Sized extends Lengths {
  readonly species: string;
}

/** The species and lengths of a size chosen; nothing where it was left as ordered. */
function sizeGiven(value: string, facts: Facts, field: string): Result<Partial<Sized>> {
  if (value === '') return ok({});
  const species = facts.species.get(speciesChosen(value));
  if (species === undefined)
    return err(problem('other-size', `"${value}" is not a size in the Book.`, field));
  const lengths = lengthsChosen(value, species, field);
  return lengths.ok ? ok({ species: species.code, ...lengths.value }) : lengths;
}

type ExtraGiven = Extract<ReturnType<typeof extraGiven>, { ok: true }>['value'][number];

function extraGiven(
  { extraSize = '', extraAlive = '', extraDead = '', extraInto = '' }: Given,
  facts: Facts,
) {
  const isCounted = [extraAlive, extraDead].some((many) => many !== '' && many !== '0');
  if (extraSize === '') return isCounted || extraInto !== '' ? err(NO_SIZE) : ok([]);
  if (!isCounted) return err(NO_HEADS);
  const species = facts.species.get(speciesChosen(extraSize));
  if (species === undefined)
    return err(problem('other-size', `"${extraSize}" is not a size in the Book.`, 'extraSize'));
  const lengths = lengthsChosen(extraSize, species, 'extraSize');
  if (!lengths.ok) return lengths;
  const how = { alive: extraAlive || '0', dead: extraDead || '0', ...intoChosen(extraInto) };
  return ok([{ species: species.code, ...lengths.value, ...how }]);
}

const NO_SIZE = problem(
  'no-size',
  'Say what it was; where nothing else was in the box, leave the rest of it empty.',
  'extraSize',
);
const NO_HEADS = problem('no-heads', 'Say how many there were, alive or dead.', 'extraAlive');

const FIELDS: Readonly<Record<string, string>> = {
  'came.alive': 'alive',
  'came.heads': 'part',
  'came.share': 'share',
  'came.massMg': 'sampleMass',
  'came.allMg': 'allMass',
  dead: 'dead',
  fromMm: 'size',
  species: 'size',
};

/** A problem of the act beside the field of its line. */
export function besideLine(said: Problem, lines: readonly { readonly delivery: string }[]): Problem {
  const [, part, at, field = ''] = /^(lines|extra)\.(\d+)\.(.+)$/.exec(said.field ?? '') ?? [];
  if (part === 'extra') return { ...said, field: EXTRA[field] ?? 'extraInto' };
  const line = lines[Number(at)];
  return line === undefined ? said : { ...said, field: `${FIELDS[field] ?? 'into'}-${line.delivery}` };
}

const EXTRA: Readonly<Record<string, string>> = {
  alive: 'extraAlive',
  dead: 'extraDead',
  fromMm: 'extraSize',
};
