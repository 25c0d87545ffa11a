/** The round and the morning: exceptions are tapped, the rest is one button. */
import { describe, expect, it } from 'vitest';
import { MorningPage } from '../../views/pages/morning.tsx';
import { TonightPage } from '../../views/pages/tonight.tsx';
import { attributes, insides, tags, words } from '../support/markup-words.ts';
import { evening, forms, serving } from '../support/view-fixtures.ts';
import { markup } from '../support/view-pages.tsx';
import { earlierRoundProps, morningProps, tonightProps } from '../support/view-props.ts';

const html = markup(<TonightPage {...tonightProps} />);
const said = words(html);
const ticked = (page: string) => tags(page, 'input').filter((tag) => / checked/.test(tag));
/** Marks and choices made; each choice stands at first at what is shown, whose value is ''. */
const checked = (page: string) => ticked(page).filter((tag) => !tag.includes('value=""'));

describe('the round', () => {
  it('goes by shelf and says what to offer, how many, out of which bin', () => {
    expect(insides(html, 'h2').slice(0, 2)).toEqual(['Shelf A', 'Shelf B']);
    expect(said).toContain('Mr Wick late since Fri 20 Nov 3 banded crickets, 9–12 mm from Cricket box 1');
    expect(said).toContain('1 dubia roach, 30–36 mm from Roach tub kill first cut into 2');
  });

  it('shows what to mind, and whom not to feed with the reason', () => {
    expect(said).toContain('Live prey never stays with an animal about to moult.');
    expect(said).toContain('kicks hairs');
    expect(said).toContain('Tansy: moulted on Friday 20 November; wait until 27 November.');
  });

  it('ticks nothing beforehand and marks as not fed whoever finds nothing that fits', () => {
    expect(checked(html)).toEqual([]);
    expect(html).toContain('<input type="hidden" name="notFed" value="A1"/>');
  });

  it('shows again what was marked when it is refused', () => {
    const refused = { form: 'round', values: { moulted: 'A3' }, problems: { 'heads:A2': 'Not a count.' } };
    const again = markup(<TonightPage {...tonightProps} forms={{ ...forms, refused }} />);
    const open = tags(again, 'details').filter((tag) => / open/.test(tag));
    expect(open).toHaveLength(2);
    expect(checked(again)).toHaveLength(1);
  });

  it('says what the page is for when nobody lives here', () => {
    const empty = { ...evening, servings: [], withheld: [] };
    const html = markup(<TonightPage {...tonightProps} evening={empty} anybody={false} nextDay={null} />);
    expect(words(html)).toContain('Add an animal or bring in a list');
  });

  it('feeds 150 animals with 15 exceptions in at most 45 taps, nothing typed', () => {
    const choices = [
      { bin: 'B4', species: 'tenebrio', heads: 3, fromMm: 18, toMm: 22, killFirst: false, portions: 1 },
    ];
    const servings = Array.from({ length: 150 }, (_, i) => serving(`N${i}`, 'Shelf A', { choices }));
    const big = markup(<TonightPage {...tonightProps} evening={{ ...evening, servings }} />);
    const round = /<form[^>]*id="round".*?<\/form>/s.exec(big)![0];
    const inputs = tags(round, 'input');
    expect(inputs.filter((tag) => !/type="(hidden|checkbox|radio)"/.test(tag))).toEqual([]);
    const named = (name: string) => inputs.filter((tag) => tag.includes(`name="${name}"`)).length;
    const closed = round.replace(/<details class="otherwise".*?<\/details>/gs, '');
    /** Taps for a mark: one in the open, else one more for the disclosure it stands in. */
    const taps = (name: string) => (closed.includes(`name="${name}"`) ? 1 : 2);
    expect(['notFed', 'premoult', 'moulted', 'died'].map(named)).toEqual([150, 150, 150, 150]);
    expect([named('heads:N7'), named('bin:N7'), taps('notFed')]).toEqual([4, 2, 1]);
    const marks = ['premoult', 'moulted', 'died', 'heads:N1', 'heads:N2', 'heads:N3', 'bin:N4', 'bin:N5'];
    const exceptions = [...Array<string>(7).fill('notFed'), ...marks];
    expect(exceptions.reduce((sum, name) => sum + taps(name), 0) + 1).toBeLessThanOrEqual(45);
    expect(words(round)).toContain('3 mealworms from Mealworm tray');
    expect(insides(round, 'button').map(words).filter(Boolean)).toEqual([
      'Show it so (Shelf A)',
      'This shelf is done (Shelf A)',
      'Everyone else got theirs',
    ]);
  });

  it('names every mark for a screen reader by its animal', () => {
    expect(said).toContain('Not fed (Mr Wick)');
    expect(said).toContain('Died (Duchess)');
  });

  it('keeps marks and counts when it is refused, with the problem beside the field', () => {
    const refused = {
      form: 'round',
      values: { notFed: 'A2,A5', 'heads:A3': '-4' },
      problems: { 'heads:A3': '"-4" is not a count; write 0 or more.' },
    };
    const again = markup(<TonightPage {...tonightProps} forms={{ ...forms, refused }} />);
    expect(checked(again).flatMap((tag) => attributes(tag, 'value'))).toEqual(['A2', '-4', 'A5']);
    expect(again).toContain('value="-4"');
    expect(again).toContain('aria-describedby="round-heads:A3-problem"');
    expect(words(again)).toContain('"-4" is not a count; write 0 or more.');
  });

  it('says plainly which other evening is written down, and leads back', () => {
    const earlier = words(markup(<TonightPage {...earlierRoundProps} />));
    expect(earlier).toContain('You are writing down Thursday 19 November, 3 days ago, not tonight.');
    expect(earlier).toContain('4 animals were due that evening');
    expect(earlier).toContain('Back to tonight');
    expect(said).toContain('Yesterday evening, Saturday 21 November');
  });

  it('sets side by side what two people said, with the way to change it', () => {
    const earlier = markup(<TonightPage {...earlierRoundProps} />);
    expect(words(earlier)).toContain(
      'Hazel: you said “premoult”, the record says “offered 2 banded crickets from Cricket box 1” and stands.',
    );
    expect(words(earlier)).toContain('Round of Thu 19 Nov: 2 fed, 0 not, 12 minutes ago: Biscuit offered 3');
    expect(tags(earlier, 'form').filter((tag) => tag.includes('action="/undo/41"'))).toHaveLength(2);
  });

  it('tells what was used, what is left, and which bin to count', () => {
    const earlier = words(markup(<TonightPage {...earlierRoundProps} />));
    expect(earlier).toContain('Used 40 banded crickets, 6 dubia roaches and 60 large fruit flies');
    expect(earlier).toContain('Fed 40 out of Cricket box 1, which was thought to hold about 25.');
    expect(earlier).toContain('Roach tub now holds about 110: count it?');
    expect(earlier).toContain('Fly cup 7 now holds 360.');
  });

  it('leads to last time’s outcomes while they wait', () => {
    expect(said).toContain('Say what became of 4 meals from last time');
  });

  it('says when the next round is when nobody is due', () => {
    const free = { ...evening, servings: [], feedingDay: false };
    const none = words(markup(<TonightPage {...tonightProps} evening={free} />));
    expect(none).toContain('Nobody is due tonight');
    expect(none).toContain('Tonight is not one of your feeding days. Next round: Tuesday 24 November.');
    expect(none).toContain('Feeding all the same? Write down who got what');
  });
});

describe('the morning', () => {
  const morning = markup(<MorningPage {...morningProps} />);

  it('shows likely moulters first, with live prey to take out', () => {
    const text = words(morning);
    expect(text.indexOf('Look here first: may moult')).toBeLessThan(text.indexOf('Mr Wick'));
    expect(text.indexOf('Duchess')).toBeLessThan(text.indexOf('Mr Wick'));
    expect(text).toContain('Live prey never stays with an animal about to moult. Take it out now.');
  });

  it('offers one outcome of four a meal, none ticked, and one button for the rest', () => {
    const radios = tags(morning, 'input').filter((tag) => tag.includes('type="radio"'));
    expect(radios.flatMap((tag) => attributes(tag, 'value'))).toEqual(
      morningProps.rows.flatMap(() => ['taken', 'part-taken', 'refused', 'moulted']),
    );
    expect(new Set(radios.flatMap((tag) => attributes(tag, 'name'))).size).toBe(morningProps.rows.length);
    expect(checked(morning)).toEqual([]);
    expect(words(morning)).toContain('The rest ate');
  });

  it('is at rest when every meal is accounted for', () => {
    expect(words(markup(<MorningPage {...morningProps} rows={[]} />))).toContain(
      'Every meal is accounted for',
    );
  });
});
