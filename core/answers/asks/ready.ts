import type { AskOf } from '../../reading/ask.ts';
import { readinessOf } from '../../rules/readiness.ts';
import { reasonWords } from '../../rules/scanner/reason-words.ts';
import { canUse } from '../../rules/tips/can-use.ts';
import { capital, sterileHere } from '../../rules/tips/tip-words.ts';
import { unsafeWords } from '../../rules/tips/unsafe-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { itemWords } from '../item-words.ts';
import type { Line, Message } from '../message.ts';

/** "Is green good to go?" yes or no first, then why; for a tip, what may be taken instead. */
export function answerReady({ item }: AskOf<'ready'>, view: AskView): Answer {
  if (item === undefined) {
    const all = [...view.state.scanners.keys()];
    const message: Message = [{ points: all.map((id) => scannerLine(id, view)) }];
    return { about: 'answer', message, items: all.map((id) => `scanner:${id}` as const) };
  }
  const id = item.slice(item.indexOf(':') + 1);
  if (item.startsWith('scanner:'))
    return { about: 'answer', message: [{ line: scannerLine(id, view) }], items: [item] };
  if (item.startsWith('tip:')) return { about: 'answer', message: tipMessage(id, view), items: [item] };
  const holds = view.state.autoclaves.get(id)?.holds ?? [];
  const name = capital(itemWords(view.practice, item));
  const line: Line =
    holds.length === 0
      ? [{ strong: 'Yes: ' }, `${name} is not held.`]
      : [{ strong: 'No: ' }, `${name} is out of service.`];
  return { about: 'answer', message: [{ line }], items: [item] };
}

function scannerLine(id: string, view: AskView): Line {
  const readiness = readinessOf(view, id);
  const site = view.state.scanners.get(id)?.site ?? null;
  const name = itemWords(view.practice, `scanner:${id}`);
  const why = readiness.because.map((reason) => reasonWords(view, reason, site)).join('; ');
  if (readiness.ready) return [{ strong: 'Ready: ' }, why === '' ? `${name}.` : `${name} (${why}).`];
  return [{ strong: 'Not ready: ' }, `${name}: ${why}.`];
}

function tipMessage(id: string, view: AskView): Message {
  const use = canUse(view, id);
  if (use === null) return [{ line: [{ strong: `Tip ${id}` }, ' is not in the practice file.'] }];
  if (use.usable)
    return [
      {
        line: [{ strong: 'Yes: ' }, `tip ${id} is on record as sterile. Check its pack before you open it.`],
      },
    ];
  const site = view.state.tips.get(id)?.site ?? null;
  const why = use.reasons.map((reason) => unsafeWords(view, id, reason)).join('; ');
  return [{ line: [{ strong: 'No: ' }, `tip ${id}: ${why}.`] }, ...sterileHere(view, site)];
}
