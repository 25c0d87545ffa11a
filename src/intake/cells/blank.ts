/** Cells that say nothing: empty, a dash, a question mark, "never", "unknown". */

const NOTHING = new Set(
  'never|none|nothing|unknown|unkn|unk|n/a|na|nil|null|tba|tbc|not known|not yet|no record|nie|noch nie|unbekannt|keine|jamais|inconnu|inconnue|aucun|aucune|nunca|desconocido|ninguno|ninguna'.split(
    '|',
  ),
);

export const isBlank = (text: string): boolean =>
  /^[\s?\-–—./*]*$/.test(text) || NOTHING.has(text.trim().toLowerCase());
