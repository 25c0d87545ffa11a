/** Animals: the list on the ruler, the record, the form that keeps what was typed. */
import { describe, expect, it } from 'vitest';
import { AnimalPage } from '../../views/pages/animal.tsx';
import { AnimalFormPage } from '../../views/pages/animal-form.tsx';
import { AnimalsPage } from '../../views/pages/animals.tsx';
import { attributes, insides, tags, words } from '../support/markup-words.ts';
import { animal } from '../support/view-fixtures.ts';
import { markup } from '../support/view-pages.tsx';
import { animalFormProps, animalProps, animalsProps } from '../support/view-props.ts';

describe('the list of animals', () => {
  it('goes by shelf, each row with its next meal and its bracket', () => {
    const html = markup(<AnimalsPage {...animalsProps} total={44} />);
    expect(insides(html, 'caption')).toEqual(['Spare room, Shelf A', 'Spare room, Shelf B']);
    expect(words(html)).toContain('44 animals live here');
    expect(words(html)).toContain('Sling tray 2 × 40 Red-legged bird-eater, spiderlings due tonight');
    expect(html).toContain('Hazel takes prey of 4–9 mm');
  });

  it('searches by GET and says when nobody matches', () => {
    const html = markup(<AnimalsPage {...animalsProps} query="rex" rows={[]} />);
    expect(words(html)).toContain('Nobody here matches “rex”.');
    expect(insides(html, 'search')[0]).toContain('method="get"');
    expect(html).toContain('value="rex"');
  });

  it('shows lengths in inches to whoever measures so', () => {
    expect(markup(<AnimalsPage {...animalsProps} unit="in" />)).toContain('Hazel takes prey of 3/16–3/8 in');
  });
});

describe('the record of an animal', () => {
  const html = markup(<AnimalPage {...animalProps} />);
  const said = words(html);

  it('opens with the next meal', () => {
    expect(said).toContain('Eats Thursday 26 November: 3 banded crickets of 5–7 mm.');
  });
  it('says that a size was assumed, and how reliably it eats', () => {
    expect(said).toContain('Diagonal leg span 34 mm (assumed from its stage: measure it)');
    expect(said).toContain('9 of 11 offers');
  });
  it('offers every event with its day, a moult between two', () => {
    for (const act of ['moulted', 'measured', 'premoult', 'matured', 'died'])
      expect(html).toContain(`action="/animals/A1/${act}"`);
    expect(attributes(html, 'name')).toEqual(expect.arrayContaining(['found', 'earliest', 'gauge', 'day']));
    expect(html).toContain('value="2026-11-22"');
  });
  it('asks how many died only of a group', () => {
    expect(said).not.toContain('How many');
    expect(words(markup(<AnimalPage {...animalProps} animal={{ ...animal, count: 9 }} />))).toContain(
      'How many',
    );
  });
  it('strikes through what was undone and offers undo for the rest', () => {
    expect(insides(html, 'del')).toEqual(['Died.']);
    expect(tags(html, 'form').filter((tag) => tag.includes('/undo/'))).toHaveLength(3);
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
