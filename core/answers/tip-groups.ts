import type { Mark, TipState, UnsafeWhy } from '../record/state.ts';
import { reasonsAgainst } from '../record/tip-safety.ts';
import { zoneOf } from '../record/where.ts';
import type { View } from '../rules/matter.ts';
import { TIP_STANDINGS, type TipStanding, tipStanding } from '../rules/tips/tip-standing.ts';
import { capital, scannerWords } from '../rules/tips/tip-words.ts';
import { clockWords } from '../words/clock-words.ts';
import { tipsAsRanges } from '../words/item-words.ts';
import { loadWords } from '../words/load-words.ts';
import type { Line } from '../words/message.ts';
import { nameOf } from '../words/people-words.ts';
import { placeWords } from '../words/place-words.ts';

/** Tips of which the same is to be said, in the order of the practice file. */
export interface TipGroup {
  /** "used", "on blue scanner, used", "in load 118". */
  readonly words: string;
  readonly tips: readonly TipState[];
}

/** Up to this many of a group are told with since when and by whom; of more, only the first. */
const TOLD_ONE_BY_ONE = 3;
/** A reason typed by hand is kept this short in a list, characters. */
const REASON_LENGTH = 40;

/** Tips by what is to be said of each. */
export function tipGroups(view: View, tips: readonly TipState[]): readonly TipGroup[] {
  const groups = new Map<string, { rank: TipStanding; tips: TipState[] }>();
  for (const tip of tips) {
    const words = tipStateWords(view, tip);
    const group = groups.get(words) ?? { rank: tipStanding(view, tip), tips: [] };
    group.tips.push(tip);
    groups.set(words, group);
  }
  return [...groups]
    .map(([words, group]) => ({ words, ...group }))
    .sort((one, other) => TIP_STANDINGS.indexOf(one.rank) - TIP_STANDINGS.indexOf(other.rank));
}

/** What is to be said of a tip's state: "used", "on blue scanner, used", "in load 118", "held (cracked mirror)". */
export function tipStateWords(view: View, tip: TipState): string {
  const rank = tipStanding(view, tip);
  if (rank !== 'away') return wordsOf(view, tip, rank);
  const to = tip.departed?.to ?? null;
  const way = `on the way${to === null ? '' : ` to ${placeWords(view.practice, to, null)}`}`;
  if (tip.state === 'unknown' || tip.state === 'fitted') return way;
  return `${way}, ${wordsOf(view, tip, tip.state)}`;
}

function wordsOf(view: View, tip: TipState, rank: TipStanding): string {
  switch (rank) {
    case 'fitted':
      return `on ${tip.scanner === null ? 'a scanner' : scannerWords(view.practice, tip.scanner)}${tip.usedSinceFitted || tip.state === 'used' ? ', used' : ''}`;
    case 'sent':
      return 'sent to the autoclave';
    case 'in-load':
      return inLoad(view, tip);
    case 'held': {
      const reason = tip.holds[0]?.reason ?? null;
      return reason === null ? 'held' : `held (${shortened(reason)})`;
    }
    case 'unfit':
      return UNFIT[reasonsAgainst(view.state, tip, view.now)[0]?.why ?? 'not-sterile'] ?? 'not to be used';
    case 'unknown':
      return 'not known yet';
    default:
      return rank;
  }
}

/** Why a tip that is sterile by its last load is not to be taken. */
const UNFIT: Partial<Record<UnsafeWhy, string>> = {
  'too-old': 'stored too long',
  'past-cycles': 'past the limit of cycles',
  doubted: 'in doubt',
  'load-doubted': 'from a load in doubt',
};

function inLoad({ practice, state }: View, tip: TipState): string {
  const load = tip.load === null ? undefined : state.loads.get(tip.load);
  if (load === undefined) return 'in a load';
  if (load.status === 'needs-release') return `in ${loadWords(practice, load)}, not released`;
  return `in ${loadWords(practice, load)}${load.status === 'doubted' ? ', in doubt' : ''}`;
}

function shortened(reason: string): string {
  const text = reason.trim();
  return text.length <= REASON_LENGTH ? text : `${text.slice(0, REASON_LENGTH - 1).trimEnd()}…`;
}

/** One group as a line: "Used: tips 2, 6 since 10:05 (Rosa); tip 5 since yesterday 16:40 (Tom)". */
export function groupLine(view: View, { words, tips }: TipGroup): Line {
  const count = tips.length > TOLD_ONE_BY_ONE ? `, ${tips.length}` : '';
  return [{ strong: capital(words) + count }, `: ${idsSince(view, tips)}`];
}

function idsSince(view: View, tips: readonly TipState[]): string {
  const byMark = new Map<string, TipState[]>();
  for (const tip of tips) {
    const words = sinceWords(view, tip);
    byMark.set(words, [...(byMark.get(words) ?? []), tip]);
  }
  if (tips.length <= TOLD_ONE_BY_ONE || byMark.size === 1)
    return [...byMark].map(([words, some]) => tipsAsRanges(some.map(({ id }) => id)) + words).join('; ');
  const dated = tips.flatMap((tip) => {
    const mark = sinceOf(tip);
    return mark === null ? [] : [{ tip, mark }];
  });
  const [first] = dated.sort((one, other) => one.mark.at - other.mark.at);
  const since = first === undefined ? '' : `, the first${timeWords(view, first.tip, first.mark)}`;
  return tipsAsRanges(tips.map(({ id }) => id)) + since;
}

/** Since when it is what it is said to be; of a sterile one on the shelf that is of no use to anybody. */
function sinceOf(tip: TipState): Mark | null {
  const { state, missing, departed, scanner, fitted, since } = tip;
  if (state === 'held' || missing !== null) return since;
  if (departed !== null) return departed.mark;
  if (scanner !== null && !tip.usedSinceFitted) return fitted;
  return state === 'sterile' ? null : since;
}

function sinceWords(view: View, tip: TipState): string {
  const mark = sinceOf(tip);
  if (mark === null) return '';
  return timeWords(view, tip, mark) + (mark.by === null ? '' : ` (${nameOf(view.practice, mark.by)})`);
}

function timeWords(view: View, tip: TipState, mark: Mark): string {
  return ` since ${clockWords(mark.at, view.now, zoneOf(view.practice, tip.site))}`;
}
