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

export type FailPoint = (typeof FAIL_POINTS)[number];
