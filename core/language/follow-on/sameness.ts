import { type Cut, leadOf, tailOf } from './end-words.ts';

/** A note that names only items and says that of them the same is true as was told before: "blue too", "& 7", "same for white". */
export interface Sameness {
  /** The words that name the items, as typed. */
  readonly items: string;
  /** The note says itself that it may not be so. */
  readonly doubted: boolean;
  /** What it says of how it came out: "green too, all good"; "green didn't", "nor 5" are the opposite of good. */
  readonly came?: 'good' | 'bad';
}

/** Longer notes tell something of their own. */
const LONGEST = 10;

/**
 * The items of such a note; `null` where no word of sameness or joining stands at either end, nothing is left between
 * them, or it asks.
 */
export function samenessIn(text: string): Sameness | null {
  if (text.includes('?') || text.length > 80) return null;
  const doubt = DOUBT.exec(text);
  const whole = doubt === null ? text : text.slice(0, doubt.index);
  const good = GOOD.exec(whole);
  let words = (good === null ? whole : whole.slice(0, good.index))
    .replaceAll(/[’‘`´]/g, "'")
    .replaceAll(/[&+]/g, ' $& ')
    .trim()
    .split(/\s+/)
    .map((word) => word.replace(/[^\p{L}\p{N}]+$/u, (end) => (/^,$|^[&+]/.test(end) ? end : '')))
    .filter((word) => word !== '');
  if (words.length < 2 || words.length > LONGEST) return null;
  let said = false;
  let came: Sameness['came'] = good === null ? undefined : 'good';
  const take = (cut: Cut | null): boolean => {
    if (cut === null) return false;
    words = cut.rest;
    said ||= cut.says !== false;
    if (cut.says === 'good' || cut.says === 'bad') came = cut.says;
    return true;
  };
  while (take(leadOf(words)));
  while (take(tailOf(words)));
  const items = words.join(' ').replace(/,$/, '');
  if (!said || !/[\p{L}\p{N}]/u.test(items)) return null;
  return { items, doubted: doubt !== null, ...(came === undefined ? {} : { came }) };
}

/** Said behind "too" of how it came out; alone it is no word of sameness. */
const GOOD =
  /[\s,–-]+(?:(?:it|they|that)? ?(?:is|was|are|were)? ?(?:all )?(?:good|fine|ok|okay|passed|clear)|no (?:issues|probs|problems))\W*$/i;

const DOUBT =
  /(?:^|[\s,(–-])(?:i (?:think|guess|believe|reckon)|maybe|probably|prob|perhaps|possibly|not sure)\W*$/i;
