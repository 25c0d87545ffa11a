/** One topic of the method page: words, equations, their symbols with units, the works they come from. */
import type { Child } from 'hono/jsx';

interface TopicProps {
  /** Its place on the page. */
  readonly id: string;
  readonly title: string;
  /** The works it rests on; ours where there is none. */
  readonly source: string;
  readonly children?: Child;
}

export const Topic = ({ id, title, source, children }: TopicProps) => (
  <section class="method-topic" aria-labelledby={id}>
    <h2 id={id}>{title}</h2>
    {children}
    <p class="note">{source}</p>
  </section>
);

export const Equation = ({ children }: { children?: Child }) => <p class="equation">{children}</p>;

/** Symbols with what they stand for and their units. */
export const Symbols = ({ of }: { of: readonly (readonly [symbol: Child, meaning: string])[] }) => (
  <dl class="symbols">
    {of.map(([symbol, meaning]) => (
      <div>
        <dt>{symbol}</dt>
        <dd>{meaning}</dd>
      </div>
    ))}
  </dl>
);

/** A symbol in its own type. */
export const V = ({ children }: { children?: Child }) => <var>{children}</var>;
