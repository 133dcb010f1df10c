import type { Clause, Mood } from '../clause.ts';
import { hasTag } from '../part.ts';
import { cuesOf, requests } from './cues.ts';
import { formsAt, pivotOf } from './forms.ts';
import { isMeant, isPast } from './past.ts';

/** How the clause stands to what it says: only what is stated can become a fact. `future` says that its time lies ahead. */
export function moodOf(c: Clause, verb: number, future: boolean): Mood {
  const pivot = pivotOf(c, verb);
  const cues = cuesOf(c, pivot);
  if (cues.doubt && !(cues.oblige && formsAt(c.parts[pivot]).includes('b'))) return 'doubted';
  if (cues.neg || cues.urge || cues.oblige || requests(c) || isHabit(c, pivot)) return 'void';
  const forms = formsAt(c.parts[pivot]);
  const past = isPast(c, pivot, forms, cues.intend);
  if (cues.intend && isMeant(c, pivot, forms, past)) return 'planned';
  if (past) return future ? 'planned' : 'stated';
  if (forms.includes('s')) return future ? 'planned' : 'stated';
  if (forms.includes('g')) return future || !PROGRESS.has(tagAt(c, pivot)) ? 'planned' : 'stated';
  return c.carries || (future && c.intends) ? 'planned' : 'void';
}

/** "Every tip gets washed before bagging", "usually sent on Fridays": told of always. */
function isHabit(c: Clause, pivot: number): boolean {
  const done = ['wash', 'bag', 'wipe', 'clean', 'calibrate', 'send', 'sterilise', 'cover', 'check', 'use'];
  return (
    c.has('habit') || (c.parts[pivot - 1]?.text === 'gets' && done.some((tag) => hasTag(c.parts[pivot], tag)))
  );
}

/** What is under way is a fact already: nothing more needs to happen for it. */
const PROGRESS = new Set([
  'scan',
  'take',
  'bring',
  'go',
  'move',
  'leave',
  'travel',
  'run',
  'start',
  'send',
  'load',
  'be',
  'fog',
  'disconnect',
  'sick',
  'lose',
  'hold',
  'get',
  'come',
  'cold',
  'shut',
  'finish',
  'open',
  'incubate',
  'sterilise',
  'put',
  'drop',
  'retire',
  'cancel',
  'fail',
  'crack',
  'tear',
]);

function tagAt(c: Clause, at: number): string {
  return c.parts[at]?.senses.find((s) => s.sort === 'verb' && s.form === 'g')?.tag ?? '';
}
