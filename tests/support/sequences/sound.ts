/** What must hold of the tables after every act and undo, whatever was done before. */

const PLACED = `select code, room as place from animal where left_day is null or left_reason = 'lent'
  union all select code, room from bin where closed = 0
  union all select code, room from planned_change where cancelled = 0
  union all select code, bin from delivery where state = 'expected'`;

const CHECKS = {
  'stands in a room or comes to a bin that was removed': `select p.code from (${PLACED}) p
    where p.place in (select code from room where closed = 1 union select code from bin where closed = 1)`,
  'says what became of an offer that does not count': `select e.id as code from entry e
    join entry o on o.id = e.about where e.voided = 0 and o.voided = 1`,
  'counts though its act does not, or the other way round': `select e.id as code from entry e
    join act a on a.id = e.act where e.voided <> (a.voided_at is not null)`,
  'is expected though its order is not placed': `select d.code from delivery d join purchase p on p.code = d.purchase
    where (d.state = 'expected') <> (p.state = 'placed')`,
  'is of a kind of the keeper that is gone': `select code from animal
    where kind glob 'K[0-9]*' and kind not in (select code from kind)`,
};

/** Sentences on what does not hold; none when all does. */
export const unsound = {
  sql: Object.entries(CHECKS)
    .map(([words, sql]) => `select code, '${words}' as words from (${sql})`)
    .join(' union all '),
  args: [],
  decode: (rows: readonly Record<string, unknown>[]) => rows.map(({ code, words }) => `${code} ${words}`),
};
