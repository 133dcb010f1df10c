/**
 * Yes, no and done as people say them. Each is built of bits: a note of nothing but bits, one of which answers, is the
 * answer. Alternatives are separated by "|" as in an expression; no bit holds another's start, so nothing is tried twice.
 */

/** Said before or after an answer and meaning nothing to it. */
export const COURTESY =
  'ok|okay|oh|ah|um|er|well|hi|hey|hiya|hello|morning|right so|please|pls|plz|thanks|thank you|thx|ta|cheers|sorry|x|xx|xxx|mate|pet|hun|love|boss|bot|team|all|everyone|lads|now|then|so|grand|sure now|here|there|too|👍|🙏|😊|🙂';

/** Answers by itself. */
export const YES =
  "yes|yess|yep|yepp|yeah|yeh|yea|yup|yh|ye|yip|yas|ya|aye|y|yessir|si|ja|sure|sure thing|for sure|of course|certainly|absolutely|definitely|indeed|affirmative|correct|exactly|true|too right|you bet|confirmed|confirm|go ahead|go for it|go on|please do|that's right|thats right|that is right|that's correct|thats correct|that is correct|that's the one|thats the one|👍|right";
/** Goes with a yes, and alone says nothing or only with what it answers. */
export const WITH_YES =
  "it has|it did|it is|it was|it does|it's|they have|they did|they are|they were|we have|we did|we are|we were|i have|i did|i am|i was|he has|he did|she has|she did|do|do it|do that|do so|keep it|keep that|that's it|thats it|that was it|that one|no problem|good|thanks a million";
/** "It has" answers by itself too; "they are" does not. */
export const YES_ALONE = 'it has|it did|it is';

export const NO =
  "no|nope|nah|naw|nay|noo|na|n|no way|no chance|not at all|not really|not yet|no need|definitely not|absolutely not|of course not|certainly not|negative|neither|none|wrong|👎|it hasn't|it didn't|it isn't|it wasn't|it hasnt|it didnt|it isnt|it wasnt|it has not|it did not|it is not|it was not|don't bother|dont bother";
export const WITH_NO =
  "they haven't|they didn't|they aren't|they weren't|they did not|they have not|we haven't|we didn't|we aren't|we weren't|we did not|we have not|i haven't|i didn't|i did not|i have not|havent|didnt|don't|dont|do not|leave it|leave that|it's fine|its fine|it's ok|its ok|it's grand|it's alright|you're grand|you're fine|you're ok|you're alright|youre grand|that's fine|that's wrong|thats wrong|not that one|not needed|not necessary|don't worry|dont worry";

export const DONE =
  'done|dun|doneski|did it|did that|did them|done it|done that|done this|done them|done both|sorted|sorted it|sorted that|finished|finished it|finished that|completed|completed it|complete|just did|i did it|we did it|took care of it|taken care of|ticked off|job done|done and dusted|✅|✔|☑|✔️|☑️';
export const WITH_DONE =
  "all|just|already|both|yes|yep|yeah|yup|aye|that's|thats|that is|it's|its|it is|is|been|has been|have been|has|have|i have|i've|ive|we've|weve|we have|i|we|that's it|thats it|that's me|thats me|consider it|consider that|got it|that one's|that one is|it|good|today|for today|this minute|this second|a minute ago|a moment ago|just now|so it is|ya|one";
