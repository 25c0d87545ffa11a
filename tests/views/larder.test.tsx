/** The larder: what is alive, how big, where it goes; deliveries; one bin and what may be said of it. */
import { describe, expect, it } from 'vitest';
import { BinPage } from '../../views/pages/bin.tsx';
import { BinFormPage } from '../../views/pages/bin-form.tsx';
import { LarderPage } from '../../views/pages/larder.tsx';
import { attributes, insides, tags, words } from '../support/markup-words.ts';
import { binProps, binSoonProps, colonyProps, crashedProps, larderProps } from '../support/view-bins.ts';
import { bins, deliveries, forms, TODAY } from '../support/view-fixtures.ts';
import { markup } from '../support/view-pages.tsx';
import { binFormProps } from '../support/view-props.ts';

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
      'about 60 eaten, about 14 die, about 6 outgrow everyone, about 25 left Too large for small juveniles from about Thu 3 Dec 9 days ago',
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
    expect(words(insides(html, 'h1')[0] ?? '')).toBe(
      'Cricket box 1: about 95 alive; too large for small juveniles from about Thu 3 Dec',
    );
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
  it('shows its weeks as pictures that say what they show, with their numbers', () => {
    expect(insides(html, 'figcaption').map(words)).toEqual([
      expect.stringContaining('Falls from about 95 to about 35 by Sun 14 Feb'),
      expect.stringContaining('The middle one is 10 mm long now and 18 mm by Sun 14 Feb'),
    ]);
    expect(words(html)).toContain('Week from Alive From To Small Medium Large');
    expect(words(html)).toContain('Week from Shortest Middle Longest Sun 22 Nov');
  });
  it('says until when each group can eat from it', () => {
    expect(words(html)).toContain(
      'Small juveniles that take 4–12 mm: until about Thu 3 Dec (Mon 30 Nov to Mon 7 Dec)',
    );
    expect(words(html)).toContain('Through the weeks ahead: 1 group');
  });
  it('says what was expected once it was counted, and what was learned on how much evidence', () => {
    expect(words(html)).toContain('130 counted on Fri 13 Nov; about 150 were expected');
    expect(words(html)).toContain('Grow about 1.2 times (0.9 to 1.4) as fast as published');
    expect(words(html)).toContain('Lay about 0.44 times (0.31 to 0.62) as much as published, by the counts');
    expect(words(html)).toContain('Deaths as published: too little to learn from');
    expect(words(html)).toContain('Seen so far: 3 counts, 1 weighing, 2 glances at the size and 41 dead');
  });
  it('answers at once and asks for what takes a while, with script and without', () => {
    const soon = markup(<BinPage {...binSoonProps} />);
    expect(words(insides(soon, 'h1')[0] ?? '')).toContain('too large for small juveniles');
    expect(soon).toContain('data-hx-get="/larder/B1?wait=1"');
    expect(soon).toContain('href="/larder/B1?wait=1"');
    expect(html).not.toContain('wait=1');
  });
  it('takes a crash with one tap, none left first', () => {
    const taps = tags(html, 'button').filter((tag) => tag.includes('name="left"'));
    expect(taps.map((tag) => attributes(tag, 'value')[0])).toEqual(['0', '5', '24']);
  });
  it('asks a cup only what can be seen', () => {
    const cup = markup(<BinPage {...binProps} bin={bins[3]!} goes={null} outlook={null} answer={null} />);
    const looks = tags(cup, 'button').filter((tag) => tag.includes('name="look"'));
    expect(looks).toHaveLength(7);
    expect(words(cup)).not.toContain('Heads alive');
  });
});

describe('a colony', () => {
  const said = words(markup(<BinPage {...colonyProps} />));

  it('opens with how fast it grows and what may be taken each week', () => {
    expect(said).toContain(
      'Roach tub: about 480 alive; doubles in about 7 weeks in the long run; take up to 60 medium a week',
    );
    expect(said).toContain('Once it is full, up to 90 small, or 60 medium, or 35 adult.');
    expect(said).toContain('While it grows, no more than 9 in 100 of each size.');
  });
  it('says what must go for want of room, and how many males are spare', () => {
    expect(said).toContain('Too full: take out about 90 small by about Sat 12 Dec.');
    expect(said).toContain('14 males more than the females need');
    expect(said).toContain('Learned Growth as published: too little to learn from');
  });
});

