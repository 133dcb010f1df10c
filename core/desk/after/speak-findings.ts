import type { Finding } from '../../record/finding.ts';
import { findingsSince } from '../../record/findings.ts';
import type { Timeline } from '../../record/timeline.ts';
import type { About } from '../../rules/about.ts';
import { speak } from '../../rules/speak.ts';
import type { Speech } from '../../rules/speech.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';
import { say } from './say.ts';

/** Most important first: whoever reads only one line must read this one. */
const ORDER: readonly About[] = ['warning', 'incident', 'look-back', 'spore-test', 'caution', 'question'];

interface Due {
  readonly finding: Finding;
  readonly speech: Speech;
}

/**
 * Says what the record found on this turn and was not said of yet. A warning is never repeated for the same cause, and one
 * that a correction brings to light on an older note is said now. True when anything unsafe was among it.
 */
export function speakFindings(session: Session, speaker: Speaker): boolean {
  const { draft, posts, timeline } = session;
  const due: Due[] = [];
  for (const finding of findingsToLookAt(timeline)) {
    if (posts.warned(finding.key) || draft.warned.some((one) => one.finding === finding.key)) continue;
    const speeches = speak(finding, viewOf(session));
    draft.warned.push({ finding: finding.key, post: null });
    due.push(...speeches.map((speech) => ({ finding, speech })));
  }
  // A question goes with the warning that it belongs to, right behind it.
  due.sort((one, other) => rank(one, due) - rank(other, due));
  for (const { finding, speech } of due) {
    const post = say(session, speaker, speech, finding);
    if (speech.about !== 'question') draft.warned.push({ finding: finding.key, post });
  }
  return due.some(({ speech }) => isStop(speech.about));
}

/** What is new since the last time; after a change of old things everything since then, in the order of the record. */
function findingsToLookAt(timeline: Timeline): readonly Finding[] {
  const { state } = timeline;
  const since = timeline.takeRefolded();
  const added = state.history.findings.takeNew();
  return since === null ? added : findingsSince(state, since);
}

/** Something unsafe: whoever typed the note is to stop and read. */
export function isStop(about: About): boolean {
  return about === 'warning' || about === 'incident';
}

function rank({ finding, speech }: Due, all: readonly Due[]): number {
  const place = (about: About) => {
    const index = ORDER.indexOf(about);
    return index === -1 ? ORDER.length : index;
  };
  const first = Math.min(
    ...all.filter((one) => one.finding === finding).map((one) => place(one.speech.about)),
  );
  return first * 100 + (speech.about === 'question' ? 50 : 0);
}
