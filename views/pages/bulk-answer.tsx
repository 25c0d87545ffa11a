/** The answer to a bulk order: words, the curve, what becomes of the box, prices and warmth. */
import { civilDate } from '../../src/husbandry/calendar.ts';
import { STOCK_CAUTION } from '../cautions.ts';
import { BulkCurveChart } from '../charts/bulk-curve.tsx';
import { BulkFate } from '../charts/bulk-fate.tsx';
import { BulkWeeks } from '../charts/bulk-weeks.tsx';
import { longDay, money } from '../format.ts';
import { preyName } from '../names.ts';
import { Sources } from '../partials/sources.tsx';
import { NoAnswer, WorkingOut } from '../partials/worked-out.tsx';
import { paths } from '../paths.ts';
import {
  type BulkTold,
  bestOf,
  bulkHeadline,
  curveNow,
  eatenPrice,
  fateWords,
  lastPackWords,
  leastWords,
  manyOf,
  moreWords,
  nearWords,
  packsWords,
  warmthWords,
} from './bulk-words.ts';

export type BulkShown =
  /** Looked for meanwhile; without script it is waited for. */
  | { readonly state: 'working'; readonly answerAt: string; readonly waitAt: string }
  | { readonly state: 'none'; readonly sentence: string; readonly again: string }
  | { readonly state: 'told'; readonly told: BulkTold };

const LOOK = 'bulk-answer';

export const BulkAnswerPart = ({ shown }: { shown: BulkShown }) => {
  if (shown.state === 'working')
    return (
      <WorkingOut
        {...shown}
        look={LOOK}
        words="Boxes of every size are lived through, week by week. It takes some seconds."
      />
    );
  if (shown.state === 'told') return <Told {...shown.told} />;
  const { sentence, again } = shown;
  const label = again === paths.suppliers ? 'To the suppliers' : 'Ask again';
  return (
    <NoAnswer
      look={LOOK}
      title="No count of packs can be named"
      sentence={sentence}
      to={{ href: again, label }}
    />
  );
};

const Told = (told: BulkTold) => (
  <section class={LOOK}>
    <header class="page-head">
      <h1>{bulkHeadline(told)}</h1>
      <p class="lede">{moreWords(told)}</p>
      <p>{[fateWords(told), nearWords(told), leastWords(told)].join(' ').trim()}</p>
      <Order {...told} />
    </header>
    <div class="bulk-parts">
      <section aria-labelledby="bulk-price">
        <h2 id="bulk-price">What each one eaten costs</h2>
        <BulkCurveChart told={told} />
        {warmthWords(told).map((words) => (
          <p>{words}</p>
        ))}
        <p class="caution">{STOCK_CAUTION}</p>
      </section>
      <BulkFate told={told} />
      <Breaks {...told} />
      <BulkWeeks told={told} />
    </div>
    <Origin {...told} />
  </section>
);

/** Leads to the order form with the packs filled in. */
const Order = ({ answer, offer, supplier }: BulkTold) => {
  const packs = answer.curves[0]!.best;
  const sent = civilDate(answer.sent);
  const to = paths.newOrderOf({ supplier: supplier.code, sent, packs: new Map([[offer.code, packs]]) });
  return (
    <p class="acts">
      <a class="button act-here" href={to}>
        Order {packsWords(packs)}
      </a>
      <span>
        from <a href={paths.supplier(supplier.code)}>{supplier.name}</a>, by {longDay(answer.orderBy)}; here
        on {longDay(answer.comes)}
      </span>
    </p>
  );
};

/** The best count at each price of a pack. */
const Breaks = (told: BulkTold) => {
  const { answer, currency } = told;
  if (answer.breaks.length < 2) return <LastPack {...told} />;
  const best = curveNow(told).best;
  return (
    <section aria-labelledby="bulk-breaks">
      <h2 id="bulk-breaks">The best count at each price</h2>
      <div class="scroller">
        <table class="bulk-breaks stacks">
          <thead>
            <tr>
              {['A pack costs', 'Best', 'Each one eaten', 'Eaten'].map((head) => (
                <th scope="col">{head}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {answer.breaks.map(({ fromPacks, packCents, best: point }) => (
              <tr>
                <th scope="row">
                  {money(packCents, currency)}
                  {fromPacks > 1 ? ` from ${packsWords(fromPacks)}` : ''}
                </th>
                <td data-label="Best">
                  {point === null ? 'none' : packsWords(point.packs)}
                  {point?.packs === best ? ' (best of all)' : ''}
                </td>
                <td data-label="Each one eaten">{point === null ? '–' : eatenPrice(point, told)}</td>
                <td data-label="Eaten">{point === null ? '–' : manyOf(point.eaten)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>{lastPackWords(told)}</p>
    </section>
  );
};

const LastPack = (told: BulkTold) => {
  const words = lastPackWords(told);
  return words === '' ? null : <p>{words}</p>;
};

const Origin = (told: BulkTold) => {
  const { offer, names, sources, weeks } = told;
  const prey = preyName(names.species, offer.species);
  const { heads, packs } = bestOf(curveNow(told));
  return (
    <section aria-labelledby="bulk-sources">
      <h2 id="bulk-sources">Where the numbers come from</h2>
      <p>
        Of {packsWords(packs)} of {offer.packHeads.toLocaleString('en-GB')}, {manyOf(heads)} are counted as
        alive: some die on the way, some are packed over the count. They join what is here already, grow at
        the warmth of the bin they go to, and are eaten as the plan feeds for {weeks} weeks, with no other
        order. Who dies of age or finds no room has died uneaten. All are means, and day by day somewhat fewer
        are eaten: up to a seventh in rooms tried.
      </p>
      <p>
        <a href={paths.methodOn('bulk')}>How it is worked out</a>,{' '}
        <a href={paths.prey(offer.species)}>how {prey} grow and die</a>, and{' '}
        <a href={paths.methodOn('senders')}>what a supplier’s boxes teach</a>.
      </p>
      <Sources sources={sources} />
    </section>
  );
};
