import { ruleValue } from '../../defaults/rule-value.ts';
import type { Entry } from '../../record/entry.ts';
import type { ScannerState } from '../../record/state.ts';
import { warmUpFor } from '../../rules/scanner/warm-up.ts';
import { type Instant, MINUTE, SECOND } from '../../time/instant.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';

const WAITING = '⏳';
const READY = '🟢';

/** A tip went on: the note gets a waiting mark at once, and `readyMarks` its ready mark when the time is up. */
export function startWarmUp(session: Session, speaker: Speaker, entries: readonly Entry[]): void {
  for (const scanner of session.timeline.state.scanners.values()) {
    const fitted = scanner.tipFitted;
    if (fitted === null || !entries.some((entry) => entry.id === fitted.entry)) continue;
    const ends = warmUpEnds(session, scanner);
    // Told of late, it is warm already: the ready mark comes at once.
    if (ends === null || ends <= session.now) continue;
    session.draft.react(speaker.room, speaker.note, WAITING);
  }
}

/** Marks that fall due by now: each once, on the note that fitted the tip. */
export function readyMarks(session: Session): void {
  const { draft, notes, posts, now } = session;
  for (const { key, at, entry } of pendingMarks(session)) {
    if (at > now || posts.saidAt(key, 'first') !== null) continue;
    const note = notes.noteOfTurn(Number.parseInt(entry, 10));
    if (note !== null) draft.react(note.room, note.id, READY);
    draft.matterSaid(key, 'first', '');
  }
}

/** When the next ready mark falls due after `after`; `null` when none is waited for. */
export function nextMark(session: Omit<Session, 'draft'>, after: Instant): Instant | null {
  const waiting = pendingMarks(session)
    .filter(({ key, at }) => at > after && session.posts.saidAt(key, 'first') === null)
    .map(({ at }) => at);
  return waiting.length === 0 ? null : Math.min(...waiting);
}

function pendingMarks(session: Omit<Session, 'draft'>): { key: string; at: Instant; entry: string }[] {
  return [...session.timeline.state.scanners.values()].flatMap((scanner) => {
    const at = warmUpEnds(session, scanner);
    const entry = scanner.tipFitted?.entry;
    return at === null || entry === undefined ? [] : [{ key: `warm-up|${entry}`, at, entry }];
  });
}

/** `null` where there is nothing to wait for: no tip, a scan with it that is over, a tip that was warned of, or a note typed long after. */
function warmUpEnds(session: Omit<Session, 'draft'>, scanner: ScannerState): Instant | null {
  const { practice, timeline } = session;
  const fitted = scanner.tipFitted;
  if (fitted === null || scanner.tip === null) return null;
  const late = ruleValue(practice, 'lateNoteMinutes') * MINUTE;
  if (fitted.noted - fitted.at > late) return null;
  if (timeline.state.tips.get(scanner.tip)?.warnedFor?.contact === fitted.entry) return null;
  const finished = scanner.lastScan?.finished ?? null;
  if (finished !== null && finished.at >= fitted.at) return null;
  const { seconds } = warmUpFor(viewOf(session), scanner.id, scanner.site, scanner.room);
  return Math.max(fitted.noted, fitted.at + Math.ceil(seconds) * SECOND);
}
