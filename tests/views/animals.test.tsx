/** Animals: the list on the ruler, the record, the form that keeps what was typed. */
import { describe, expect, it } from 'vitest';
import { AnimalFormPage } from '../../views/pages/animal-form.tsx';
import { AnimalsPage } from '../../views/pages/animals.tsx';
import { AnimalsChangePage } from '../../views/pages/animals-change.tsx';
import { AnimalsCheckPage } from '../../views/pages/animals-check.tsx';
import { SplitPage } from '../../views/pages/split.tsx';
import { attributes, insides, tags, words } from '../support/markup-words.ts';
import { animal } from '../support/view-fixtures.ts';
import { markup } from '../support/view-pages.tsx';
import {
  animalFormProps,
  animalsChangeProps,
  animalsCheckProps,
  animalsFound,
  animalsProps,
  splitProps,
} from '../support/view-props.ts';

describe('the list of animals', () => {
  it('goes by shelf, each row with its next meal and its bracket', () => {
    const html = markup(<AnimalsPage {...animalsProps} />);
    expect(insides(html, 'caption')).toEqual(['Spare room, Shelf A', 'Spare room, Shelf B']);
    expect(words(html)).toContain('44 animals live here 5 entries: a group kept together is one.');
    expect(words(html)).toContain('Sling tray 2 × 40 Red-legged bird-eater, spiderlings due tonight');
    expect(html).toContain('Hazel takes prey of 4–9 mm');
  });

  it('searches by GET, says when nobody matches and what to leave out', () => {
    const html = markup(<AnimalsPage {...animalsFound('rex')} />);
    expect(words(html)).toContain('None of 5 found: matching “rex”. Show all');
    expect(words(html)).toContain('Without “rex”: 5');
    expect(insides(html, 'search')[0]).toContain('method="get"');
    expect(html).toContain('value="rex"');
  });

  it('offers filters that find somebody, and keeps those that are on', () => {
    const [none, one] = [0, 1].map((count) => ({
      label: `Finds ${count}`,
      count,
      on: false,
      href: '/animals',
    }));
    const on = { label: 'Late', count: 0, on: true, href: '/animals' };
    const html = markup(<AnimalsPage {...animalsProps} filters={[none!, one!, on]} />);
    expect(insides(html, 'ul').map(words)).toContain('Finds 1 1 Late 0');
    expect(tags(html, 'a').filter((tag) => tag.includes('aria-current="true"'))).toHaveLength(1);
  });

  it('lets each be ticked by name, and offers everybody found beyond the page', () => {
    const html = markup(
      <AnimalsPage {...animalsProps} leaves={{ from: 101, to: 200, of: 2345, previous: '/p', next: '/n' }} />,
    );
    expect(words(html)).toContain('Choose Hazel');
    expect(attributes(html, 'value')).toEqual(
      expect.arrayContaining(['A1', 'A6', 'ticked', 'page', 'found']),
    );
    expect(words(html)).toContain('Change those ticked All 100 on this page All 2,345 found');
    expect(words(html)).toContain('Before101–200 of 2,345After');
  });

  it('says who is lent, to whom and when they are expected', () => {
    const said = words(markup(<AnimalsPage {...animalsProps} />));
    expect(said).toContain('1 is lent out');
    expect(said).toContain(
      'Biscuit, Red-legged bird-eater: with the school since 23 Oct 2026, expected back 2 days ago.',
    );
  });

  it('teaches the first steps when nobody lives here', () => {
    const html = markup(<AnimalsPage {...animalsProps} total={0} lent={[]} />);
    expect(words(html)).toContain('Nobody lives here yet');
    expect(words(html)).toContain('Three steps to the first answer');
    expect(insides(html, 'search')).toEqual([]);
  });

  it('shows lengths in inches to whoever measures so', () => {
    expect(markup(<AnimalsPage {...animalsProps} unit="in" />)).toContain('Hazel takes prey of 3/16–3/8 in');
  });
});

describe('the form for an animal', () => {
  const html = markup(<AnimalFormPage {...animalFormProps} />);

  it('keeps what was typed and says beside the field what is wrong', () => {
    expect(html).toContain('value="34 furlongs"');
    expect(html).toMatch(/<option value="mantid" selected/);
    const gauge = tags(html, 'input').find((tag) => tag.includes('name="gauge"')) ?? '';
    expect(gauge).toContain('aria-invalid="true"');
    expect(gauge).toContain('aria-describedby="animal-gauge-problem animal-gauge-hint"');
    expect(words(html)).toContain('"34 furlongs" is not a length; write it as 34 mm or 1 1/4 in.');
    expect(html).toContain('role="alert"');
  });

  it('starts from the record when it changes one', () => {
    const change = markup(
      <AnimalFormPage {...animalFormProps} animal={animal} forms={{ formId: 'f', refused: null }} />,
    );
    expect(words(change)).toContain('Change Hazel');
    expect(change).toContain('action="/animals/A1/edit"');
    expect(change).toContain('value="Hazel"');
    expect(change).not.toContain('role="alert"');
  });
});

describe('many animals at once', () => {
  const change = markup(<AnimalsChangePage {...animalsChangeProps} />);

  it('asks what happens to them by GET, and each form carries who is chosen', () => {
    expect(words(change)).toContain('What happens to 3 animals (42 heads with the groups)?');
    const forms = tags(change, 'form').filter((tag) => tag.includes('/animals/change/'));
    expect(forms).toHaveLength(6);
    expect(forms.every((tag) => tag.includes('method="get"'))).toBe(true);
    expect(attributes(change, 'value').filter((value) => value === 'A4')).toHaveLength(6);
  });

  it('opens the act that was refused, with the sentence beside its field', () => {
    expect(tags(change, 'details').filter((tag) => tag.includes('open'))).toHaveLength(1);
    expect(change).toContain('aria-describedby="move-shelf-problem move-shelf-hint"');
  });

  it('says in words what will change and who, and asks twice for deaths', () => {
    const check = markup(<AnimalsCheckPage {...animalsCheckProps} />);
    expect(insides(check, 'h1').map(words)).toEqual([
      '2 animals died on Sunday 22 November; 1 is so already.',
    ]);
    expect(words(check)).toContain('Yes, all 2 died Write down the death of 2 animals');
    expect(check).toContain('name="sure"');
    expect(markup(<AnimalsCheckPage {...animalsCheckProps} act="move" />)).not.toContain('name="sure"');
  });
});

describe('the page of a group', () => {
  it('says how many may be taken out and what stays', () => {
    const said = words(markup(<SplitPage {...splitProps} />));
    expect(said).toContain('Sling tray 2: 40 heads together');
    expect(said).toContain('At most 39: the last one keeps this record.');
    expect(said).toContain('Empty: as in the group, 8 mm.');
  });
});
