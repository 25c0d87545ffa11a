/** Labels on sheets to be cut: address and short code first, then name, kind, cautions and a small QR code. */
import { Qr } from '../charts/qr.tsx';

export interface LabelText {
  /** 'A12', large. */
  readonly code: string;
  /** 'preylarder.local:8181/animals/A12', to be typed. */
  readonly address: string;
  /** The short address in full, which the QR code holds. */
  readonly link: string;
  readonly name: string;
  readonly kind: string;
  /** 'venomous: long tweezers; bolts'; empty for none. */
  readonly cautions: string;
}

export type LabelSize = 'small' | 'medium' | 'large';
export type Paper = 'a4' | 'letter';

/** Width and height of a label in millimetres; three, four or two across fill 180 mm. */
export const LABEL_MM: Readonly<Record<LabelSize, readonly [width: number, height: number]>> = {
  small: [45, 25],
  medium: [60, 35],
  large: [90, 50],
};
const SHEET_WIDTH_MM = 180;
/** Height that stays between the margins. */
const SHEET_HEIGHT_MM: Readonly<Record<Paper, number>> = { a4: 277, letter: 259 };

const labelsAcross = (size: LabelSize): number => SHEET_WIDTH_MM / LABEL_MM[size][0];
export const labelsPerSheet = (size: LabelSize, paper: Paper): number =>
  labelsAcross(size) * Math.floor(SHEET_HEIGHT_MM[paper] / LABEL_MM[size][1]);

interface SheetsProps {
  readonly labels: readonly LabelText[];
  readonly size: LabelSize;
  readonly paper: Paper;
  /** Places already used on the first sheet. */
  readonly skip: number;
}

export const LabelSheets = ({ labels, size, paper, skip }: SheetsProps) => (
  <div class={`label-sheets is-${size} on-${paper}`}>
    {sheetsOf(labels, labelsPerSheet(size, paper), skip).map((places) => (
      <ol class="label-sheet">
        {places.map((label) => (label === null ? <li class="used" /> : <Label {...label} />))}
      </ol>
    ))}
  </div>
);

/** Places of each sheet in turn; null for one that is used. */
export function sheetsOf<T>(labels: readonly T[], perSheet: number, skip: number): readonly (T | null)[][] {
  const places = [...Array.from({ length: skip % perSheet }, () => null), ...labels];
  const sheets = Math.ceil(places.length / perSheet);
  return Array.from({ length: sheets }, (_, at) => places.slice(at * perSheet, (at + 1) * perSheet));
}

const Label = ({ code, address, link, name, kind, cautions }: LabelText) => (
  <li class="label">
    <p class="label-address">{address}</p>
    <div class="label-body">
      <div class="label-words">
        <p class="label-code">{code}</p>
        {name === '' || name === code ? null : <p class="label-name">{name}</p>}
        <p class="label-kind">{kind}</p>
      </div>
      <Qr address={link} />
    </div>
    {cautions === '' ? null : <p class="label-caution">{cautions}</p>}
  </li>
);
