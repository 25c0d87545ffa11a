/** The choice of light: as the system, paper by day, dark by night, red for dark-adapted eyes. */
import { paths } from '../paths.ts';

export type ThemeChoice = 'system' | 'light' | 'dark' | 'red';

const THEMES: readonly { value: ThemeChoice; label: string }[] = [
  { value: 'system', label: 'System' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
  { value: 'red', label: 'Red light' },
];

interface ThemeFormProps {
  readonly formId: string;
  readonly theme: ThemeChoice;
  /** Path to come back to. */
  readonly back: string;
}

export const ThemeForm = ({ formId, theme, back }: ThemeFormProps) => (
  <form method="post" action={paths.settingsAct('theme')} class="themes" aria-label="Light">
    <input type="hidden" name="formId" value={`${formId}.theme`} />
    <input type="hidden" name="back" value={back} />
    {THEMES.map(({ value, label }) => (
      <button
        type="submit"
        name="theme"
        value={value}
        class="quiet"
        aria-pressed={value === theme ? 'true' : 'false'}
      >
        {label}
      </button>
    ))}
  </form>
);
