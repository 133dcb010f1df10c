import { timeContext, timeOf } from '../roles/time.ts';
import { resolveDays } from '../times/resolve-days.ts';
import { type Ask, ask, siteOf, WH, wordsOf } from './ask.ts';

/** "Incidents this year": the incidents of a stretch of days. */
export const incidents: Ask = {
  name: 'ask:incidents',
  read(c, question) {
    const noun = c.at('incident');
    const time = timeOf(c);
    if (noun < 0 || time === null || c.has('shut', 'other')) return null;
    const text = wordsOf(c);
    if (!question && c.parts.length > 8) return null;
    if (
      !question &&
      !/^(?:(?:the|all|all the|list of|list|show|show me|give me|please|pls|any) )*incidents?\b/.test(text)
    )
      return null;
    const site = siteOf(c);
    const days = resolveDays(
      time.span,
      timeContext(c, typeof site.site === 'string' ? site.site : null),
      'back',
    );
    if (days === null) return null;
    c.use(...time.said, noun);
    c.useTags(...WH, 'record', 'happen', 'book', 'see', 'show', 'list');
    return {
      ...ask('incidents', { from: days.from, to: days.to, ...site }, 2, { from: time.said }),
      whole: true,
    };
  },
};
