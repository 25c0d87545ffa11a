/** Animals: the list on the ruler, the record, the form that keeps what was typed. */
import { describe, expect, it } from 'vitest';
import { AnimalFormPage } from '../../views/pages/animal-form.tsx';
import { AnimalsPage } from '../../views/pages/animals.tsx';
import { insides, tags, words } from '../support/markup-words.ts';
import { animal } from '../support/view-fixtures.ts';
import { markup } from '../support/view-pages.tsx';
import { animalFormProps, animalsProps } from '../support/view-props.ts';

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
