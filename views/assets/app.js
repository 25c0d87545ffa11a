// What script adds: no double sending, "/" to search, "u" to the undo, the sheet kept until it is sent.
// Everything works without it.
(() => {
  const AGAIN_AFTER_MS = 8000;
  const typing = (element) => element.matches('input, select, textarea, [contenteditable]');

  // A form is sent once; after eight seconds without an answer it may be sent again.
  document.addEventListener('submit', (event) => {
    const form = event.target;
    if (form.dataset.sent === 'yes') {
      event.preventDefault();
      return;
    }
    form.dataset.sent = 'yes';
    for (const button of form.querySelectorAll('button')) button.setAttribute('aria-disabled', 'true');
    setTimeout(() => release(form), AGAIN_AFTER_MS);
  });

  function release(form) {
    delete form.dataset.sent;
    for (const button of form.querySelectorAll('button')) button.removeAttribute('aria-disabled');
  }

  // A page brought back by the back button may be sent again.
  window.addEventListener('pageshow', (event) => {
    if (event.persisted) document.querySelectorAll('form').forEach(release);
  });

  document.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || typing(event.target)) return;
    const target = { '/': document.querySelector('#q'), u: document.querySelector('#undo-last') }[event.key];
    if (!target) return;
    event.preventDefault();
    target.focus();
  });

  // Marks of the round survive a reload: kept on this device under the form and its day until they are sent.
  const round = document.querySelector('.round-form');
  if (!round) return;
  const key = `preylarder ${round.id} ${round.elements.namedItem('day').value}`;
  const boxes = () => [...round.querySelectorAll('input[type=checkbox]')];
  const marks = () =>
    boxes()
      .filter((box) => box.checked)
      .map((box) => `${box.name} ${box.value}`);
  const kept = new Set(JSON.parse(localStorage.getItem(key) ?? '[]'));
  for (const box of boxes()) if (kept.has(`${box.name} ${box.value}`)) box.checked = true;
  round.addEventListener('change', () => localStorage.setItem(key, JSON.stringify(marks())));
  round.addEventListener('submit', () => localStorage.removeItem(key));
})();
