/** First steps: what a room without animals or prey says. */
import { paths } from '../paths.ts';

interface FirstStepsProps {
  readonly animals: boolean;
  readonly prey: boolean;
  /** Fresh id for the form that shows the demo room. */
  readonly formId: string;
}

/** What is still needed before the Sunday check can answer; nothing when all is there. */
export const FirstSteps = ({ animals, prey, formId }: FirstStepsProps) =>
  animals && prey ? null : (
    <section class="first-steps">
      <h2>
        <a href={paths.start}>Three steps to the first answer</a>
      </h2>
      <ol>
        <li class={animals ? 'is-done' : ''}>
          <strong>Who eats.</strong>{' '}
          {animals ? (
            'Done.'
          ) : (
            <>
              <a href={paths.newAnimal}>Add an animal</a> or <a href={paths.import}>bring in a list</a>.
            </>
          )}
        </li>
        <li class={prey ? 'is-done' : ''}>
          <strong>What there is to eat.</strong>{' '}
          {prey ? (
            'Done.'
          ) : (
            <>
              <a href={paths.newBin}>Add a bin, colony or fly cup</a> or{' '}
              <a href={paths.import}>bring in a list</a>. A rough count will do.
            </>
          )}
        </li>
        <li>
          <strong>When you feed.</strong> <a href={paths.settings}>Set your feeding days and deliveries</a>.
        </li>
      </ol>
      {animals || prey ? null : (
        <form method="post" action={paths.startDemo}>
          <input type="hidden" name="formId" value={`${formId}.demo`} />
          <button type="submit">Look around a demo room first</button>
        </form>
      )}
    </section>
  );
