import { hasTag, type Part } from './part.ts';
import { LEAVING_OUT } from './spared.ts';

/** "Wiped blue, not red", "blue's calibrated, red still to do": what was not done to another is none of the clause before. */
export function leftOut(parts: readonly Part[]): boolean {
  const things = parts.some(
    (p) => (p.entity !== undefined && LEAVABLE.has(p.entity.is)) || hasTag(p, 'lens') || hasTag(p, 'base'),
  );
  const first = parts.find((p) => !p.mark);
  if (things && first?.entity === undefined && LEAVING_OUT.test(first?.text ?? '')) return true;
  return (
    things &&
    parts.some(
      (p) =>
        p.entity === undefined &&
        (/^(next|later|afterwards)$/.test(p.text) ||
          ['neg', 'oblige', 'intend', 'doubt'].some((tag) => hasTag(p, tag))),
    )
  );
}

const LEAVABLE: ReadonlySet<string> = new Set(['scanner', 'tips', 'autoclave', 'load']);
