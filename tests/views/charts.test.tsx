/** The pictures: geometry that does not lie, labels that do not collide, words that say the finding. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { densities } from '../../views/charts/densities.ts';
import { lanes, placeAbove } from '../../views/charts/label-places.ts';
import { rulerScale } from '../../views/charts/ruler.tsx';
import { runOutDots } from '../../views/charts/run-out-dots.tsx';
import { SizeSpectrum } from '../../views/charts/size-spectrum.tsx';
import { spectrumShapes } from '../../views/charts/spectrum-shapes.ts';
import { spectrumFinding } from '../../views/charts/spectrum-words.ts';
import { WindowBracket } from '../../views/charts/window-bracket.tsx';
import { attributes, insides, words } from '../support/markup-words.ts';
import { answer, names, shortGroup, spectrum } from '../support/view-fixtures.ts';
import { markup } from '../support/view-pages.tsx';

const frame = { left: 12, right: 828, top: 46, height: 300, ruler: 26 };

describe('the ruler', () => {
  it('gives equal room to equal ratios and holds what is beyond at its ends', () => {
    const x = rulerScale(0, 100);
    expect(x(4) - x(2)).toBeCloseTo(x(40) - x(20), 9);
    expect(x(200)).toBe(100);
    expect(x(0.5)).toBe(0);
  });
});

describe('the size spectrum', () => {
  it('says what is missing as its title', () => {
    expect(spectrumFinding(spectrum, 'mm')).toBe(
      'Prey of 3.5–8 mm is missing: about 45 more wanted than there',
    );
    const enough = { ...spectrum, missing: spectrum.missing.map(() => 0) };
    expect(spectrumFinding(enough, 'mm')).toBe('There is prey at every length that is wanted');
    expect(spectrumFinding({ ...enough, alive: [] }, 'mm')).toBe('No prey is on the books');
  });

  it('draws as many heads to the same height above the ruler as below it', () => {
    const flat = {
      edgesMm: [1, 10, 60],
      alive: [{ species: 'a', heads: [40, 0] }],
      eaten: [40, 0],
      missing: [0, 0],
    };
    const { layers, rulerTop, bottom } = spectrumShapes(flat, frame);
    expect(rulerTop - layers[0]!.peak.y).toBeCloseTo(bottom - rulerTop - frame.ruler, 0);
  });

  it('softens no head away', () => {
    const heads = [0, 0, 40, 0, 0, 0, 3];
    const edges = heads.map((_, i) => 2 ** i).concat(2 ** heads.length);
    const total = densities(edges, heads).reduce((all, density) => all + density * Math.log(2), 0);
    expect(total).toBeCloseTo(43, 9);
  });

  it('stays within its frame, and survives an empty larder', () => {
    const shapes = spectrumShapes(spectrum, frame);
    expect(shapes.skyline(0, 1000)).toBeGreaterThanOrEqual(frame.top - 0.1);
    expect(shapes.bottom).toBeLessThanOrEqual(frame.top + frame.height + frame.ruler + 0.1);
    const none = spectrumShapes({ edgesMm: [1, 60], alive: [], eaten: [0], missing: [0] }, frame);
    expect(`${none.eaten}${none.missing}`).not.toContain('NaN');
  });

  it('names species and groups, and tables the heads by length', () => {
    const html = markup(
      <SizeSpectrum spectrum={spectrum} groups={answer.groups} species={names.species} unit="mm" />,
    );
    const said = words(html);
    for (const name of ['large fruit flies', 'dubia roaches', 'spiderlings', 'giants'])
      expect(said).toContain(name);
    expect(said).toContain('Prey by length: alive now, eaten and missing until the end of the check');
    expect(attributes(html, 'class')).toContain('missing');
    expect(insides(html, 'title')).toHaveLength(2);
  });
});

describe('labels', () => {
  const wish = fc.record({
    x: fc.integer({ min: 0, max: 800 }),
    y: fc.integer({ min: 0, max: 300 }),
    width: fc.integer({ min: 20, max: 200 }),
  });
  const sky = { left: 0, right: 800, skyline: () => 200 };

  it('never lie on one another and stay within the picture', () => {
    fc.assert(
      fc.property(fc.array(wish, { maxLength: 12 }), (wishes) => {
        const placed = placeAbove(
          wishes.map(({ x, y, width }, i) => ({ text: `${i}`, x, y, width, subject: { x, y } })),
          sky,
        );
        placed.forEach((a, i) => {
          expect(a.x - a.width / 2).toBeGreaterThanOrEqual(0);
          expect(a.x + a.width / 2).toBeLessThanOrEqual(800);
          for (const b of placed.slice(i + 1)) {
            const apart = Math.abs(a.x - b.x) >= (a.width + b.width) / 2 || Math.abs(a.y - b.y) >= 17;
            expect(apart).toBe(true);
          }
        });
      }),
    );
  });

  it('share a lane only when they do not touch', () => {
    expect(
      lanes([
        { from: 0, to: 50 },
        { from: 40, to: 90 },
        { from: 60, to: 100 },
      ]),
    ).toEqual([0, 1, 0]);
  });
});

describe('the run-out dots', () => {
  const dots = (chance: number) => runOutDots({ chance, day: shortGroup.runOut.day }, 7);
  const total = (columns: number[]) => columns.reduce((sum, n) => sum + n, 0);

  it('are one for each twentieth of the chance, within its days', () => {
    expect(dots(0.63)).toEqual([0, 0, 2, 3, 3, 3, 2]);
    expect(total(dots(0.63))).toBe(13);
  });
  it('are never none when there is a chance and never all when there is doubt', () => {
    expect(total(dots(0.01))).toBe(1);
    expect(total(dots(0.99))).toBe(19);
    expect(total(dots(0))).toBe(0);
  });
});

it('an animal longer than the ruler is marked at its end, and its length is said', () => {
  const html = markup(
    <WindowBracket
      id="w"
      name="Duchess"
      window={{ minMm: 22, idealMm: 36, maxMm: 55 }}
      ownLengthMm={78}
      unit="mm"
    />,
  );
  expect(html).toContain('Duchess takes prey of 22–55 mm');
  expect(html).toContain('its own body is 78 mm long');
  expect(html).toContain('beyond');
});
