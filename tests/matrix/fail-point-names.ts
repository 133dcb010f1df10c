/** Where a note is on its way: in the inbox, in the journal, in the outbox, encrypted, sent, known to be sent. */
export const FAIL_POINTS = [
  'before receive',
  'after receive',
  'before append',
  'after append',
  'before enqueue',
  'after enqueue',
  'before keys',
  'after keys',
  'before send',
  'after send',
  'before confirm',
  'after confirm',
] as const;

/** Where the key of an answer is on its way to a phone that has just come. */
export const SHARE_POINTS = ['before share', 'after share'] as const;

export type FailPoint = (typeof FAIL_POINTS)[number] | (typeof SHARE_POINTS)[number];
