/** "incident closed: dentist told" in its two parts; `null` where the note is no closing. */
export interface ClosingWords {
  /** What is said to be closed, as typed. */
  readonly named?: string;
  /** What was done. */
  readonly reason?: string;
}

const CLOSED =
  /^\s*(?:the )?(look-?\s?back|recall|incident)?(?: is)?\s*closed\s*(?:[:,–-]\s*(\S.*)|[.!]?)$/is;

/** "look-back closed: all seen", "closed - dentist told", "incident closed". */
export function closingWords(text: string): ClosingWords | null {
  const said = CLOSED.exec(text);
  if (said === null) return null;
  const [, named, reason] = said;
  return {
    ...(named === undefined ? {} : { named }),
    ...(reason === undefined ? {} : { reason: reason.trim() }),
  };
}

const BARE = /^(?:yes|yep|no|nope|ok|okay|done|closed|later|nothing)?[.!]*$/i;

/** What was done, in reply to the question: "closed: dentist told" and "dentist told" alike; `null` where it says nothing. */
export function reasonIn(text: string): string | null {
  const closing = closingWords(text);
  const reason = closing === null ? text.trim() : (closing.reason ?? '');
  return BARE.test(reason) || !/\p{L}{3}/u.test(reason) ? null : reason;
}

/** What people do after an incident, and that it came to nothing. */
const DONE =
  /\b(?:told|spoken?|rang|rung|sent|seen|saw|given|gave|taken|took|written|wrote|thrown|threw|put|kept|binned|no ?(?:one|body)|no (?:contact|harm|patient|risk)|never (?:touched|reached|used)|(?!need|speed|feed|bleed|red\b|bed\b|fed\b|wed\b|hundred|indeed)\p{L}{2,}ed)\b/iu;

/** Put off, still to be done, or said to somebody. */
const NOT_YET =
  /\b(?:will|ll|gonna|going to|need(?:s)? to|have to|has to|got to|should|must|shall|let me|let’?'?s|please|pls|can (?:you|we|i|someone)|could you|not yet|hang on|hold on|wait|one (?:sec|min|moment)|tomorrow|later|if|who|what|which|where|when|why|how)\b/iu;

const CLAUSES = /[,;.!\n–]|\s-\s|\b(?:and|but|so)\b/iu;

/**
 * Whether words typed plainly, with no reply, tell what was done: one part of them does ("dentist told, patient will be
 * followed up"). Talk that only might, asks, or puts it off, does not: the incident stays open, and its question too.
 */
export function tellsWhatWasDone(text: string): boolean {
  return !text.includes('?') && text.split(CLAUSES).some((part) => DONE.test(part) && !NOT_YET.test(part));
}
