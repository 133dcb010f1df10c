import type { AskOf } from '../../reading/ask.ts';
import { zoneOf } from '../../record/where.ts';
import { buildBrief } from '../../rules/day/brief/brief.ts';
import { briefItems, briefMessage } from '../../rules/day/brief/brief-words.ts';
import { localDateOf } from '../../time/zone.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** "Give me the rundown": the day's brief of each site asked about, as things stand now. */
export function answerBrief(ask: AskOf<'due'>, view: Omit<AskView, 'entries'>): Answer {
  const briefs = sitesOfAsk(view.practice, ask.site, view.room).map((site) => {
    return buildBrief(view, site, ask.day ?? localDateOf(view.now, zoneOf(view.practice, site)));
  });
  return {
    about: 'answer',
    message: briefs.flatMap((brief) => briefMessage(view, brief)),
    items: [...new Set(briefs.flatMap(briefItems))],
  };
}
