/** What script adds to paper: a button that prints, and Enter or an arrow that goes on to the next cell of a sheet keyed in. */
{
  for (const button of document.querySelectorAll('[data-print]')) {
    button.hidden = false;
    button.addEventListener('click', () => window.print());
  }

  const STEPS = { Enter: 1, ArrowDown: 1, ArrowUp: -1 };

  document.addEventListener('keydown', (event) => {
    const step = STEPS[event.key];
    if (step === undefined || !event.target.matches?.('.key-cell') || event.isComposing) return;
    event.preventDefault();
    const cells = [...document.querySelectorAll('.key-cell, .key-in-end')];
    const next = cells[cells.indexOf(event.target) + step];
    next?.focus();
    next?.select?.();
  });
}
