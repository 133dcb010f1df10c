import { type Item, type Sequence, treeOf } from './pattern-tree.ts';

/** A run of letters, or of figures, that stands in whatever a pattern matches. */
export interface Run {
  readonly text: string;
  /** True where it stands there as a word of its own: a figure ends a word of letters, as a mark does. */
  readonly whole: boolean;
}

/** One of these; `null` where nothing can be told. */
export type Needed = readonly Run[] | null;

/** The runs one of which a pattern needs, read from its source, case aside. */
export function neededBy(pattern: RegExp): Needed {
  return ofEither(treeOf(pattern), NOTHING_BESIDE);
}

/** Whether what stands beside a sequence ends a word there. */
interface Beside {
  readonly left: boolean;
  readonly right: boolean;
}

/** Something of each alternative is needed. */
function ofEither(either: readonly Sequence[], beside: Beside): Needed {
  const all: Run[] = [];
  for (const one of either) {
    const needed = ofSequence(one, beside);
    if (needed === null) return null;
    all.push(...needed);
  }
  return all;
}

/** The surest of what a sequence needs. */
function ofSequence(items: Sequence, beside: Beside): Needed {
  let best: Needed = null;
  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    if (item === undefined || item.often === 'perhaps') continue;
    if (item.is === 'group') {
      const own = { left: endsWord(items, i - 1, beside), right: beginsAfterWord(items, i + 1, beside) };
      best = surer(best, ofEither(item.either, item.often === 'once' ? own : NOTHING_BESIDE));
    } else if (sortOf(item) !== null) {
      const to = endOfRun(items, i);
      const text = items.slice(i, to).reduce((run, one) => run + (one.is === 'char' ? one.char : ''), '');
      const whole =
        endsRun(items[i - 1], item, endsWord(items, i - 1, beside)) &&
        endsRun(items[to], item, beginsAfterWord(items, to, beside)) &&
        items[to - 1]?.often === 'once';
      best = surer(best, [{ text, whole }]);
      i = to - 1;
    }
  }
  return best;
}

/** Past the letters, or figures, that stand together from an item on. */
function endOfRun(items: Sequence, from: number): number {
  const sort = sortOf(items[from]);
  let to = from + 1;
  while (items[to - 1]?.often === 'once' && items[to]?.often !== 'perhaps' && sortOf(items[to]) === sort)
    to++;
  return to;
}

function sortOf(item: Item | undefined): 'letter' | 'figure' | null {
  if (item?.is !== 'char') return null;
  if (/[a-z]/.test(item.char)) return 'letter';
  return /[0-9]/.test(item.char) ? 'figure' : null;
}

/** True where a run ends at a neighbour: a figure beside a letter, or what ends a word anyway. */
function endsRun(neighbour: Item | undefined, own: Item, otherwise: boolean): boolean {
  const sort = sortOf(neighbour);
  return sort === null || neighbour?.often !== 'once' ? otherwise : sort !== sortOf(own);
}

/** True where a word has ended before the item after `at`. */
function endsWord(items: Sequence, at: number, beside: Beside): boolean {
  const item = items[at];
  if (item === undefined) return beside.left;
  if (item.often === 'perhaps' && !endsWord(items, at - 1, beside)) return false;
  if (item.is === 'group') return item.either.every((one) => endsWord(one, one.length - 1, NOTHING_BESIDE));
  return item.is === 'edge' || (item.is === 'char' && sortOf(item) === null);
}

/** True where no word goes on at the item `at`. */
function beginsAfterWord(items: Sequence, at: number, beside: Beside): boolean {
  const item = items[at];
  if (item === undefined) return beside.right;
  if (item.often === 'perhaps' && !beginsAfterWord(items, at + 1, beside)) return false;
  if (item.is === 'group') return item.either.every((one) => beginsAfterWord(one, 0, NOTHING_BESIDE));
  return item.is === 'edge' || (item.is === 'char' && sortOf(item) === null);
}

const NOTHING_BESIDE: Beside = { left: false, right: false };

/** The surer of two needs: words of their own before runs inside words, long before short, few before many. */
function surer(a: Needed, b: Needed): Needed {
  if (a === null || b === null) return a ?? b;
  const [sureA, sureB] = [leastSure(a), leastSure(b)];
  if (sureA !== sureB) return sureA > sureB ? a : b;
  return b.length < a.length ? b : a;
}

function leastSure(runs: Needed): number {
  return Math.min(...(runs ?? []).map(({ text, whole }) => text.length + (whole ? 3 : 0)));
}
