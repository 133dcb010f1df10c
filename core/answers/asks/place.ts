import { readinessOf } from '../../rules/readiness.ts';
import { capital, scannerWords } from '../../rules/tips/tip-words.ts';
import type { Line, Message } from '../../words/message.ts';
import { placeWords } from '../../words/place-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { groupLine, tipGroups } from '../tip-groups.ts';

/** "What's at North?": the scanners there, ready or not, and the tips by what they are; of one room, only what is in it. */
export function answerPlace(site: string, room: string | undefined, view: AskView): Answer {
  const isHere = (at: { readonly site: string | null; readonly room: string | null }) => {
    return at.site === site && (room === undefined || at.room === room);
  };
  const scanners = [...view.state.scanners.values()].filter((each) => each.departed === null && isHere(each));
  const tips = [...view.state.tips.values()].filter((tip) => {
    const on = tip.scanner === null ? undefined : view.state.scanners.get(tip.scanner);
    return tip.retired === null && tip.departed === null && isHere(on ?? tip);
  });
  const name = placeWords(view.practice, site, room ?? null);
  const points = [
    ...scanners.map(({ id }): Line => {
      const { ready } = readinessOf(view, id);
      return [{ strong: capital(scannerWords(view.practice, id)) }, `: ${ready ? 'ready' : 'not ready'}`];
    }),
    ...tipGroups(view, tips).map((group) => groupLine(view, group)),
  ];
  if (points.length === 0) {
    const none: Line = [{ strong: name }, ': no scanner and no tip on record there.'];
    return { about: 'answer', message: [{ line: none }], items: [] };
  }
  const message: Message = [{ line: [{ strong: name }, ':'] }, { points }];
  const items = [
    ...scanners.map(({ id }) => `scanner:${id}` as const),
    ...tips.map(({ id }) => `tip:${id}` as const),
  ];
  return { about: 'answer', message, items };
}
