import type { Memory } from './clause.ts';
import type { Interpretation } from './interpret.ts';
import type { Part, TipsSaid } from './part.ts';
import type { TimeSpan } from './times/time-span.ts';

/** A scanner or tip that was filled in is spoken of as well. */
export function rememberFacts(read: Interpretation, memory: Memory): void {
  const ids = read.result.made.flatMap(({ entry }) =>
    typeof entry.scanner === 'string' ? [entry.scanner] : [],
  );
  memory.frame = read.frame.name;
  const outcome = read.result.made[0]?.entry.outcome;
  if (outcome === 'passed' || outcome === 'failed') memory.outcome = outcome;
  const at = read.result.made.find(({ entry }) => typeof entry.site === 'string')?.entry;
  if (typeof at?.site === 'string')
    memory.place = { site: at.site, ...(typeof at.room === 'string' ? { room: at.room } : {}) };
  // "Both off and washed": what follows is of both too.
  const first = read.result.made[0];
  const tips = first?.entry.tips;
  if (
    Array.isArray(tips) &&
    typeof first?.said.tips === 'string' &&
    memory.tips !== null &&
    tips.length > memory.tips.ids.length
  )
    memory.tips = { ...memory.tips, ids: tips.map(String) };
  const items = read.result.made[0]?.entry.items;
  if (Array.isArray(items) && items.length > 0) memory.items = items.map(String);
  if (ids.length > 0) memory.scanners = [...new Set(ids)];
}

function together(first: TipsSaid | null, more: TipsSaid): TipsSaid {
  return first === null ? more : { ...first, ids: [...new Set([...first.ids, ...more.ids])] };
}

function rememberTime(span: TimeSpan, memory: Memory): void {
  if (span.days.length > 0) memory.days = span.days;
  const [clock, more] = span.clocks;
  if (clock?.sort === 'time' && clock.hour !== null && more === undefined) memory.clock = clock;
}

/** Keeps what the clause spoke of, for those after it that leave it out. */
export function remember(parts: readonly Part[], memory: Memory): void {
  const items: string[] = [];
  const scanners = parts.flatMap((p) => (p.entity?.is === 'scanner' ? p.entity.ids : []));
  if (scanners.length > 0) {
    memory.scanners = [...new Set(scanners)];
    items.push(...memory.scanners.map((id) => `scanner:${id}`));
  }
  let tips: TipsSaid | null = null;
  for (const part of parts) {
    const { entity } = part;
    if (entity?.is === 'time') rememberTime(entity.span, memory);
    if (entity?.is === 'tips' && (entity.ids.length > 0 || entity.which !== undefined)) {
      if (tips === null && memory.tips !== null) memory.tipsBefore = memory.tips;
      tips = together(tips, entity);
      memory.tips = tips;
      memory.named = [...new Set([...memory.named, ...entity.ids])];
      items.push(...entity.ids.map((id) => `tip:${id}`));
    }
    if (entity?.is === 'load') {
      memory.load = entity;
      items.push(`load:${entity.ids[0]}`);
    }
    if (entity?.is === 'autoclave' && entity.id !== null) {
      memory.autoclave = entity.id;
      items.push(`autoclave:${entity.id}`);
    }
  }
  if (items.length > 0) memory.items = items;
}
