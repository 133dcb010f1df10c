import type { Clause } from '../clause.ts';

/** Place of the site that was left ("left the docks with the scanner"), said right behind the verb; −1 where none is. */
export function leftFrom(c: Clause): number {
  const verb = c.form('leave', 'd');
  if (verb < 0) return -1;
  const next = c.parts.findIndex(
    (p, i) => i > verb && (p.entity !== undefined || !/^(the|there|now|just|here)$/.test(p.text)),
  );
  return c.parts[next]?.entity?.is === 'site' && c.prep(next) === '' ? next : -1;
}
