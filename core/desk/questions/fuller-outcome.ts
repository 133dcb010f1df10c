import { scannerOf } from '../../practice/look-up.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Fact } from '../../reading/fact.ts';
import type { Question } from '../../rules/question.ts';
import type { NoteInput } from '../input.ts';
import type { Session } from '../session.ts';

type Draft = Readonly<Record<string, unknown>>;

/**
 * "passed, 134 for 3.5", "failed, strip didn't turn" in answer to "did load 12 pass?": the answer is read with what was
 * asked about put before it. Gives the whole fact, at the time of the note that was asked about; `null` where the words
 * are not that fact and nothing else.
 */
export function fullerOutcome(session: Session, { purpose }: Question, input: NoteInput): Fact | null {
  if (purpose.sort !== 'complete' || purpose.form !== 'outcome' || purpose.list !== 'facts') return null;
  const subject = subjectOf(session.practice, purpose.draft);
  if (subject === null) return null;
  const { reading } = session.read(`${subject} ${input.text}`, {
    at: input.at,
    from: input.from,
    room: input.room,
  });
  const [fact, ...more] = reading.facts;
  const others = more.length + reading.asks.length + reading.plans.length + reading.unclear.length;
  if (fact === undefined || others > 0 || !isSame(fact, purpose.draft)) return null;
  return { ...fact, ...kept(purpose.draft), when: String(purpose.draft.when ?? fact.when) };
}

/** What the note had said already. */
function kept(draft: Draft): Draft {
  return Object.fromEntries(Object.entries(draft).filter(([, value]) => value !== undefined));
}

function isSame(fact: Fact, draft: Draft): boolean {
  return fact.kind === draft.kind && (!('load' in fact) || fact.load === draft.load);
}

const TESTS = new Map([
  ['penetration', 'helix test'],
  ['control', 'automatic control test'],
  ['leak', 'leak test'],
]);

/** What the question was about, in words that the reader knows. */
function subjectOf(practice: Practice, draft: Draft): string | null {
  switch (draft.kind) {
    case 'load-finished':
      return `load ${String(draft.load)}`;
    case 'spore-test':
      return 'spore test';
    case 'autoclave-test':
      return TESTS.get(String(draft.sort)) ?? null;
    case 'calibrated':
      return `${scannerOf(practice, String(draft.scanner))?.name ?? ''} calibration`;
    default:
      return null;
  }
}
