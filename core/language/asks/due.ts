import { type Ask, ask, dayOf, oneItem, siteOf, WH, wordsOf } from './ask.ts';

/** What is due. */
export const due: Ask = {
  name: 'ask:due',
  read(c, question) {
    const text = wordsOf(c);
    const asks =
      /(what|anything|something|whats|what's|any|is there anything|is something|something|wots|owt|wats|which|who's|are there|list|show)( \w+)*? (due|outstanding|overdue|needs? doing|needs? done|needing done|needing doing|to do|left to do|pending|on the list|still to do|still needs|need doing|to be done|need to do|due today|on today|left|have to do|remaining|not been done|hasn't been done|not done|open)|what (do|should|must) (we|i) (need to|have to|still)|what's (left|due|outstanding)|what needs|to[- ]?do list|jobs (for|left|to do|due|today)|anything (for me )?to do|is .*calibration due|due (today|tomorrow|this)|when('s| is) .*(due|calibration)|due for calibration|need(s)? calibrating|what have (we|i) (got )?(to do|left|outstanding)|reminders|what am i (meant|supposed) to|calibrations? due|outstanding (jobs|tasks|items)|(jobs|tasks) outstanding|still open|needing (done|doing)|anything i need to do|anything need|what (jobs|tasks)|anything (i|we) should|what haven't (we|i)|what have we not|what's on for .*scanner|left open/.test(
        text,
      );
    if (
      !asks &&
      !(question && /outstanding|overdue|pending|\bdue\b/.test(text) && !/when|to do with/.test(text))
    )
      return null;
    if (/to do with|thing to do|what (it|he|she|they|that|this) |^(have|got) any left/.test(text))
      return null;
    if (/\btips? (still )?left\b/.test(text)) return null;
    if (c.has('clean', 'sterile') || /\bones\b/.test(text)) return null;
    if (c.has('other') || /for (lunch|tea|dinner|breakfast)/.test(text)) return null;
    if (
      !question &&
      !/^(what|whats|what's|anything|something|any|list|show|to|is|jobs|outstanding|ok|so|right|give|gimme|tell|please)/.test(
        text,
      )
    )
      return null;
    if (/what's (left|next|on)\b/.test(text) && !/scanner|tip|due|do|outstanding|today|clinic/.test(text))
      return null;
    c.useTags(
      ...WH,
      'due',
      'finish',
      'calibrate',
      'scanner',
      'unit',
      'tip',
      'book',
      'wipe',
      'clean',
      'check',
      'record',
      'reminder',
      'open',
      'leave',
    );
    if (/outstanding|open|due/.test(text)) c.use(c.word(/^(jobs|job|tasks|task|items)$/));
    const site = siteOf(c);
    const scanner = c.entities('scanner').length > 0;
    if (scanner) {
      const item = oneItem(c);
      if (item !== null) return ask('ready', { item: item.item }, 1.2, { item: item.said }, item.missing);
    }
    if (
      !/due|outstanding|overdue|to do|needs? doing|need(s)? (to be )?done|to-do|todo|calibrat|still needs|pending|left to|on the list|need to do|left|to be done|jobs|remaining|reminders|done|what needs|still open|left open|needing|(what|which) (jobs|tasks)|should be doing|haven't (we|i) done|what have we not|on for .*scanner/.test(
        text,
      )
    )
      return null;
    return { ...ask('due', { ...site, ...dayOf(c, site.site) }, 2.2), whole: true };
  },
};
