import { type Draft, saidIn } from './clauses.ts';
import { hasSort, hasTag, meantWord, type Part } from './part.ts';

/**
 * "3 scans Friday and 2 on Monday", "scans Friday 9 10 11, Monday 2 and 3": what is booked for another day is told without its
 * word, which is put there; one number alone counts, several are times.
 */
export function moreBookings(drafts: readonly Draft[]): readonly Draft[] {
  return drafts.map((draft, i) => {
    const first = drafts[i - 1];
    const told = drafts
      .slice(0, i)
      .some(
        (one) =>
          one.sentence === draft.sentence &&
          saidIn(one).some(isScans) &&
          saidIn(one).some((p) => p.entity?.is === 'time' && p.entity.span.days.length > 0),
      );
    return told && first !== undefined && first.sentence === draft.sentence
      ? ofAnotherDay(draft, tellsTimes(drafts.slice(0, i)))
      : draft;
  });
}

/** "Scans Wed 9 and 10.30, Thurs 2": times were told, so that what follows is one. */
function tellsTimes(before: readonly Draft[]): boolean {
  return before.some((one) =>
    saidIn(one).some((p) => p.entity?.is === 'time' && p.entity.span.clocks.length > 0),
  );
}

function ofAnotherDay(draft: Draft, timed: boolean): Draft {
  const said = saidIn(draft);
  const days = said.filter(saysDay);
  const numbers = said.filter(isBareNumber);
  const plain = said.every(
    (p) =>
      saysDay(p) ||
      isBareNumber(p) ||
      p.entity?.is === 'site' ||
      (p.entity === undefined && hasSort(p, 'glue')),
  );
  if (days.length !== 1 || !plain || numbers.length === 0) return draft;
  const counts = !timed && numbers.length === 1 && countOf(numbers[0]) === 1;
  const parts = counts ? [...draft.parts, SCANS] : [SCANS, ...draft.parts];
  return { ...draft, parts, joint: draft.joint, sort: 'act' };
}

function isScans(part: Part): boolean {
  return part.entity === undefined && (/^scans?$/.test(part.text) || hasTag(part, 'booking'));
}

function saysDay(part: Part): boolean {
  return (
    part.entity?.is === 'time' && part.entity.span.days.length > 0 && part.entity.span.clocks.length === 0
  );
}

function isBareNumber(part: Part): boolean {
  if (part.entity?.is === 'number') return true;
  return part.entity?.is === 'tips' && !part.entity.named && part.entity.which === undefined;
}

function countOf(part: Part | undefined): number {
  const { entity } = part ?? {};
  return entity?.is === 'tips' ? entity.ids.length + entity.unknown.length + entity.choices.length : 1;
}

const SCANS = meantWord('scans', { sort: 'verb', tag: 'scan', form: 'n' });
