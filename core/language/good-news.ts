import type { Clause } from './clause.ts';
import { hasTag, type Part } from './part.ts';
import type { Result } from './result.ts';
import { isGood } from './stray.ts';

/** "Sterile if 118 passed": what it hangs on. Not "when I looked", which only tells the time. */
const HANGS_ON =
  /^(?:if|unless|only if|even if|provided|providing|assuming|as long as|so long as|iff|suppose|supposing|in case)$/;

/** Said of good news it takes the word back, or makes it less than it says. */
const LESS =
  /^(?:half|halfway|partly|partially|part|by mistake|mistakenly|in error|wrong|wrongly|the wrong|fingers crossed|touch wood|knock on wood)$/;

const IN_JEST =
  /\b(?:jk|just kidding|only (?:joking|kidding)|my (?:arse|ass|foot|eye|hole)|yeah right|as if|in your dreams|said no(?: |-)?(?:one|body) ever)\b|\(not\)|(?:[,.…–-]|passed|sterile|calibrated|good|fine|ready|clear)\s*not[!.\s]*$/i;

/** Good news that is not to be taken at its word: a joke is nothing, and what hangs on something else is asked about. */
export type Trust = 'taken' | 'asked' | 'jest';

/**
 * How far what would make something safe to use may be believed. `cut`: the part at which a supposition begins, −1 where
 * none does. Bad news is taken however it is said.
 */
export function trustIn(c: Clause, { made }: Result, whole: readonly Part[], cut: number): Trust {
  if (!made.some(({ entry }) => isGood(entry))) return 'taken';
  if (IN_JEST.test(c.scope.note)) return 'jest';
  const hangs = cut > 0 && HANGS_ON.test(whole[cut]?.text ?? '');
  const less = c.parts.some((p) => p.entity === undefined && !hasTag(p, 'time') && LESS.test(p.text));
  return hangs || less ? 'asked' : 'taken';
}
