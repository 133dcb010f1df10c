/** What patterns of whole questions are made of. */

/** One of our scanners, by name. */
export const SCANNER = '(?:<scanner>|scanner)';
/** "Is there any", "have we got any", "do we have", and the bare "any". */
export const ANY =
  '(?:(?:(?:is|are|was|were) there|there|have (?:we|you|ye|i) (?:got|had)?|(?:do|did) (?:we|you|i) have|we got|got|have we|has there been|have there been|did we get) ?)?(?:any|a|some)? ?';
/** "Show me", "can I see", "what is": before a thing that is asked for. */
export const SHOW =
  '(?:(?:whats|what about|how about|hows|show|show me|give me|give us|gimme|send me|get me|list|let me see|lets see|check|pull up|print|can i (?:have|see|get)|could i (?:have|see|get)|can we (?:have|see|get)|can you (?:show me|give me|send me|list|tell me|check)|could you (?:show me|give me|send me|list|tell me|check)|i want|i need|i would like|need|want|looking for|see) )?(?:me |us |all |all my |a |my )?';
export const WE = '(?:we|i|you|they|us)';
