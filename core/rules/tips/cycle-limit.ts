import { ruleValue } from '../../defaults/rule-value.ts';
import type { NearLimit, PastLimit } from '../../record/finding.ts';
import type { TipState } from '../../record/state.ts';
import { MINUTE } from '../../time/instant.ts';
import { type Line, lines } from '../../words/message.ts';
import type { Matter, View } from '../matter.ts';
import { whenOpen } from '../quiet.ts';
import { chatRoomFor } from '../room-of.ts';
import type { Speech } from '../speech.ts';
import { tipsInWords } from './tip-words.ts';
import { spokenTogether } from './together.ts';

/** Sent or loaded with no cycle left: retire it. The fact stays as said. */
export function speakPastLimit(finding: PastLimit, view: View): readonly Speech[] {
  const all = spokenTogether(view, finding);
  if (all.length === 0) return [];
  const many = all.length > 1;
  const counts = all.map(({ tip, cycles, limit }): Line => [`Tip ${tip}: ${cycles} of ${limit} cycles.`]);
  const ids = all.map(({ tip }) => tip);
  return [
    {
      about: 'caution',
      items: all.flatMap(({ items }) => items),
      message: [
        ...lines([
          { strong: `Retire ${tipsInWords(ids)}.` },
          ` ${many ? 'They have' : 'It has'} no cycle left.`,
        ]),
        { points: counts },
        ...lines(
          `The maker’s limit comes first: do not put ${many ? 'them' : 'it'} on a scanner again. Note “binned ${tipsInWords(ids)}”.`,
        ),
      ],
      mentions: [],
    },
  ];
}

/**
 * A count that reached the limit: one last use. Coming near it is a matter (`nearLimits`), once per tip; where that was
 * not said yet, it says this too.
 */
export function speakNearLimit(finding: NearLimit, view: View): readonly Speech[] {
  const all = spokenTogether(view, finding).filter(({ tip, cycles, limit }) => {
    return cycles === limit && view.said.saidAt(keyOf(tip, limit), 'first') !== null;
  });
  if (all.length === 0) return [];
  const ids = all.map(({ tip }) => tip);
  return [
    {
      about: 'order',
      items: all.flatMap(({ items }) => items),
      message: lines([
        { strong: `One last use: ${tipsInWords(ids)}.` },
        ' At the maker’s limit of cycles; retire after it.',
      ]),
      mentions: [],
    },
  ];
}

function keyOf(tip: string, limit: number): string {
  return `near-limit|tip:${tip}|${limit}`;
}

/** Rule `near-limit`: a tip within `cyclesOrderWithin` (2) of its maker's limit: order another, said once per tip. */
export function nearLimits(view: View): readonly Matter[] {
  const within = ruleValue(view.practice, 'cyclesOrderWithin');
  const matters: Matter[] = [];
  for (const tip of view.state.tips.values()) {
    if (tip.limit === null || tip.retired !== null || tip.limit - tip.cycles > within) continue;
    const matter = nearLimit(view, tip, tip.limit);
    if (matter !== null) matters.push(matter);
  }
  return matters;
}

function nearLimit(view: View, tip: TipState, limit: number): Matter | null {
  const { practice, state } = view;
  const site = tip.site ?? practice.sites[0]?.id ?? null;
  const room = site === null ? null : chatRoomFor(view, site, () => tip.spoken);
  if (site === null || room === null) return null;
  // The load that brought it here; a tip that began near its limit has none, and is spoken of at once.
  const ended = tip.load === null ? null : (state.loads.get(tip.load)?.finished?.at ?? null);
  const at = whenOpen(practice, state, site, ended ?? tip.spoken?.at ?? view.now - MINUTE);
  return {
    key: keyOf(tip.id, limit),
    rule: 'near-limit',
    about: 'order',
    site,
    room,
    items: [`tip:${tip.id}`],
    stages: [{ stage: 'first', at }],
    since: at,
    group: `near-limit@${site}`,
    line: lines(lineOf(tip, limit)),
    leads: [],
  };
}

function lineOf({ id, cycles }: TipState, limit: number): Line {
  const left = limit - cycles;
  const rest = left < 0 ? 'Past it: retire it.' : left === 0 ? 'One last use, then retire it.' : '';
  return [
    { strong: `Order a tip in place of tip ${id}:` },
    ` ${cycles} of ${limit} cycles.`,
    rest === '' ? '' : ` ${rest}`,
  ];
}
