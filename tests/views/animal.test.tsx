/** One animal's page: the answer, the ladder, the appetite, acts of one tap, the record by months. */
import { describe, expect, it } from 'vitest';
import type { AnimalPageProps } from '../../views/pages/animal.tsx';
import { AnimalPage } from '../../views/pages/animal.tsx';
import { AnimalGoneActPage } from '../../views/pages/animal-gone-act.tsx';
import { attributes, insides, tags, words } from '../support/markup-words.ts';
import { animal, shell, TODAY } from '../support/view-fixtures.ts';
import { intake, refusals } from '../support/view-life.ts';
import { markup } from '../support/view-pages.tsx';
import { animalProps } from '../support/view-props.ts';

const drawn = (over: Partial<AnimalPageProps> = {}): string =>
  markup(<AnimalPage {...animalProps} {...over} />);
const html = drawn();
const said = words(html);

describe('the page of an animal', () => {
  it('opens with the next meal, then the next moult and the prey it then takes', () => {
    const meal = said.indexOf('Eats Thursday 26 November: 3 banded crickets of 5–7 mm.');
    const moult = said.indexOf('Next moult about mid January; then it takes prey of 6–18 mm');
    expect(meal).toBeGreaterThan(0);
    expect(moult).toBeGreaterThan(meal);
    expect(said).toContain('In the larder for it now: about 50 dubia roaches and 12 banded crickets.');
  });

  it('says when nothing in the larder fits', () => {
    expect(words(drawn({ fits: { now: '', after: '' } }))).toContain(
      'In the larder for it now: nothing that fits. At its next size: nothing that fits.',
    );
    expect(words(drawn({ fits: { now: '', after: null } }))).not.toContain('At its next size');
  });

  it('says that a size was assumed, and how reliably it eats', () => {
    expect(said).toContain('Diagonal leg span 34 mm (assumed from its stage: measure it)');
    expect(said).toContain('9 of 11 offers');
  });

  it('links its rule and its label', () => {
    expect(attributes(html, 'href')).toEqual(expect.arrayContaining(['/book/kinds/brachypelma', '/labels']));
  });
});

describe('its appetite', () => {
  const appetite = (over: Partial<AnimalPageProps['appetite']>) =>
    words(drawn({ appetite: { ...animalProps.appetite, ...over } }));

  it('is a share of its own mass against what is right, with what it rests on', () => {
    expect(said).toContain(
      'It eats about 22 % of its own mass a week, which is right for a juvenile: 15 to 50 %.',
    );
    expect(said).toContain('From 7 meals in 9 weeks, give or take 5 points.');
  });

  it('says too much and too little with the act, and holds back while it is unsure', () => {
    const much = { ...intake, verdict: 'too much' as const };
    expect(appetite({ intake: much })).toContain('more than the 15 to 50 % right for a juvenile. Offer less');
    expect(appetite({ intake: { ...much, verdict: 'too little' } })).toContain('Offer more');
    const unsure = appetite({ intake: { ...much, unsure: true } });
    expect(unsure).toContain('perhaps more than the 15 to 50 %');
    expect(unsure).not.toContain('Offer less');
  });

  it('says when there is too little to tell, and draws no meals where there are none', () => {
    const none = appetite({ intake: null, meals: [], refusals: null });
    expect(none).toContain('Its appetite can be told from three meals on');
    expect(drawn({ appetite: { ...animalProps.appetite, meals: [] } })).not.toContain('class="meals"');
  });

  it('tells refusals that are usual from those that are not', () => {
    expect(said).toContain('Two refusals in a row are usual this close to a moult.');
    const odd = { ...refusals, inRow: 3, chance: 0.024, usual: false, phase: 'between moults' as const };
    expect(appetite({ refusals: odd })).toContain(
      'Three refusals in a row are unusual at this point of its cycle: about 1 in 40. Look at it; a vet if it is thin, weak or hurt.',
    );
    expect(appetite({ refusals: { ...odd, chance: 0.00001 } })).toContain('fewer than 1 in 1000');
    expect(appetite({ refusals: { ...refusals, inRow: 1 } })).toContain('One refusal is usual');
  });
});

