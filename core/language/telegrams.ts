import { scanBegun } from './begun.ts';
import { type Draft, saidIn, sortOf } from './clauses.ts';
import { jointOf } from './growth.ts';
import { isLoadDetail } from './joins-of-loads.ts';
import { isLook } from './joins-of-tips.ts';
import { moreBookings } from './more-bookings.ts';
import { hasSort, hasTag, type Part } from './part.ts';
import { timedTwice } from './second-times.ts';
import { TESTS, testLine } from './test-line.ts';

/**
 * Puts together what telegrams set apart with dots, dashes and commas: "Moved scanner. Room 3.", "60 - oven - passed - dry",
 * "Inspected. Tip 1 clean. Tip 2 debris.", "oven - BI in", "go: Ruby, tip 3, surgery 1".
 */
export function togetherAgain(drafts: readonly Draft[]): readonly Draft[] {
  if (drafts.length < 2) return drafts;
  const begun = timedTwice(moreBookings(scanBegun(drafts) ?? drafts));
  const list: Draft[] = [];
  for (let i = 0; i < begun.length; i++) {
    const draft = begun[i];
    if (draft === undefined) continue;
    const line = loadLine(begun, i);
    if (line > 1) {
      list.push(asOne(begun.slice(i, i + line)));
      i += line - 1;
      continue;
    }
    const test = testLine(begun, i);
    if (test > 1) {
      list.push(asOne(begun.slice(i, i + test)));
      i += test - 1;
      continue;
    }
    const looked = lookedAt(begun, i);
    if (looked !== null) {
      list.push(...looked);
      i += looked.length;
      continue;
    }
    const last = list[list.length - 1];
    if (last !== undefined && completes(last, draft, begun, i))
      list[list.length - 1] = asOne([last, { ...draft, parts: draft.parts.map(asNamed) }]);
    else list.push(draft);
  }
  return list;
}

/** Behind the tips of a load, numbers alone are tips too. */
function asNamed(part: Part): Part {
  return part.entity?.is === 'tips' ? { ...part, entity: { ...part.entity, named: true } } : part;
}

function asOne(drafts: readonly Draft[]): Draft {
  const [first, ...rest] = drafts;
  if (first === undefined) throw new RangeError('no draft');
  const parts = [...first.parts, ...rest.flatMap((draft) => [jointOf(draft), ...draft.parts])];
  return { ...first, parts, sort: sortOf(parts) };
}

/** "60 - oven - passed - dry - strip ok": how many drafts tell of one load, its number or autoclave first; 0 where none do. */
function loadLine(drafts: readonly Draft[], from: number): number {
  const first = drafts[from];
  if (first === undefined || !namesLoad(first)) return 0;
  let to = from;
  let result = false;
  let named = 0;
  while (to < drafts.length) {
    const draft = drafts[to];
    if (
      draft?.sentence !== first.sentence ||
      draft.question ||
      (to > from && !/^[-/,:]?$|^--$/.test(draft.joint))
    )
      break;
    const verdict = draft.sort === 'outcome' && saidIn(draft).every((p) => p.entity === undefined);
    if (namesLoad(draft)) named++;
    else if (!verdict && !isLoadDetail(draft.parts)) break;
    result ||= verdict;
    to++;
  }
  return result && named <= 2 && to - from >= 3 ? to - from : 0;
}

/** A number that is no tip's, a load, an autoclave, and nothing else. */
function namesLoad(draft: Draft): boolean {
  const said = saidIn(draft).filter((p) => p.entity !== undefined || !hasSort(p, 'glue'));
  return (
    said.length > 0 &&
    said.length <= 2 &&
    said.every(
      ({ entity }) =>
        entity?.is === 'load' ||
        entity?.is === 'autoclave' ||
        (entity?.is === 'tips' && !entity.named && entity.ids.length === 0 && entity.unknown.length === 1),
    )
  );
}

