import type { NoteScope } from './clause.ts';
import type { Draft } from './clauses.ts';
import type { Output } from './output.ts';
import { hasTag, type Part } from './part.ts';
import type { TimeSpan } from './times/time-span.ts';

/** "Arvo all,": a part of the day that greets. */
export function isGreeting(parts: readonly Part[], span: TimeSpan): boolean {
  // "Day off tomorrow so I'm taking Wanda now".
  if (parts.some((p) => p.entity === undefined && /^(off|day off|holiday|on holiday)$/.test(p.text)))
    return true;
  return (
    span.part !== undefined &&
    span.days.every(({ first }) => first.sort === 'offset' && first.days === 0) &&
    span.clocks.length === 0 &&
    span.to - span.from === 1 &&
    parts.some((p) => p.entity === undefined && !p.mark)
  );
}

/** "0920 tip 2 used, tip 2 washed": a clock time that opens the note covers what follows too. */
export function headTimeOf(draft: Draft, scope: NoteScope, out: Output): void {
  const entity = draft.parts[0]?.entity;
  if (entity?.is !== 'time' || !out.empty || entity.span.clocks.length !== 1) return;
  if (entity.span.range === undefined && entity.span.shift === undefined) scope.headTime ??= entity.span;
}

/** "Two scans on Saturday, 9.15 and 10.45": figures and times behind bookings are when they are. */
export function isBookedTimes(last: Draft, draft: Draft): boolean {
  if (last.sentence !== draft.sentence || draft.parts.some((p) => p.text === 'scans')) return false;
  const scans = last.parts.some((p) => p.entity === undefined && /^scans$/.test(p.text));
  return (
    scans &&
    last.parts.some((p) => p.entity?.is === 'time') &&
    !last.parts.some((p) => p.entity?.is === 'scanner') &&
    draft.parts.every(
      (p) =>
        p.mark ||
        p.entity?.is === 'time' ||
        (p.entity?.is === 'site' && draft.parts.some((one) => one.entity?.is === 'time')) ||
        (p.entity?.is === 'number' && !p.unknown) ||
        (p.entity?.is === 'tips' && !p.entity.named && p.entity.which === undefined) ||
        (p.entity === undefined && p.text === 'at'),
    )
  );
}

/** "BI positive. Ran Tuesday.": the day a test ran, as a sentence of its own. */
export function isRunDay(last: Draft, draft: Draft): boolean {
  return (
    last.parts.some((p) => hasTag(p, 'spore')) &&
    draft.parts.length <= 5 &&
    draft.parts.some((p) => p.entity?.is === 'time' && p.entity.span.days.length > 0) &&
    draft.parts.every(
      (p) => p.mark || p.entity?.is === 'time' || hasTag(p, 'run') || /^(it|was|on|from)$/.test(p.text),
    )
  );
}

/** The first time that a draft says, `null` where it says none. */
export function spanIn(draft: Draft): TimeSpan | null {
  const entity = draft.parts.find((p) => p.entity?.is === 'time')?.entity;
  return entity?.is === 'time' ? entity.span : null;
}

/** "Wiped, cover on, at quarter past two": a time set off at the end is of every clause before it. */
export function coversAll(list: readonly Draft[], draft: Draft): boolean {
  const last = list[list.length - 1];
  if (last?.sentence !== draft.sentence || draft.joint !== ',' || list.length < 2) return false;
  return list.every((d) => d.parts.every((p) => p.entity?.is !== 'time'));
}
