/** The larder: what prey is alive here, how big it is, where it is going, and what is on its way. */

import type { Bin, BinRole, ExpectedDelivery } from '../../src/husbandry/larder/index.ts';
import type { BinAnswer, BinGoes, CupCalendar, Lines } from '../../src/husbandry/supply/index.ts';
import { BIN_CAUTION } from '../cautions.ts';
import { PreyStrip, RulerHead } from '../charts/window-bracket.tsx';
import { ago, counted, type LengthUnit, lengthRange, listed, roundly, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type Names, nameOf, preyName } from '../names.ts';
import { aliveWords, comesTo, cupLooks, goes, type Kept, keptWords } from '../partials/bin-words.ts';
import type { Option, PageForms } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { CupsToStart, Insurance } from './larder-breeding.tsx';
import { Deliveries } from './larder-deliveries.tsx';

export interface LarderProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly names: Names;
  readonly bins: readonly Bin[];
  /** The Sunday answer's bins; one without an answer shows what is on record only. */
  readonly answers: readonly BinAnswer[];
  readonly horizonDays: number;
  /** Where the bins are likeliest to go, by code; of the living that are no cups. */
  readonly goes: ReadonlyMap<string, BinGoes>;
  /** How long they are kept apart, and keep. */
  readonly kept: ReadonlyMap<string, Kept>;
  /** Species that are bred here, with their lines. */
  readonly lines: readonly Lines[];
  readonly cups: readonly CupCalendar[];
  readonly deliveries: readonly ExpectedDelivery[];
  /** Trade sizes of each prey species, for deliveries: code to names. */
  readonly sizeClasses: ReadonlyMap<string, readonly Option[]>;
}

const ROLES: readonly { role: BinRole; title: string }[] = [
  { role: 'holding', title: 'Bins' },
  { role: 'colony', title: 'Colonies' },
  { role: 'cup', title: 'Fly cups' },
  { role: 'frozen', title: 'Frozen' },
];

export const LarderPage = (props: LarderProps) => (
  <Layout shell={props.shell} title="Larder" here="larder">
    <header class="page-head">
      <h1>{headline(props)}</h1>
      <p class="acts">
        <a class="button" href={paths.newBin}>
          Add a bin, colony or cup
        </a>
        <a class="button quiet" href={paths.colonyStart}>
          Start a colony
        </a>
        <a class="button quiet" href="#deliveries">
          Deliveries
        </a>
      </p>
      {props.bins.length === 0 ? <FirstPrey /> : <p class="caution">{BIN_CAUTION}</p>}
    </header>
    {ROLES.map(({ role, title }) => (
      <BinsOfRole {...props} role={role} title={title} />
    ))}
    <CupsToStart {...props} />
    <Insurance {...props} />
    <Deliveries {...props} />
  </Layout>
);

const FirstPrey = () => (
  <p class="lede">
    Add each box, colony or fly cup you keep, or <a href={paths.import}>bring in a list</a>. A rough count
    will do; the Sunday check needs one to tell whether it lasts.
  </p>
);

/** 'Alive here: about 340 house crickets and 60 dubia roaches', the most first; cups have no heads to tell. */
function headline({ bins, answers, names }: LarderProps): string {
  if (bins.length === 0) return 'The larder is empty';
  const cups = bins.filter(({ role }) => role === 'cup').length;
  const heads = new Map<string, number>();
  for (const { code, species, headsNow } of answers) {
    const role = bins.find((bin) => bin.code === code)?.role;
    if (role === 'cup' || role === 'frozen') continue;
    heads.set(species, (heads.get(species) ?? 0) + headsNow.mid);
  }
  const alive = [...heads]
    .filter(([, n]) => n >= 1)
    .toSorted((a, b) => b[1] - a[1])
    .slice(0, NAMED_MOST)
    .map(([code, n]) => `${roundly(n)} ${preyName(names.species, code, Math.round(n))}`);
  if (alive.length > 0) return `Alive here: about ${listed(alive)}`;
  return cups > 0 ? `${counted(cups, 'fly cup')} and nothing else` : 'Every bin is empty';
}
const NAMED_MOST = 3;

const STOCK_HEAD: Readonly<Record<BinRole, string>> = {
  holding: 'Alive',
  colony: 'Alive',
  cup: 'Looks',
  frozen: 'Frozen',
};

const BinsOfRole = (props: LarderProps & { role: BinRole; title: string }) => {
  const rows = props.bins.filter((bin) => bin.role === props.role);
  if (rows.length === 0) return null;
  return (
    <section aria-labelledby={props.role}>
      <h2 id={props.role}>{props.title}</h2>
      <table class="bins stacks">
        <thead>
          <tr>
            <th scope="col">Name and prey</th>
            <th scope="col">{STOCK_HEAD[props.role]}</th>
            <th scope="col" class="on-ruler">
              Size now, {props.unit}
              <RulerHead unit={props.unit} />
            </th>
            <th scope="col">Next {counted(props.horizonDays, 'day')}</th>
            <th scope="col">Then</th>
            <th scope="col">Last looked</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((bin) => (
            <BinRow {...props} bin={bin} />
          ))}
        </tbody>
      </table>
    </section>
  );
};

type BinRowProps = LarderProps & { readonly bin: Bin };

const BinRow = (props: BinRowProps) => {
  const { bin, answers, names, shell } = props;
  const answer = answers.find(({ code }) => code === bin.code);
  return (
    <tr>
      <th scope="row">
        <a href={paths.bin(bin.code)}>{bin.name}</a>
        <small>
          {sentenceCase(preyName(names.species, bin.species))}, {nameOf(names.rooms, bin.room)}
        </small>
      </th>
      <td data-label={STOCK_HEAD[bin.role]} class="alive">
        {bin.role === 'cup' ? cupLooks(bin, shell.today) : answer === undefined ? '–' : aliveWords(answer)}
      </td>
      <td class="on-ruler">{answer === undefined ? null : <SizeNow {...props} answer={answer} />}</td>
      <td data-label={`Next ${counted(props.horizonDays, 'day')}`}>
        {answer === undefined ? '–' : goes(answer, bin.role)}
      </td>
      <td data-label="Then">{thenWords(props)}</td>
      <td data-label="Last looked">{answer?.lookedDaysAgo == null ? 'never' : ago(answer.lookedDaysAgo)}</td>
    </tr>
  );
};

/** What it comes to after these days, and how it is kept. */
function thenWords({ bin, goes: ahead, kept, shell: { today } }: BinRowProps): string {
  const [going, keeping] = [ahead.get(bin.code), kept.get(bin.code)];
  const coming = going === undefined ? [] : comesTo({ bin, goes: going, today });
  return sentenceCase([...(keeping === undefined ? [] : keptWords(keeping, today)), ...coming].join('; '));
}

const SizeNow = ({ bin, answer, names, unit }: BinRowProps & { answer: BinAnswer }) => {
  if (answer.headsNow.high < 1) return null;
  const { low, mid, high } = answer.lengthsNow;
  const length = lengthRange(low, high, unit);
  return (
    <>
      <PreyStrip
        id={`bin-${bin.code}`}
        title={`${bin.name}: ${length}`}
        form={names.species.get(bin.species)?.form ?? 'cricket'}
        low={low}
        mid={mid}
        high={high}
      />
      <small>{length}</small>
    </>
  );
};
