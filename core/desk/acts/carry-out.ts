import type { Act } from '../../reading/act.ts';
import type { NoteInput } from '../input.ts';
import type { Session, Speaker } from '../session.ts';
import { amend } from './amend.ts';
import { close } from './close.ts';
import { done } from './done.ts';
import { later } from './later.ts';
import { undo } from './undo.ts';

/** Carries out what a note asks to be done with what was said; answers to questions were dealt with before. */
export function carryOut(session: Session, speaker: Speaker, acts: readonly Act[], input: NoteInput): void {
  for (const act of acts) {
    switch (act.kind) {
      case 'undo':
        undo(session, speaker, input.replyTo);
        break;
      case 'amend':
        amend(session, speaker, act, input.replyTo);
        break;
      case 'done':
        done(session, speaker, input.replyTo);
        break;
      case 'later':
        later(session, speaker, act.until, input.replyTo);
        break;
      case 'close':
        close(session, speaker, act.reason, input.replyTo);
        break;
      default:
        // A bare yes, no or number where nothing was asked is nobody's business.
        break;
    }
  }
}
