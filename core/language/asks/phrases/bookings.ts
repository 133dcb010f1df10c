import type { Clause } from '../../clause.ts';
import { type AskResult, ask, dayOf, siteOf } from '../ask.ts';
import { form, type Phrases, SURE } from './phrase.ts';
import { daysBack, daysSaid, isPast } from './when.ts';
import { ANY, SHOW } from './words.ts';

const SCANS =
  '(?:scans?|scan bookings?|booked scans?|scan appointments?|scan patients?|scan slots?|bookings?|scanning appointments?|scan appts?|scan pts?|patients to scan|pts to scan|patients for scanning|patients for scans|patients for a scan)';
const BOOKED =
  '(?:booked|booked in|on|on list|on books|in book|in diary|in|lined up|coming up|coming in|down|scheduled|to do|left|still to come|to come|planned|to go|in for)';

/** Scans that are booked. Of days gone by, what was done is asked for. */
export const bookings: Phrases = {
  name: 'ask:bookings',
  phrases: [
    {
      form: form(
        `how many (?:more )?${SCANS}(?: (?:are|is|have|has|do|did|r|s|we|i|there|got|have got|been|'ve|us))*(?: ${BOOKED})?(?: (?:got|there|have|on|for us|left|due|are there))?`,
        `whats (?:all )?(?:booked|booked in|in book|scheduled|lined up|on scan list|on scanner list|on scanning list|booked for scanner|booked on scanner|booked for scanning|booked for scans)(?: (?:in|for us|for scanning|for scans|for scanner))?`,
        `(?:is |are |have we |do we have |got )?(?:anything|anyone|something|any patients|anybody|someone) (?:booked|booked in|scheduled|lined up)(?: (?:in|for (?:a )?(?:scan|scans|scanning|scanner)))?`,
        `${ANY}(?:more |other )?${SCANS}(?: (?:are |is )?${BOOKED})?`,
        `${SHOW}${SCANS}(?: ${BOOKED})?`,
        `${SHOW}(?:scan|scanning|scanner) (?:list|diary|schedule|bookings|book|day sheet)`,
        `(?:which|what) ${SCANS} (?:are|is|have|do|'s|s) ?(?:we|there|you|i)? ?(?:got|have)? ?${BOOKED}?`,
        `(?:whats|what is) (?:scan|scanning|scanner) (?:list|schedule|diary)(?: (?:like|looking like))?`,
        `(?:when|what time) (?:is|are|s|does|do) (?:first|next|last|1st|earliest|second) (?:scan|scan patient|booking|scan booking|scan slot|patient for a scan|scans)(?: (?:due|booked|start|in|at|for))?`,
        `whens (?:my |our )?(?:first|next|1st|earliest|second) (?:scan|scan patient|booking|scan booking|scan slot|scans)(?: (?:due|booked|start|in|at|for))?`,
        `(?:first|next|1st|earliest) (?:scan|booking|scan booking)(?: (?:when|what time|time|at what time|is when))?`,
        `is (?:scan|booking|one) (?:still )?(?:on|happening|going ahead|cancelled|booked)`,
        `(?:is|are) scans? (?:still )?(?:on|happening|going ahead|cancelled|booked)`,
        `what (?:do|have) (?:we|i) (?:have|got) (?:on |booked |in )*(?:scan ?wise|for scans|for scanner|for scanning|scanning ?wise)`,
        `how many patients (?:for|to|booked for|in for) (?:scan|scans|scanning|a scan|scanner)`,
        `whos (?:first|next|in) (?:for|on) (?:scanner|scanning|a scan)`,
        `(?:do|have|did|are|is) (?:we|i|you) (?:have|got|having|get|expecting|doing) (?:any|some|many|lots of|a lot of|a) ${SCANS}(?: ${BOOKED})?`,
        `how (?:busy|full) (?:is|are|'s) (?:scanner|scanners|we|it|scanning|scan list)(?: (?:with|for|on) (?:scans|scanning))?`,
      ),
      make: bookingsOf,
    },
    {
      form: form(`${SCANS}(?: ${BOOKED})?`, 'whens last scan(?: booked| due| of day)?'),
      timed: true,
      asked: true,
      make: bookingsOf,
    },
  ],
};

function bookingsOf(c: Clause): AskResult | null {
  const site = siteOf(c);
  const past = isPast(c) ? daysBack(c) : null;
  if (past !== null) return ask('record', { ...past, ...site }, SURE, daysSaid(c));
  return ask('bookings', { ...site, ...dayOf(c, site.site) }, SURE);
}
