/** What patterns of whole questions are made of. */

/** "Is there any", "have we got any", "do we have", and the bare "any". */
export const ANY =
  '(?:(?:(?:is|are|was|were) there|there|have (?:we|you|ye|i) (?:got|had)?|(?:do|did) (?:we|you|i) have|we got|got|have we|has there been|have there been|did we get) ?)?(?:any|a|some)? ?';
/** "Show me", "can I see", "what is": before a thing that is asked for. */
export const SHOW =
  '(?:(?:whats|what about|a list of|list of|full list of|can i have a list of|could i (?:have|get) a list of|can i get a list of|give me a list of|get me a list of|show me a list of|send me a list of|i need a list of|how about|hows|show|show me|give me|give us|gimme|send me|get me|list|let me see|lets see|check|pull up|print|can i (?:have|see|get)|could i (?:have|see|get)|can we (?:have|see|get)|can you (?:show me|give me|send me|list|tell me|check)|could you (?:show me|give me|send me|list|tell me|check)|i want|i need|i would like|need|want|looking for|see) )?(?:me |us |all |all my |a |my )?';
export const WE = '(?:we|i|they)';
