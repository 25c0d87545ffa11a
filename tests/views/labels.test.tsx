/** Labels: what stands on each, how many a sheet holds, and that the code leads where the address does. */
import { describe, expect, it } from 'vitest';
import { Qr, qrOf } from '../../views/charts/qr.tsx';
import { LabelSheets, labelsPerSheet, sheetsOf } from '../../views/pages/label-sheets.tsx';
import { LabelsPage } from '../../views/pages/labels.tsx';
import { readQr } from '../support/qr-reader.ts';
import { labelsProps } from '../support/view-history.ts';
import { markup } from '../support/view-pages.tsx';

const ADDRESSES = [
  'http://preylarder.local:8181/a/A12',
  'http://192.168.1.20:8181/b/B3',
  'http://x/a/A1',
  'https://larder_of_the_long_name.example/a/A1234',
  'http://[fe80::1234:5678:9abc:def0]:8181/a/A7',
];

describe('the code on a label', () => {
  it.each(ADDRESSES)('holds the address %s, by a reader of its own', (address) => {
    expect(readQr(qrOf(address)).toLowerCase()).toBe(address.toLowerCase());
  });

  it('is in capitals where the standard packs them closer', () => {
    expect(readQr(qrOf(ADDRESSES[0]!))).toBe('HTTP://PREYLARDER.LOCAL:8181/A/A12');
    expect(qrOf(ADDRESSES[0]!)).toHaveLength(25);
    expect(readQr(qrOf(ADDRESSES[4]!))).toBe(ADDRESSES[4]);
    expect(readQr(qrOf(ADDRESSES[3]!))).toBe(ADDRESSES[3]);
  });

  it('is one path with four modules of white around it', () => {
    const drawn = markup(<Qr address={ADDRESSES[0]!} />);
    expect(drawn).toContain('viewBox="-4 -4 33 33"');
    const path = /<path d="([^"]+)"/.exec(drawn)![1]!;
    const rows = Array.from({ length: 25 }, () => Array<boolean>(25).fill(false));
    for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g))
      rows[Number(y)]!.fill(true, Number(x), Number(x) + Number(run));
    expect(rows).toEqual(qrOf(ADDRESSES[0]!));
  });
});

describe('the sheets', () => {
  it('hold as many as fit between the margins', () => {
    const held = (['small', 'medium', 'large'] as const).map((size) => [
      labelsPerSheet(size, 'a4'),
      labelsPerSheet(size, 'letter'),
    ]);
    expect(held).toEqual([
      [44, 40],
      [21, 21],
      [10, 10],
    ]);
  });

  it('begin after the places already used, and go on to the next sheet', () => {
    expect(sheetsOf(['a', 'b', 'c'], 2, 1)).toEqual([
      [null, 'a'],
      ['b', 'c'],
    ]);
    expect(sheetsOf(['a', 'b', 'c'], 2, 0)).toEqual([['a', 'b'], ['c']]);
    expect(sheetsOf([], 2, 0)).toEqual([]);
  });

  it('show address first, then code, name, kind and cautions, each on its label', () => {
    const html = markup(<LabelSheets labels={labelsProps.labels!} size="small" paper="letter" skip={1} />);
    const labels = html.split('<li').slice(1);
    expect(labels).toHaveLength(5);
    expect(labels[0]).toContain('class="used"');
    expect(labels[3]!.replace(/<[^>]+>/g, '|').replace(/\|+/g, '|')).toContain(
      'preylarder.local:8181/animals/A3|A3|Duchess of the long and winding name|Vietnamese giant centipede|venomous: long tweezers; bolts|',
    );
  });

  it('say how many labels on how many sheets, and warn of an address no phone can open', () => {
    const page = markup(
      <LabelsPage {...labelsProps} asked={{ ...labelsProps.asked, size: 'large', skip: 8 }} />,
    );
    expect(page).toContain('4 labels on 2 sheets');
    expect(page).toContain('which a phone cannot open');
    expect(markup(<LabelsPage {...labelsProps} onlyHere={false} />)).not.toContain(
      'which a phone cannot open',
    );
  });
});
