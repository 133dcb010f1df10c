import type { Clause } from '../clause.ts';
import { isDenied } from '../roles/outcome.ts';
import { tipSlots, tipsOf } from '../roles/tips.ts';
import { type Frame, made, result } from './frame.ts';

/** "Tips 1-4 are clean": said of the tip as it stands, not of somebody's cleaning. */
function cleanAt(c: Clause): number {
  const at = c.word(/^clean$/);
  const before = c.parts[at - 1];
  if (at < 1 || isDenied(c, at)) return -1;
  return before?.entity?.is === 'tips' || /^(is|are|'s|all|now|still)$/.test(before?.text ?? '') ? at : -1;
}

/** A tip said to be clean was washed, or is sterile: which of them is asked, since one may go in a mouth and the other not. */
export const cleanTips: Frame = {
  name: 'clean-tips',
  on: ['clean'],
  read(c) {
    const at = cleanAt(c);
    if (at < 0 || c.entities('scanner').length > 0 || c.has('lens', 'base', 'need')) return null;
    // What was found by looking is the inspection's to say.
    if (/\b(?:inspect|check|look|mag|loupe)/i.test(c.scope.note)) return null;
    c.use(at);
    c.useTags('be');
    const tips = tipsOf(c, { bare: true, before: false });
    if (tips === null || tips.missing !== undefined || !tips.spoken) return null;
    return {
      ...result([made('sterile', tipSlots(tips), { tips: tips.said })], -1, undefined, 1),
      doubtful: true,
    };
  },
};
