/** The words of a colony start: when, with how many, from when; what is said when it cannot be. */
import { describe, expect, it } from 'vitest';
import { ColonyCosts } from '../../views/charts/colony-costs.tsx';
import { ColonyPath } from '../../views/charts/colony-path.tsx';
import { ColonyAnswerPart, type ColonyTold } from '../../views/pages/colony-answer.tsx';
import { bridgeWords, colonyHeadline } from '../../views/pages/colony-words.ts';
import { start, told } from '../support/view-colony.ts';
import { TODAY } from '../support/view-fixtures.ts';
import { markup } from '../support/view-pages.tsx';

const begun = (over: Partial<ColonyTold['start']>): ColonyTold => ({ ...told, start: { ...start, ...over } });
const WEEK = 7;

describe('the headline', () => {
  it('begins today and names the day from which the harvest lasts', () => {
    expect(colonyHeadline(told)).toBe(
      'Start 10 females and 4 males today to take 60 medium dubia roaches a week from about 26 September 2027',
    );
  });

  it('begins as late as the wanted day allows', () => {
    const readyOn = TODAY + 50 * WEEK;
    expect(colonyHeadline({ ...told, readyOn })).toMatch(
      /^Start 10 females and 4 males by 3 January 2027 to take .* from about 7 November 2027$/,
    );
  });

  it('says that a wanted day is too soon, and which day it would be', () => {
    expect(colonyHeadline({ ...told, readyOn: TODAY + WEEK })).toMatch(
      /^Too late for 29 November 2026: 10 females and 4 males started today give .* from about 26 September 2027$/,
    );
  });

  it('says that it never comes', () => {
    expect(colonyHeadline(begun({ lastsFrom: null }))).toBe(
      'Begun with 10 females and 4 males, a colony does not come to give 60 medium dubia roaches a week for good within 3 years',
    );
  });
});

it('tells what is bought meanwhile, and that an early harvest falls off again', () => {
  expect(bridgeWords(begun({ firstHarvest: 26, fullHarvest: 26 }))).toBe(
    'Until then buy about 2,000. All of them are there in week 26 for the first time, but then fewer again for a while: breeders of one age grow old together.',
  );
  expect(bridgeWords(begun({ bridge: 0 }))).toBe('Nothing has to be bought meanwhile.');
});

it('gives breeders, bins, heat and chance as a keeper would say them', () => {
  const page = markup(<ColonyAnswerPart shown={{ state: 'told', told }} />);
  expect(page).toContain('34 females and 9 males. 93 of 100 such colonies give all that is wanted');
  expect(page).toContain('Spare room is colder: warm the bins by 4 degrees by day and 8 by night.');
  expect(page).toContain('3 bins. About 1,200 alive at most.');
  expect(page).toContain('Of 100 colonies about 7 are lost within a year.');
  expect(page).toContain('check the local rules');
  expect(page).toContain('Take no prey from the wild');
});

it('is fetched while it is worked out, and can be waited for without script', () => {
  const working = { state: 'working', answerAt: '/answer?a=1', waitAt: '/page?a=1&wait=1' } as const;
  const part = markup(<ColonyAnswerPart shown={working} />);
  expect(part).toContain('data-hx-get="/answer?a=1"');
  expect(part).toContain('href="/page?a=1&amp;wait=1"');
  const busy = { state: 'none', sentence: 'Ask again in a moment.', again: '/page?a=1' } as const;
  expect(markup(<ColonyAnswerPart shown={busy} />)).toContain('Ask again in a moment.');
});

it('draws the way to half a year beyond its last mark, and tables the same weeks', () => {
  const picture = markup(<ColonyPath id="path" told={told} />);
  expect(picture).toContain(
    '<title id="path-title">A first harvest in week 26, all that is wanted from week 44, after about 2,000 bought</title>',
  );
  expect(picture.match(/<tr>/g)).toHaveLength(1 + 47 + 26);
  expect(picture).toContain('week 47: paid for');
});

it('says of costs when the colony is cheaper, or that buying stays cheaper', () => {
  const costs = start.costs!;
  expect(markup(<ColonyCosts id="costs" told={told} costs={costs} />)).toContain(
    'Cheaper than buying from about 17 October 2027',
  );
  const never = begun({ breakEven: null });
  expect(markup(<ColonyCosts id="costs" told={never} costs={costs} />)).toContain('Buying stays cheaper');
});
