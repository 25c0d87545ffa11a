/** The larder: what is alive, how big, where it goes; deliveries; one bin and what may be said of it. */
import { describe, expect, it } from 'vitest';
import { BinPage } from '../../views/pages/bin.tsx';
import { BinFormPage } from '../../views/pages/bin-form.tsx';
import { LarderPage } from '../../views/pages/larder.tsx';
import { attributes, insides, tags, words } from '../support/markup-words.ts';
import { bins, deliveries, forms, TODAY } from '../support/view-fixtures.ts';
import { markup } from '../support/view-pages.tsx';
import { binFormProps, binProps, larderProps } from '../support/view-props.ts';

describe('the larder', () => {
  const html = markup(<LarderPage {...larderProps} />);
  const said = words(html);

  it('opens with what is alive, without heads nobody counted', () => {
    expect(words(insides(html, 'h1')[0] ?? '')).toBe(
      'Alive here: about 95 banded crickets, 90 mealworms and 80 dubia roaches',
    );
  });
  it('says of each bin how many, how big, where they go, when somebody looked', () => {
    expect(said).toContain('Banded crickets, Spare room about 95 9–18 mm');
    expect(said).toContain(
      'about 60 eaten, about 14 die, about 6 outgrow everyone, about 25 left 9 days ago',
    );
  });
  it('knows a cup by its looks, not its heads', () => {
    expect(said).toContain('producing, 2 days ago');
    expect(said).not.toContain('about 420');
  });
  it('asks of a delivery how many came alive, dead, or of another size', () => {
    expect(said).toContain('Sun 29 Nov: 250 banded crickets, 4–6 mm, for Cricket box 1');
    expect(html).toContain('action="/deliveries/D1/arrived"');
    expect(attributes(html, 'name')).toEqual(expect.arrayContaining(['alive', 'dead', 'size']));
    expect(said).toContain('Keep new stock apart for a week');
  });
  it('opens the form of a delivery that is due', () => {
    const due = markup(<LarderPage {...larderProps} deliveries={[{ ...deliveries[0]!, day: TODAY - 2 }]} />);
    expect(words(due)).toContain('Overdue since Fri 20 Nov');
    expect(tags(due, 'details').filter((tag) => tag.includes(' open'))).toHaveLength(1);
  });
  it('tells a bin nobody counted from one that is empty, and a guess from a count', () => {
    const [first, ...others] = larderProps.answers;
    const shown = (headsNow: { low: number; mid: number; high: number }, lookedDaysAgo: number | null) =>
      words(
        markup(<LarderPage {...larderProps} answers={[{ ...first!, headsNow, lookedDaysAgo }, ...others]} />),
      );
    expect(shown({ low: 0, mid: 0, high: 0 }, null)).toContain('not counted yet');
    expect(shown({ low: 0, mid: 0, high: 0 }, 2)).toContain('none');
    expect(shown({ low: 28, mid: 190, high: 1264 }, 84)).toContain('30 to 1300');
  });
  it('says so when it is empty, and asks for a bin before a delivery', () => {
    const empty = words(markup(<LarderPage {...larderProps} bins={[]} answers={[]} deliveries={[]} />));
    expect(empty).toContain('The larder is empty');
    expect(empty).toContain('Add the bin it will go into first.');
  });
});

describe('one bin', () => {
  const html = markup(<BinPage {...binProps} />);

  it('tells its heads with their doubt', () => {
    expect(words(html)).toContain('Cricket box 1: about 95 alive');
    expect(words(html)).toContain('in 9 cases of 10 between 62 and 140');
  });
  it('takes a look or a size with one tap', () => {
    const taps = tags(html, 'button').filter((tag) => /name="(level|sizeClass)"/.test(tag));
    expect(taps.flatMap((tag) => attributes(tag, 'value'))).toEqual([
      ...['none', 'a few', 'a quarter', 'half', 'full'],
      ...['pinhead', 'small', 'medium', 'large'],
    ]);
  });
  it('offers no look by eye where nobody said what full is', () => {
    expect(markup(<BinPage {...binProps} bin={bins[1]!} />)).not.toContain('name="level"');
  });
  it('shows a refused count beside its field, opened', () => {
    const refused = {
      form: 'count',
      values: { heads: 'lots' },
      problems: { heads: '"lots" is not a count.' },
    };
    const again = markup(<BinPage {...binProps} forms={{ ...forms, refused }} />);
    expect(again).toContain('value="lots"');
    expect(again).toContain('aria-describedby="count-heads-problem"');
    expect(tags(again, 'details').filter((tag) => tag.includes(' open'))).toHaveLength(1);
  });
  it('asks a cup only what can be seen', () => {
    const cup = markup(<BinPage {...binProps} bin={bins[3]!} answer={null} />);
    const looks = tags(cup, 'button').filter((tag) => tag.includes('name="look"'));
    expect(looks).toHaveLength(7);
    expect(words(cup)).not.toContain('Heads alive');
  });
});

it('a new bin asks what it is, what is in it and of what size', () => {
  const html = markup(<BinFormPage {...binFormProps} />);
  expect(attributes(html, 'name')).toEqual(
    expect.arrayContaining([
      'role',
      'species',
      'name',
      'room',
      'capacity',
      'keepAdults',
      'space',
      'origin',
      'heads',
      'size',
      'day',
    ]),
  );
  expect(words(markup(<BinFormPage {...binFormProps} bin={bins[2]!} />))).toContain('Change Roach tub');
});
