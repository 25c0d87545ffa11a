/** The keys in words: a list for the help page, and the same list in a dialog for `?`. */

interface Key {
  readonly keys: readonly string[];
  readonly does: string;
}

const KEYS: readonly Key[] = [
  { keys: ['/'], does: 'find an animal' },
  { keys: ['?'], does: 'show this list' },
  { keys: ['j', '↓'], does: 'to the next row of the round or the morning' },
  { keys: ['k', '↑'], does: 'to the row before' },
  {
    keys: ['1', '2', '3'],
    does: 'what became of the row: tonight as offered, not fed, otherwise; in the morning the answers in their order',
  },
  { keys: ['u'], does: 'go to Undo; Enter then undoes' },
];

export const KeyList = () => (
  <dl class="keys">
    {KEYS.map(({ keys, does }) => (
      <div>
        <dt>
          {keys.map((key) => (
            <kbd>{key}</kbd>
          ))}
        </dt>
        <dd>{does}</dd>
      </div>
    ))}
  </dl>
);

/** Shown by script alone: without it there are no keys to turn off. */
export const KeysSwitch = () => (
  <button type="button" class="keys-switch" role="switch" aria-checked="true" data-keys-switch hidden>
    Single keys
  </button>
);

export const KeysDialog = () => (
  <dialog id="keys-help" class="keys-help" aria-labelledby="keys-help-title">
    <h2 id="keys-help-title">Keys</h2>
    <KeyList />
    <p class="note">They rest while you type. Kept on this device:</p>
    <p class="acts">
      <KeysSwitch />
      <button type="button" data-close>
        Close
      </button>
    </p>
  </dialog>
);