/** "Inspected. Tip 1 clean. Tip 2 debris.": each verdict behind the look is one of its own; `null` where there are none. */
function lookedAt(drafts: readonly Draft[], at: number): Draft[] | null {
  const look = drafts[at];
  const looks = saidIn(look);
  if (
    look === undefined ||
    looks.length > 8 ||
    !looks.every((p) => isLook(p) || p.entity?.is === 'tips' || hasTag(p, 'tip') || hasSort(p, 'glue'))
  )
    return null;
  const verb = looks.find(isLook);
  const named = looks.flatMap((p) => (p.entity?.is === 'tips' ? p.entity.ids : []));
  // "Checked 2 and 7, both fine" is one look with one result; tips of whose own more is told are told of there.
  if (
    verb === undefined ||
    named.length === 1 ||
    looks.some((p) => OUTCOMES.some((tag) => p.entity === undefined && hasTag(p, tag)))
  )
    return null;
  const made: Draft[] = [];
  for (const draft of drafts.slice(at + 1)) {
    const own = saidIn(draft);
    const first = own[0]?.entity;
    const verdict = own.some(
      (p) => OUTCOMES.some((tag) => hasTag(p, tag)) || /^(dirty|soiled|mucky|manky)$/.test(p.text),
    );
    if (first?.is !== 'tips' || own.length > (named.length > 0 ? 8 : 4) || !verdict) break;
    if (named.length > 0 ? !first.ids.every((id) => named.includes(id)) : draft.sentence === look.sentence)
      break;
    made.push({ ...draft, parts: [verb, ...draft.parts], sort: 'act' });
  }
  return made.length > 0 ? made : null;
}

const OUTCOMES = ['pass', 'fail', 'debris', 'clean'];
const PLACED = ['scan', 'start', 'move', 'take', 'bring', 'find', 'lose', 'go', 'come'];

const WAY = /^(on (our|my|the|its|his|her|their) way|en route|on way)$/;

/** True where a draft only completes the one before it. */
function completes(last: Draft, draft: Draft, drafts: readonly Draft[], at: number): boolean {
  const own = saidIn(draft);
  const before = saidIn(last);
  if (own.length === 0 || draft.quoted || last.quoted) return false;
  const next = drafts[at + 1];
  const is = (part: Part) => part.entity?.is;
  // "Moved scanner. Room 3."
  const apart = draft.sentence !== last.sentence && next?.sentence !== draft.sentence;
  if (apart && own.every((p) => is(p) === 'room' || is(p) === 'site' || /^(in|at)$/.test(p.text)))
    return (
      PLACED.some((tag) => before.some((p) => hasTag(p, tag))) &&
      !before.some((p) => is(p) === 'room' || is(p) === 'site' || is(p) === 'load') &&
      !saidIn(next).some((p) => is(p) === 'celsius' || is(p) === 'scanner')
    );
  // "Load 118 on. Tips 2. 5. 7."
  if (apart && own.every((p) => is(p) === 'tips'))
    return (
      before.some((p) => is(p) === 'load') &&
      !before.some((p) => hasTag(p, 'pass') || hasTag(p, 'fail')) &&
      before.some((p) => /^(on|in|started|running)$/.test(p.text))
    );
  return draft.sentence === last.sentence && belongs(before, own, draft, last);
}

/** The same within a sentence. */
function belongs(before: readonly Part[], own: readonly Part[], draft: Draft, last: Draft): boolean {
  const is = (part: Part) => part.entity?.is;
  // "Spore test from Monday on Bertha, back and clear"
  if (before.length === 1 && before[0]?.text === 'back' && draft.sort === 'outcome') return true;
  // "Anand - shown - calibrating"
  if (/^[-,:]$/.test(draft.joint) && before[0]?.entity?.is === 'person') {
    if (before.length === 1 && own.length === 1 && own[0]?.text === 'shown') return true;
    if (before.length === 2 && before[1]?.text === 'shown') return true;
  }
  // "Wanda and tips 5, 6 to park with me, on our way"
  if (own.every((p) => WAY.test(p.text)))
    return last.sort === 'entities' && before.some((p) => is(p) === 'site' || is(p) === 'room');
  // "oven - BI in"
  const alone = before.every((p) => is(p) === 'autoclave' || hasSort(p, 'glue'));
  return (
    alone &&
    before.some((p) => is(p) === 'autoclave') &&
    own.some((p) => p.entity === undefined && TESTS.some((tag) => hasTag(p, tag))) &&
    !own.some((p) => is(p) === 'autoclave')
  );
}
