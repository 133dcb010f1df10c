import type { UnsafeTip } from '../../record/finding.ts';
import { zoneOf } from '../../record/where.ts';
import { clockWords } from '../../words/clock-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { askReached } from '../incidents/ask-reached.ts';
import type { View } from '../matter.ts';
import type { Speech } from '../speech.ts';
import { scannerWords, sterileHere } from './tip-words.ts';
import { unsafeWords } from './unsafe-words.ts';

/**
 * A tip that must not be used is on a scanner, or was used: the warning, then whether it reached a patient. Once for a
 * cause (fitting it and scanning with it are one), and on day one once for a tip.
 */
export function speakUnsafeTip(finding: UnsafeTip, view: View): readonly Speech[] {
  if (finding.again) return [];
  return [warning(finding, view), askReached(finding, view)];
}

function warning(finding: UnsafeTip, view: View): Speech {
  const { tip, reasons } = finding;
  const [gravest, ...others] = reasons.map((reason) => unsafeWords(view, tip, reason));
  const message: Message = [
    ...lines([{ strong: `Stop: tip ${tip} must not be used.` }, ` ${contact(finding, view)}`]),
    ...lines(`Why: ${[gravest ?? 'not sterile on record', ...others].join('. Also: ')}.`),
    ...(finding.dayOne ? lines(uncounted(view, finding.site)) : []),
    ...sterileHere(view, finding.site),
  ];
  return { about: 'warning', items: finding.items, message, mentions: [] };
}

/** Day one: what is unknown may be on the shelf and good; the way to say so comes with the warning, once. */
function uncounted({ practice }: View, site: string | null): string {
  const ids = practice.tips.filter(({ home }) => site === null || home === site).map(({ id }) => id);
  const example = ids.length > 2 ? `tips ${ids[0]} to ${ids.at(-1)} are` : `tip ${ids[0] ?? '1'} is`;
  return `The tips here have not been counted yet. Say which are sterile, such as “${example} sterile and on the shelf”.`;
}

function contact({ scanner, by, site, mark }: UnsafeTip, { practice, now }: View): Line[number] {
  const at = clockWords(mark.at, now, zoneOf(practice, site));
  const on = scanner === null ? '' : ` on ${scannerWords(practice, scanner)}`;
  if (by === 'fitted') return `Fitted${on}, ${at}.`;
  return by === 'scan-started' ? `A scan was started with it${on}, ${at}.` : `Used${on}, ${at}.`;
}
