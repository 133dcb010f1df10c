import { needing } from '../needs/needs.ts';

const VERB =
  '(?:undo|scrap|scratch|delete|ignore|disregard|forget|strike|remove|cancel|void|retract|withdraw|scrub|bin|rewind|revert|wipe|take back|never mind|nevermind)';
const WHAT =
  '(?:that|the|my|this|it|me|last|previous|above|prior|latest|one|entry|message|msg|note|post|line|bit|thing|back|out)';
const WHY = "(?:it|it's|its|that|that's|i|my|was|wrong|sent|meant|because|as|mistake|error)(?: \\S+){0,7}";
const COURTESY = '(?:please|pls|plz|thanks|thank you|thx|ta|sorry|all|x|mate|now)';

/** What is said before an act that means nothing to it. */
const BEFORE =
  /^(?:(?:ok|okay|oh|hi|hey|ah|oops|yes|sorry|um|uh|er|right|well|morning|hiya|hello|och|gosh|god|kindly|please|pls|plz|and|but|fair|fair enough|whoops|actually|no|wait|argh|damn|everyone|all|team|bot|can you|could you|would you|can we|so)(?: |$))+/;
/** What was wrong, before it is taken back: "wrong chat, ignore". */
const WRONG =
  /^(?:wrong (?:chat|group|one|room|note|tip|scanner)|(?:that was|that's|thats|it was) (?:a mistake|wrong|my mistake|me being daft)|my mistake|(?:i )?(?:didn't|didnt|did not) mean (?:that|to send that|to send it|it)|(?:that|it)? ?didn't happen|i was wrong)(?: |$)/;

const TAKES_BACK = new RegExp(`^${VERB}(?: ${WHAT})+(?: ${COURTESY})*(?: ${WHY})?$`);
const BARE = new RegExp(`^(?:undo|revert|disregard)(?: ${COURTESY})*$`);
const AFTER_WRONG = new RegExp(`^${VERB}(?: ${WHAT})*(?: ${COURTESY})*$`);
const TAKEN_BACK =
  /^(?:that |the |my )?(?:last|previous|above|latest) (?:one|entry|message|msg|note|post|line) (?:(?:please|pls|was|is|should be|to be|can be) )*(?:ignore|ignored|undo|undone|scrap|scratch|delete|deleted|disregard|wrong|a mistake|mistake)(?: (?:wrong|sorry|please|it was|i was)(?: .*)?)?$/;
const TOOK_BACK = new RegExp(
  `^(?:i )?take (?:(?:that|it|this|the last one|my last(?: one| note)?) back|back what i (?:wrote|said|typed|put|sent))(?: ${COURTESY})*$`,
);
/** "Wipe that", "wipe it", "bin that", "remove it" may be the scanner and the tip, where nothing is said of a note. */
const OF_THINGS = /^(?:wipe|bin|scrub|remove|strike|forget|ignore|cancel|never mind|nevermind)\b/;
const OF_NOTE = /\b(?:last|previous|above|prior|latest|entry|message|msg|note|post|line|that|me)\b/;

/** "Ignore that, undo please": said twice over. */
const TWICE = new RegExp(`(?<=.) (?:undo|undo it|undo that)(?: ${COURTESY})*$`);

/** What taking back needs to stand in the text. */
export const TAKING_BACK = needing(WRONG, TAKES_BACK, BARE, TAKEN_BACK, TOOK_BACK);

/** True where the words take back what was said: "undo", "scratch that last entry, wrong tip", "wrong chat, ignore". */
export function takesBack(text: string): boolean {
  const told = text.replace(BEFORE, '').replace(TWICE, '');
  const after = told.replace(WRONG, '');
  if (after !== told)
    return (
      after === '' || new RegExp(`^${COURTESY}(?: ${COURTESY})*$`).test(after) || AFTER_WRONG.test(after)
    );
  if (BARE.test(told) || TAKEN_BACK.test(told) || TOOK_BACK.test(told)) return true;
  return TAKES_BACK.test(told) && (!OF_THINGS.test(told) || OF_NOTE.test(told));
}
