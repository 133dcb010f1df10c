import type { Clause } from '../clause.ts';
import { timeContext, timeOf } from '../roles/time.ts';
import { resolveDays } from '../times/resolve-days.ts';
import type { TimeSpan } from '../times/time-span.ts';
import { type Ask, ask, siteOf, WH, wordsOf } from './ask.ts';

/** The record of a stretch of days. */
export const record: Ask = {
  name: 'ask:record',
  read(c, question) {
    const noun = c.at('record');
    if (noun < 0) return null;
    const text = wordsOf(c);
    const time = timeOf(c);
    if (time === null) return null;
    if (/\w=\w/.test(c.scope.note)) return null;
    if (speaksElse(c) || c.entities('tips').length + c.entities('scanner').length > 0) return null;
    if (
      c.parts[noun - 1]?.text === 'to' ||
      c.exactly('break', 'bsdg') >= 0 ||
      /\b(break|breaks|posted|unable)\b/.test(text)
    )
      return null;
    if (/(is|was|are|were) (in|on|done|kept|written|filled|up to date)/.test(text) && !question) return null;
    const site = siteOf(c);
    const days = resolveDays(
      stretchOf(c, time.span),
      timeContext(c, typeof site.site === 'string' ? site.site : null),
      'back',
    );
    if (days === null) return null;
    const bare =
      c.parts.length <= 8 ||
      question ||
      /please|pls|plz|send|get|give|need|want|show|export|can i|could/.test(text);
    if (!bare) return null;
    c.use(...time.said, noun);
    const told = question || REQUESTED.test(text);
    if (told) useErrand(c);
    c.useTags(
      ...WH,
      'record',
      'send',
      'get',
      'give',
      'show',
      'book',
      'run',
      'put',
      'book',
      'scanner',
      'calibrate',
      'tip',
      'autoclave',
      'use',
      'load',
      'see',
      'travel',
      'check',
      'add',
    );
    const asked = ask('record', { from: days.from, to: days.to, ...site }, 1.4, {
      from: time.said,
      to: time.said,
    });
    return told && c.parts.length <= 16 ? asked : { ...asked, whole: true };
  },
};

/** Something that is none of ours; whom it is for ("for the accountant") is no matter. */
function speaksElse(c: Clause): boolean {
  return c.parts.some(
    (p, i) =>
      p.entity === undefined &&
      p.senses.some((s) => s.tag === 'other') &&
      !/^for$/.test(c.parts[i - 1]?.text ?? '') &&
      !(/^(the|our|my|an|a)$/.test(c.parts[i - 1]?.text ?? '') && c.parts[i - 2]?.text === 'for'),
  );
}

/** "Records from last week" are that week's, where no "on" follows. */
function stretchOf(c: Clause, span: TimeSpan): TimeSpan {
  const [day, more] = span.days;
  const whole =
    day?.first.sort === 'week' || day?.first.sort === 'month' || day?.first.sort === 'month-named';
  const from = span.bound === 'since' && !/\bsince\b|\bon(wards?)?\b|\buntil\b/i.test(c.scope.note);
  return whole && more === undefined && from ? { ...span, bound: 'at' } : span;
}

const REQUESTED =
  /\b(please|pls|plz|kindly|can you|could you|can i|could i|may i|i need|we need|needs|need|wants|send me|give me|show me)\b/;

/** "Pull", "print", "for the inspector": what is to be done with the record and for whom. */
function useErrand(c: Clause): void {
  for (const [i, part] of c.parts.entries()) {
    if (part.entity?.is === 'person') c.use(i);
    if (part.entity !== undefined || part.mark) continue;
    if (
      /^(pull|pull up|print|print out|share|e-?mail|export|download|forward|prepare|compile|whole|entire|full|complete)$/.test(
        part.text,
      )
    )
      c.use(i);
    if (part.text === 'for')
      c.use(i + 1, /^(the|an|a|our|my)$/.test(c.parts[i + 1]?.text ?? '') ? i + 2 : -1);
  }
}
