import type { AskOf } from '../../reading/ask.ts';
import type { Item } from '../../reading/slots.ts';
import type { Mark } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { placeWords } from '../../rules/tips/place-words.ts';
import { capital } from '../../rules/tips/tip-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { clockWords } from '../clock-words.ts';
import { itemWords } from '../item-words.ts';
import { type Line, lines } from '../message.ts';
import { nameOf } from '../people-words.ts';

/** Where something is, since when and by whose word. */
export function answerWhere({ item }: AskOf<'where'>, view: AskView): Answer {
  return { about: 'answer', message: lines(whereLine(item, view)), items: [item] };
}

/** One line that tells where an item is; starts with its name. */
export function whereLine(item: Item, view: AskView): Line {
  const id = item.slice(item.indexOf(':') + 1);
  const name = capital(itemWords(view.practice, item));
  if (item.startsWith('scanner:')) return scannerLine(id, name, view);
  if (item.startsWith('calibration-tip:')) return calibrationTipLine(id, name, view);
  if (item.startsWith('tip:')) return tipLine(id, name, view);
  const site = view.practice.autoclaves.find((one) => one.id === id)?.site ?? null;
  return [
    { strong: name },
    site === null ? ': not in the practice file.' : `: ${placeWords(view.practice, site, null)}.`,
  ];
}

function scannerLine(id: string, name: string, view: AskView): Line {
  const scanner = view.state.scanners.get(id);
  if (scanner === undefined) return [{ strong: name }, ': not in the practice file.'];
  if (scanner.missing !== null)
    return [{ strong: name }, `: missing${sinceBy(view, scanner.site, scanner.missing)}.`];
  if (scanner.departed !== null) {
    const to =
      scanner.departed.to === null ? '' : ` to ${placeWords(view.practice, scanner.departed.to, null)}`;
    return [{ strong: name }, `: on its way${to}${sinceBy(view, scanner.site, scanner.departed.mark)}.`];
  }
  const tip = scanner.tip === null ? '' : `, with tip ${scanner.tip} on`;
  return [
    { strong: name },
    `: ${placeWords(view.practice, scanner.site, scanner.room)}${tip}${sinceBy(view, scanner.site, scanner.placed)}.`,
  ];
}

function calibrationTipLine(id: string, name: string, view: AskView): Line {
  const tip = view.state.scanners.get(id)?.calibrationTip;
  if (tip === undefined) return [{ strong: name }, ': not in the practice file.'];
  if (tip.missing !== null) return [{ strong: name }, `: missing${sinceBy(view, tip.site, tip.missing)}.`];
  return [
    { strong: name },
    `: ${placeWords(view.practice, tip.site, tip.room)}${sinceBy(view, tip.site, tip.mark)}.`,
  ];
}

function tipLine(id: string, name: string, view: AskView): Line {
  const tip = view.state.tips.get(id);
  if (tip === undefined) return [{ strong: name }, ': not in the practice file.'];
  if (tip.scanner !== null) {
    const scanner = itemWords(view.practice, `scanner:${tip.scanner}`);
    return [
      { strong: name },
      `: on ${scanner}, ${placeWords(view.practice, tip.site, tip.room)}${sinceBy(view, tip.site, tip.fitted)}.`,
    ];
  }
  const state = tip.state === 'unknown' ? 'state not known yet' : tip.state;
  if (tip.state === 'missing') return [{ strong: name }, `: missing${sinceBy(view, tip.site, tip.missing)}.`];
  return [
    { strong: name },
    `: ${placeWords(view.practice, tip.site, tip.room)}, ${state}${sinceBy(view, tip.site, tip.since)}.`,
  ];
}

/** " since 10:30 (Tom)"; nothing where no note says. */
export function sinceBy(view: AskView, site: string | null, mark: Mark | null): string {
  if (mark === null) return '';
  const by = mark.by === null ? '' : ` (${nameOf(view.practice, mark.by)})`;
  return ` since ${clockWords(mark.at, view.now, zoneOf(view.practice, site))}${by}`;
}