describe('what may be written down', () => {
  it('takes one tap for today, with the day behind a disclosure, kept in words while the server is away', () => {
    for (const act of ['moulted', 'measured', 'premoult', 'matured', 'died'])
      expect(html).toContain(`action="/animals/A1/${act}"`);
    expect(attributes(html, 'data-keep')).toEqual([
      'Hazel: moult found',
      'Hazel: measured',
      'Hazel: in premoult',
      'Hazel: matured (male)',
      'Hazel: died',
    ]);
    const form = insides(html, 'form').find((inside) => inside.includes('name="found"')) ?? '';
    expect(form.indexOf('<button')).toBeLessThan(form.indexOf('<details'));
    expect(tags(form, 'input').find((tag) => tag.includes('name="found"'))).toContain('value="2026-11-22"');
    expect(attributes(html, 'name')).toEqual(expect.arrayContaining(['found', 'earliest', 'gauge', 'day']));
  });

  it('asks how many died only of a group', () => {
    expect(said).not.toContain('How many');
    expect(words(drawn({ animal: { ...animal, count: 9 } }))).toContain('How many');
  });

  it('leads to the page of the group only from a group, and to what may be done with it', () => {
    expect(drawn({ animal: { ...animal, count: 9 } })).toContain('href="/animals/A1/split"');
    expect(html).not.toContain('/split"');
    expect(html).toContain('href="/animals/change?animal=A1"');
  });

  it('does not offer a mature male to mature again', () => {
    expect(drawn({ animal: { ...animal, matured: true } })).not.toContain('/matured"');
  });

  it('opens what was refused, keeps what was typed, and asks to keep a smaller size as written', () => {
    const refused = {
      form: 'moulted',
      values: { found: '2026-11-21', gauge: '30 mm' },
      problems: { smaller: '30 mm is less than the 34 mm measured before this moult.' },
    };
    const asked = drawn({ forms: { formId: 'f', refused } });
    expect(words(asked)).toContain('30 mm is less than the 34 mm measured before this moult.');
    expect(asked).toContain('value="30 mm"');
    expect(tags(asked, 'input').filter((tag) => tag.includes('name="smaller"'))).toHaveLength(1);
    expect(tags(html, 'input').filter((tag) => tag.includes('name="smaller"'))).toHaveLength(0);
    const form = insides(asked, 'form').find((inside) => inside.includes('name="found"')) ?? '';
    expect(tags(form, 'details')[0]).toContain('open');
  });
});

describe('the record', () => {
  it('goes month by month, with the way to older pages', () => {
    expect(insides(html, 'h3')).toEqual(['November 2026', 'September 2026']);
    expect(attributes(html, 'href')).toContain('/animals/A1?page=2#history');
    expect(said).not.toContain('Newer');
  });

  it('strikes through what was undone and offers undo for what can be', () => {
    expect(insides(html, 'del')).toEqual(['Died.']);
    const undos = attributes(html, 'action').filter((address) => address.startsWith('/undo/'));
    expect(undos).toEqual(['/undo/41', '/undo/31']);
  });

  it('teaches where nothing is written down yet', () => {
    expect(words(drawn({ record: { months: [], newer: null, older: null } }))).toContain(
      'Nothing is written down yet.',
    );
  });
});

it('growth is drawn only where there are sizes to compare', () => {
  expect(said).toContain('From 25 mm to 34 mm in 5 months, as its kind is expected to');
  expect(drawn({ growth: null })).not.toContain('Growth');
});

it('what is written down of one that has left is refused in a sentence, with what was typed', () => {
  const page = words(
    markup(
      <AnimalGoneActPage
        shell={shell}
        name="Hazel"
        reason="died"
        leftDay={TODAY - 2}
        refused={{
          form: 'moulted',
          values: { found: '2026-11-21', gauge: '47 mm', formId: 'x' },
          problems: { '': '…' },
        }}
      />,
    ),
  );
  expect(page).toContain('Hazel died on 20 Nov 2026 (2026-11-20), so “moulted” was not written down.');
  expect(page).toContain('Found on 2026-11-21 Size 47 mm');
});