describe('what is left alone', () => {
  const kept = { ...binProps.kept, restsUntil: TODAY + 21 };

  it('says until when, and that it feeds only those for whom nothing else is there', () => {
    const said = words(markup(<BinPage {...colonyProps} kept={kept} />));
    expect(said).toContain('If nothing is taken out; it is left alone until Sun 13 Dec.');
    expect(said).toContain(
      'Left alone Until Sun 13 Dec: only those for whom nothing else is there are fed from it',
    );
  });
  it('lets nothing be taken before, and is not to be left alone until it is too full', () => {
    const said = words(markup(<BinPage {...colonyProps} kept={kept} />));
    expect(said).not.toContain('take up to 60 medium a week');
    expect(said).toContain(
      'Nothing before Sun 13 Dec: it is left alone. After that, once it is full, up to 90 small, or 60 medium, or 35 adult. While it grows, no more than 9 in 100 of each size.',
    );
    expect(said).toContain(
      'by about Sat 12 Dec. Feed them off, freeze them or split the bin. Leave it alone no longer than that.',
    );
    expect(said).toContain('feed them off, though the rest is left alone');
    const shorter = { ...kept, restsUntil: TODAY + 19 };
    expect(words(markup(<BinPage {...colonyProps} kept={shorter} />))).not.toContain('no longer than that');
  });
  it('says of those it outgrows meanwhile that it does', () => {
    const [first, ...others] = binProps.outlook!.feeds;
    const day = first!.outgrownOn!.mid;
    const until = (restsUntil: number) =>
      words(markup(<BinPage {...binProps} kept={{ ...kept, restsUntil: TODAY + restsUntil }} />));
    expect(others.length).toBeGreaterThan(0);
    expect(until(day)).toContain('), while it is left alone');
    expect(until(day - 1)).not.toContain('while it is left alone');
  });
});

describe('after a crash', () => {
  const said = words(markup(<BinPage {...crashedProps} />));

  it('says who goes short from when, with the chance as cases', () => {
    expect(said).toContain('Cricket box 1 crashed: about 5 left alive');
    expect(said).toContain('Small juveniles go short from about Thu 26 Nov');
    expect(said).toContain('in about 4 cases in 5. Before the loss that was about 1 case in 10.');
  });
  it('says what they can take tonight, what to start, and which bins to look at', () => {
    expect(said).toContain('Tonight They can take about 20 from Roach tub.');
    expect(said).toContain('A cup of large fruit flies: first flies about Tue 8 Dec');
    expect(said).toContain('Order banded crickets, small, by Mon 23 Nov: here on Thu 26 Nov.');
    expect(said).toContain('Look at these today Mealworm tray: came from the same place');
    expect(said).toContain('It may be a virus: move nothing out of it');
  });
});

describe('what is bred', () => {
  const said = words(markup(<LarderPage {...larderProps} />));

  it('says how likely a line is lost, and what another would make of that', () => {
    expect(said).toContain(
      'One line only: about 1 in 60 to lose it within 12 weeks. One more in another room, of another origin, makes that about 1 in 3,700.',
    );
    expect(said).toContain('2 lines that share nothing: about 1 in 3,300 to lose all within 12 weeks.');
  });
  it('says which cups to start when', () => {
    expect(said).toContain('About 120 a week are wanted: start 2 on Sun 22 Nov and 1 on Tue 1 Dec.');
  });
  it('says what each bin comes to, and how it is kept', () => {
    expect(said).toContain('Too large for small juveniles from about Thu 3 Dec');
    expect(said).toContain('Apart until Fri 27 Nov; keeps to Thu 21 Jan');
    expect(said).toContain('Doubles in about 7 weeks in the long run; too full from about Sat 12 Dec');
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
