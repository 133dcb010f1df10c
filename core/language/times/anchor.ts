import type { CueStrength } from './cue.ts';
import { phraseEnd, phraseTable } from './phrases.ts';
import { type Parsed, type Scan, textAt } from './scan.ts';
import type { Clock } from './time-span.ts';

const NOON = phraseTable('noon | midday | mid day | mid - day | 12 noon | 12 midday | twelve noon');
const MIDNIGHT = phraseTable('midnight | 12 midnight | twelve midnight');

/** Closing, said so that no cue is needed. */
const CLOSING = phraseTable(
  'end of play | end of day | end of the day | end of business | end of session | end of clinic | end of shift | ' +
    'close of play | close of business | close of day | close of clinic | cob | eop | eod | closing time | home time | hometime | ' +
    'last thing | when we close | when we shut | when we closed',
);
const OPENING = phraseTable(
  'when we open | when we opened | opening time | start of play | start of day | start of the day | start of business',
);

/** The same where a cue stands before. */
const CUED_CLOSING = phraseTable(
  'close | closing | we close | we closed | closing up | close up | we shut | the close | shutting',
);
const CUED_OPENING = phraseTable(
  'open | opening | opening up | we open | we opened | the start | start of clinic | start of session',
);

/** "Noon", "midnight", "end of play", "at opening". */
export function anchorAt(scan: Scan, i: number, cue: CueStrength): Parsed<Clock> | null {
  const text = textAt(scan, i);
  if (!STARTS.has(text)) return null;
  const noon = phraseEnd(scan, i, NOON);
  if (noon > 0) return { value: fixed(12), next: noon };
  const midnight = phraseEnd(scan, i, MIDNIGHT);
  if (midnight > 0) return { value: fixed(0), next: midnight };
  const cued = cue === 'strong' || cue === 'weak' || cue === 'range';
  const closing = phraseEnd(scan, i, CLOSING);
  if (closing > 0) return { value: { sort: 'closing' }, next: closing };
  const opening = phraseEnd(scan, i, OPENING);
  if (opening > 0) return { value: { sort: 'opening' }, next: opening };
  if (!cued) return null;
  const close = phraseEnd(scan, i, CUED_CLOSING);
  if (close > 0) return { value: { sort: 'closing' }, next: close };
  const open = phraseEnd(scan, i, CUED_OPENING);
  return open > 0 ? { value: { sort: 'opening' }, next: open } : null;
}

const STARTS: ReadonlySet<string> = new Set(
  [NOON, MIDNIGHT, CLOSING, OPENING, CUED_CLOSING, CUED_OPENING].flatMap((table) => [...table.keys()]),
);

function fixed(hour: number): Clock {
  return { sort: 'time', hour, minute: 0, half: 'known', about: false };
}
