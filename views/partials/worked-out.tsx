/** An answer that takes some seconds: worked out once the page is there, waited for without script, or none. */

interface WorkingProps {
  /** Class of the part that is swapped. */
  readonly look: string;
  /** The answer alone. */
  readonly answerAt: string;
  /** The page with the answer. */
  readonly waitAt: string;
  readonly words: string;
}

export const WorkingOut = ({ look, answerAt, waitAt, words }: WorkingProps) => (
  <section
    class={look}
    aria-live="polite"
    data-hx-get={answerAt}
    data-hx-trigger="load"
    data-hx-swap="outerHTML"
  >
    <h1>Working it out …</h1>
    <p class="lede">{words}</p>
    <p class="acts">
      <a class="button quiet" href={waitAt}>
        Wait for it
      </a>
    </p>
  </section>
);

interface NoAnswerProps {
  readonly look: string;
  readonly title: string;
  readonly sentence: string;
  readonly to: { readonly href: string; readonly label: string };
}

export const NoAnswer = ({ look, title, sentence, to }: NoAnswerProps) => (
  <section class={look}>
    <h1>{title}</h1>
    <p class="look" role="alert">
      {sentence}
    </p>
    <p class="acts">
      <a class="button quiet" href={to.href}>
        {to.label}
      </a>
    </p>
  </section>
);
