/** The way in, on a server with a password. */
import { Document } from '../document.tsx';
import { entryOf, Field, type PageForms, PostForm } from '../partials/form.tsx';
import type { ThemeChoice } from '../partials/theme.tsx';
import { paths } from '../paths.ts';

/** Form 'login' posts `password` and `next`, the path asked for. */
export interface LoginProps {
  readonly theme: ThemeChoice;
  readonly forms: PageForms;
  readonly next: string;
}

export const LoginPage = ({ theme, forms, next }: LoginProps) => {
  const entry = entryOf(forms, 'login');
  return (
    <Document title="Log in" theme={theme}>
      <main id="main" class="doorstep">
        <p class="brand">Preylarder</p>
        <h1>Will the feeders last the week?</h1>
        <PostForm entry={entry} action={paths.login}>
          <input type="hidden" name="next" value={next} />
          <Field
            entry={entry}
            name="password"
            label="Password"
            type="password"
            autocomplete="current-password"
            required
          />
          <button type="submit" class="act-here">
            Come in
          </button>
        </PostForm>
      </main>
    </Document>
  );
};
