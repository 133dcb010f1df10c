import type { AskOf } from '../../reading/ask.ts';
import type { LoadState } from '../../record/state.ts';
import { openLoads } from '../../rules/day/open-loads.ts';
import { inWords } from '../../rules/tips/tip-words.ts';
import { tipsAsRanges } from '../../words/item-words.ts';
import { autoclaveWords, loadItem, loadWords } from '../../words/load-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { spanWords } from '../../words/span-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { sitesOfAsk } from '../site-of-ask.ts';
import { whenBy } from '../when-by.ts';
import { LOAD_STATUS } from './load.ts';

/** More is not read on a phone. */
const SHOWN = 8;

/** "What's in the autoclave?", "anything failed this month?": loads with their tips, the latest first. */
export function answerLoads(ask: AskOf<'loads'>, view: AskView): Answer {
  const found = loadsOf(ask, view).filter((load) => isHere(load, ask, view));
  const at = ask.autoclave === undefined ? '' : ` in ${autoclaveWords(view.practice, ask.autoclave)}`;
  const span = ask.from === undefined ? '' : `: ${spanWords(ask.from, ask.to ?? ask.from)}`;
  const waiting = ask.which === 'open' ? sentLine(ask, view) : [];
  if (found.length === 0) {
    const none: Line = [{ strong: NONE[ask.which] }, `${at}${span}.`];
    return { about: 'answer', message: [{ line: none }, ...waiting], items: [] };
  }
  const count = found.length === 1 ? '1 load' : `${found.length} loads`;
  const head: Line = [{ strong: `${count}${HEADS[ask.which]}` }, `${at}${span === '' ? ':' : `${span}.`}`];
  const more = found.length - SHOWN;
  const message: Message = [
    { line: head },
    { points: found.slice(0, SHOWN).map((load) => loadLine(load, view)) },
    ...lines(...(more > 0 ? [`And ${more} more: ask for the record of those days.`] : [])),
    ...waiting,
  ];
  return { about: 'answer', message, items: found.map(loadItem) };
}

type Which = AskOf<'loads'>['which'];
const NONE: Readonly<Record<Which, string>> = {
  open: 'No load is on',
  failed: 'No failed load',
  all: 'No load',
};
const HEADS: Readonly<Record<Which, string>> = { open: ' with no result yet', failed: ' failed', all: '' };

/** Open ones are at hand; those of a stretch of days are looked up in all of the record. */
function loadsOf({ which, from, to }: AskOf<'loads'>, view: AskView): readonly LoadState[] {
  const { loads } = view.state;
  if (which === 'open')
    return loads.recent().filter(({ status }) => status === 'open' || status === 'needs-release');
  const some = from === undefined ? loads.recent() : loads.all();
  return some
    .filter(({ date, status }) => {
      const isIn = from === undefined || (date >= from && date <= (to ?? from));
      return isIn && (which === 'all' || status === 'failed');
    })
    .reverse();
}

function isHere(load: LoadState, { autoclave, site }: AskOf<'loads'>, view: AskView): boolean {
  if (autoclave !== undefined) return load.autoclave === autoclave;
  const sites = sitesOfAsk(view.practice, site, view.room);
  return (
    load.site === null || sites.includes(load.site) || sites.some((id) => openLoads(view, id).includes(load))
  );
}

function loadLine(load: LoadState, view: AskView): Line {
  const { started, finished, site } = load;
  const times = [
    started === null ? '' : `on ${whenBy(started, site, view)}`,
    finished === null ? '' : `out ${whenBy(finished, site, view)}`,
  ].filter((words) => words !== '');
  const tips = load.tips.length === 0 ? 'no tips noted' : tipsAsRanges(load.tips);
  const name = loadWords(view.practice, load);
  const status = LOAD_STATUS[load.status];
  return [
    { strong: `${name.slice(0, 1).toUpperCase()}${name.slice(1)}` },
    `: ${status}, ${tips}, ${inWords(times)}`,
  ];
}

/** Tips that were sent with no load named may be in one too. */
function sentLine({ autoclave, site }: AskOf<'loads'>, view: AskView): Message {
  if (autoclave !== undefined) return [];
  const sites = sitesOfAsk(view.practice, site, view.room);
  const sent = [...view.state.tips.values()].filter((tip) => {
    return tip.state === 'sent' && tip.site !== null && sites.includes(tip.site);
  });
  return sent.length === 0 ? [] : lines(`Sent, no load named: ${tipsAsRanges(sent.map(({ id }) => id))}.`);
}
