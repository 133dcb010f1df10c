import type { Clause } from '../../clause.ts';
import { type AskResult, ask, oneItem } from '../ask.ts';
import { asksAt, form, type Phrases, SURE } from './phrase.ts';

/** Who had something last, and how warm it was. */
export const last: Phrases = {
  name: 'ask:last',
  phrases: [
    {
      form: form(
        'who (?:last )?(?:had|has had|got) <scanner>(?: last)?',
        'who (?:was|were) (?:the )?last (?:person )?(?:to have|with|on|to hold|to take|having) <scanner>',
        'who (?:had|took|borrowed|grabbed) <scanner>(?: before me)?',
        '(?:whos|who) had <scanner> (?:last|before|before me)',
        'last (?:person|one) (?:with|to have) <scanner>',
        'whos hands was <scanner> in last',
      ),
      make: lastMove,
    },
    {
      form: form(
        '(?:how|hows) (?:warm|hot|cold|cool|chilly) (?:is|was|it) ?(?:it)?(?: in there| in here| there| in)?',
        '(?:whats|what was|hows) ?(?:last |latest |room )?(?:temperature|temp|room temp|room temperature|temperature reading|temp reading|reading)(?: (?:like|reading|in there|in here|there))?',
        'what (?:temp|temperature) (?:is|was|did) ?(?:it|we)?(?: (?:get|have|say|in there|in here|there))?',
        '(?:last|latest|current) (?:room )?(?:temperature|temp)(?: reading)?',
        '(?:room )?(?:temperature|temp)(?: reading)?',
        '(?:any|have we got a|is there a|did anyone take a) (?:temperature|temp)(?: reading)?',
      ),
      make: ofPlace,
    },
    {
      form: form(
        'did (?:we|anyone|someone|i) calibrate',
        '(?:calibration|cal|calibrations) (?:history|log|dates|status|record|records|state)',
        '(?:show |show me |give me |list |whats )?(?:all )?last (?:calibrations|cals|calibration dates)',
        '(?:whats|whens) been calibrated',
        '(?:which|what) scanners (?:have|has|are|is|were|was) (?:been )?calibrated',
        '(?:are|have|were|r) (?:all |both )?scanners (?:all )?(?:been )?calibrated',
      ),
      make: asksAt('last', { of: 'calibration' }),
    },
    {
      form: form(
        '(?:which|what) scanners (?:have|has|are|is|were|was|need|needs) (?:been )?(?:wiped|wiped down|clean|cleaned|dirty|a wipe|wiping|cleaning)',
        '(?:are|have|were|r) (?:all |both )?scanners (?:all )?(?:been )?(?:wiped|wiped down|cleaned)',
        '(?:whats|what scanner) (?:been )?wiped(?: down)?',
        '(?:is|has) everything (?:been )?(?:wiped|wiped down|cleaned down|wiped over)',
      ),
      make: asksAt('last', { of: 'wipe' }),
    },
    {
      form: form(
        '(?:why|how) (?:did|has) <scanner> (?:fail|failed)(?: (?:calibration|cal|its calibration|last calibration|its last calibration))?',
        "(?:did|has) <scanner> (?:pass|passed|fail|failed)(?: (?:its|it's))?(?: (?:calibration|cal))?",
        'how (?:many times|often) (?:has|did) <scanner> (?:failed|fail|passed|pass|been calibrated)(?: calibration)?',
        'when did <scanner> (?:last )?(?:pass|fail)',
        "(?:whats|show|show me) <scanner>(?:'s)? (?:calibration|last calibration|cal)(?: (?:history|date|log|status))?",
        "<scanner>(?:'s)? (?:calibration|last calibration|cal) (?:history|date|log|status|record)",
      ),
      asked: true,
      make: (c) => lastOf(c, 'calibration'),
    },
    {
      form: form(
        '(?:has|was|did|have) (?:anyone|someone|anybody|we)? ?(?:the )?(?:room )?(?:temperature|temp|take|taken|note|noted)(?: (?:been|temperature|temp))?(?: (?:taken|noted|done|recorded))?',
      ),
      asked: true,
      make: ofPlace,
    },
  ],
};

function lastMove(c: Clause): AskResult | null {
  return lastOf(c, 'move');
}

function lastOf(c: Clause, of: 'move' | 'calibration'): AskResult | null {
  const item = oneItem(c, { before: false });
  if (item === null) return null;
  return ask('last', { of, item: item.item }, SURE, { item: item.said }, item.missing);
}

/** Bare words of warmth are of the weather too: a place of ours, or the word for it, has to be said. */
function ofPlace(c: Clause): AskResult | null {
  const placed = c.entities('site').length + c.entities('room').length > 0;
  return placed || c.has('temp') ? asksAt('last', { of: 'temperature' })(c) : null;
}
