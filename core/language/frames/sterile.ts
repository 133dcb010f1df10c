import type { Clause } from '../clause.ts';
import { isDenied } from '../roles/outcome.ts';
import { tipSlots, tipsOf } from '../roles/tips.ts';
import { type Frame, made, result } from './frame.ts';
import { sterilePlace } from './sent.ts';

/** What was sterilised, or is meant to be; not what is under way or "to be autoclaved". */
function sterilisedAt(c: Clause): number {
  const at = c.form('sterilise', 'd');
  const text = c.parts[at]?.text ?? '';
  if (/^(be|to be)$/.test(c.parts[at - 1]?.text ?? '') && c.has('send', 'go')) return -1;
  return /ing$/.test(text) && c.exactly('sterilise', 'd') < 0 && !c.has('finish', 'intend') ? -1 : at;
}

const BAD = /^(unwashed|unsterile|unclean|wet|damp|opened|open|torn|without)$/;

export const sterile: Frame = {
  name: 'sterile',
  on: ['sterile', 'sterilise', 'autoclave', 'steri', 'room', 'come'],
  read(c) {
    // "Put 5 back on the shelf dirty" says the contrary.
    if (c.has('debris', 'spore', 'held', 'use', 'tear') || c.word(BAD) >= 0) return null;
    let verb = c.form('sterile', 'd');
    if (verb < 0) verb = sterilisedAt(c);
    if (verb < 0) {
      const place = sterilePlace(c);
      const back = c.word(/^(back|out|out of|returned|come back|came back)$/);
      if (
        place < 0 ||
        !(c.prep(place) === 'from' || (c.prep(place) === 'of' && c.word(/^(out|out of)$/) >= 0)) ||
        (back < 0 && !c.has('come', 'get', 'take', 'bring'))
      )
        return null;
      c.use(place, back);
      verb = place;
    }
    c.use(verb);
    c.useTags('sterile', 'sterilise', 'shelf', 'autoclave', 'come');
    const tips = tipsOf(c, { bare: true });
    if (tips === null) return null;
    if (isDenied(c, verb) || c.parts[verb - 1]?.text === 'no') {
      if (tips.missing === undefined && tips.ids.length === 0) return null;
      return {
        ...result(
          [made('held', { items: tips.ids.map((id) => `tip:${id}`) }, { items: tips.said })],
          verb,
          tips.missing,
        ),
        anyMood: true,
      };
    }
    return result([made('sterile', tipSlots(tips), { tips: tips.said })], verb, tips.missing);
  },
};
