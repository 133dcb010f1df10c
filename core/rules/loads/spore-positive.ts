import { ruleValue } from '../../defaults/rule-value.ts';
import type { SporePositive } from '../../record/finding.ts';
import type { LoadState } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { dayWords } from '../../words/clock-words.ts';
import { autoclaveWords, loadItem } from '../../words/load-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { openedBy } from '../incidents/opened-by.ts';
import type { View } from '../matter.ts';
import { leadIds } from '../rights.ts';
import type { Speech } from '../speech.ts';
import { capital, inWords, tipsInWords } from '../tips/tip-words.ts';
import { concernedCount, concernedList } from './concerned-words.ts';
import { itemsConcerned, lookBack } from './look-back.ts';

/**
 * A positive spore test: out of service, the loads since the last negative one, what is recalled and why; then every
 * scan that stood under a recalled load.
 */
export function speakSporePositive(finding: SporePositive, view: View): readonly Speech[] {
  const loads = finding.loads.flatMap((key) => view.state.loads.get(key) ?? []);
  const items = [...finding.items, ...loads.map(loadItem)];
  const message: Message = [
    ...lines([
      {
        strong: `Spore test positive: ${autoclaveWords(view.practice, finding.autoclave)} is out of service.`,
      },
      finding.inRow > 1 ? ` ${finding.inRow} positive in a row.` : '',
    ]),
    ...lines(...recallLines(finding, view)),
    ...loadLines(view, loads),
    ...lines(backInService(finding, view)),
  ];
  const post: Speech = {
    about: 'spore-test',
    items,
    message,
    mentions: leadIds(view.practice),
    decides: [openedBy(finding, finding.items, view)],
  };
  return [post, ...recalledScans(finding, view)];
}

function recallLines(finding: SporePositive, { practice, state }: View): Line[] {
  const { recalledLoads, recalledTips, loads, inRow } = finding;
  if (loads.length === 0) return [['No loads are on record since its last negative test.']];
  if (recalledLoads.length === 0)
    return [
      [
        'Their own figures and indicators are noted good, so their tips stay usable. Repeat the test at once.',
      ],
    ];
  const numbers = recalledLoads.flatMap((key) => state.loads.get(key)?.number ?? []);
  const what = `${numbers.length === 1 ? 'load' : 'loads'} ${inWords(numbers)}`;
  const why = `Why: ${recallReason(inRow, ruleValue(practice, 'sporeRecall'), numbers.length)}.`;
  if (recalledTips.length === 0)
    return [[{ strong: `Recalled: ${what}.` }, ' No tip stands under it any more.'], [why]];
  return [
    [
      { strong: `Recalled: ${tipsInWords(recalledTips)}` },
      ` (${what}): not sterile. Through another autoclave before use.`,
    ],
    [why],
  ];
}

function recallReason(inRow: number, rule: 'first' | 'second', loads: number): string {
  if (inRow > 1) return 'the repeat is positive too';
  if (rule === 'first') return 'this practice recalls at the first positive';
  return `good figures and a good indicator are not both noted of ${loads === 1 ? 'it' : 'them'}`;
}

function loadLines({ practice, now }: View, loads: readonly LoadState[]): Message {
  if (loads.length === 0) return [];
  const points = loads.toReversed().map((load): Line => {
    const at = load.finished ?? load.started;
    const day = at === null ? load.date : dayWords(at.at, now, zoneOf(practice, load.site));
    const unsaid = load.autoclave === null && practice.autoclaves.length > 1 ? ' (autoclave not said)' : '';
    return [`load ${load.number}${unsaid}, ${day}: ${tipsOf(load)}`];
  });
  return [...lines('Loads since its last negative test, newest first:'), { points }];
}

function tipsOf({ tips, started }: LoadState): string {
  if (tips.length > 0) return tipsInWords(tips);
  return started === null ? 'tips not noted' : 'empty';
}

/** CDC 2003, VI.F.8–9, as quoted in the project's list of sources: a clear repeat, or repair and three clear cycles. */
function backInService({ inRow, autoclave }: SporePositive, { practice, state }: View): string {
  if (inRow < 2)
    return 'Check how it was loaded and run, and repeat the spore test; a clear repeat puts it back in service. Your local code comes first.';
  const site = state.autoclaves.get(autoclave)?.site ?? undefined;
  const cycles = ruleValue(practice, 'sporeClearCycles', { site });
  return `Inspection or repair first, then ${cycles} clear empty-chamber cycles in a row. Your local code comes first.`;
}

function recalledScans({ recalledLoads, items }: SporePositive, view: View): Speech[] {
  const concerned = lookBack(view.state, recalledLoads);
  if (concerned.length === 0) return [];
  const message: Message = [
    ...lines([{ strong: `${capital(concernedCount(concerned))} with recalled tips.` }, ' Newest first:']),
    ...concernedList(view, concerned),
    ...lines('What follows is for the lead and the practice’s own procedure. No patient names here, please.'),
  ];
  const about = [...new Set([...items, ...itemsConcerned(concerned)])];
  return [{ about: 'look-back', items: about, message, mentions: leadIds(view.practice) }];
}
