import { toIso } from '../../time/instant.ts';
import { foldWord, meaningWords } from '../../words/learned-words.ts';
import { lines } from '../../words/message.ts';
import { apply } from '../apply.ts';
import type { Session, Speaker } from '../session.ts';

const FORGET =
  /^(?:(?:please|pls|ok|can you|could you) )*(?:forget|unlearn)(?<word> the (?:word|name|nickname))? [“"'‘]?(?<words>.+?)[”"'’]?(?: (?:please|pls|again))?[.!]*$/iu;

/** "Forget the gun": drops a word that was learned. `false` where the note is none such, or speaks of no learned word. */
export function forgetWord(session: Session, speaker: Speaker, text: string): boolean {
  const { draft, timeline, practice, now } = session;
  const said = FORGET.exec(text.trim())?.groups;
  if (said?.words === undefined) return false;
  const asked = foldWord(said.words);
  const found = [...timeline.state.words].find(([words]) => foldWord(words) === asked);
  if (found === undefined && said.word === undefined) return false;
  if (found === undefined) {
    const message = lines(`I have not learned “${said.words}”.`);
    draft.post(speaker.room, { about: 'answer', message, replyTo: speaker.note });
    return true;
  }
  const [words, { means }] = found;
  const first = draft.entries.length;
  draft.decide(
    { kind: 'word', when: toIso(now), words, means: null },
    speaker.room,
    speaker.from,
    speaker.from,
  );
  apply(timeline, draft.entries.slice(first));
  const message = lines(`Forgotten: “${words}” no longer means ${meaningWords(practice, means)}.`);
  draft.post(speaker.room, { about: 'answer', message, replyTo: speaker.note });
  return true;
}
