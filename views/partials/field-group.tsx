/** Fields that belong together, under a heading of their own. */
import type { Child } from 'hono/jsx';

export const FieldGroup = ({ legend, children }: { legend: string; children?: Child }) => (
  <fieldset class="field-group">
    <legend>{legend}</legend>
    {children}
  </fieldset>
);
