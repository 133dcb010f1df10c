import type { Draft } from './clauses.ts';
import type { Interpretation } from './interpret.ts';
import { hasTag } from './part.ts';

/** "With Wanda and tip 3 also removed": what follows with no thing of its own speaks of the one before it. */
export function isToldNext(following: Draft | undefined): boolean {
  return (
    following?.joint === 'also' &&
    following.sort === 'act' &&
    following.parts.length <= 2 &&
    following.parts.every((p) => p.entity === undefined)
  );
}

/** "Covered Severn, Trent's still bare": a thing with a word of its own that nobody knows. */
export function tellsOfItself(next: Draft): boolean {
  const thing = next.parts.findIndex((p) => p.entity?.is === 'scanner');
  return (
    thing >= 0 &&
    next.parts.slice(thing + 1).some((p) => p.unknown) &&
    next.parts.some((p) => /^('s|is|are|still|was)$/.test(p.text))
  );
}

/** "Retired 17, it's done 100": a number told of it is none of its kind. */

export function countsIt(next: Draft): boolean {
  return (
    /^(it|he|she|that|this|they)$/.test(next.parts[0]?.text ?? '') &&
    next.parts.some((p) => p.entity?.is === 'tips' && !p.entity.named && p.entity.ids.length === 0)
  );
}

/** What goes on, comes off or stands there is told by the draft itself, though it has no weighty verb. */
export function isAnotherAct(next: Draft, read: Interpretation): boolean {
  const says = (words: RegExp) => next.parts.some((p) => p.entity === undefined && words.test(p.text));
  const tips = next.parts.some((p) => p.entity?.is === 'tips');
  // "Sent 3 and 5, kept 7 back", "Kofi wiped Otter and Bríd did Heron".
  if (staysBehind(next)) return true;
  if (
    next.parts.some(
      (p, i) =>
        (p.entity?.is === 'person' || (i === 0 && /^(i|we)$/.test(p.text))) &&
        /^(did|has|had|have|took|used|wiped|washed|done)$/.test(next.parts[i + 1]?.text ?? ''),
    )
  )
    return true;
  // "Took 4 off blue, put 9 on": another tip.
  if (read.frame.name === 'removed' && says(/^on$/)) return true;
  // "Blue is in surgery 2, tip 4's on it"; "moved blue to surgery 4 and put 7 on her".
  // "Starting a scan with blue and tip 5 on it" tells which tip it is with.
  if (read.frame.name === 'scan-started' && says(/^on (it|her|him)$/)) return false;
  if (tips && says(/^on (it|her|him)$/) && !next.parts.some((p) => hasTag(p, 'debris'))) return true;
  if (tips && says(/^on$/) && next.parts.some((p) => hasTag(p, 'put'))) return true;
  // "M4 bagged, M3 back in the sink".
  if (
    tips &&
    /^(washed|bagged|used|sent|inspected)$/.test(read.frame.name) &&
    says(/^(back|back in|back on|still in|in)$/) &&
    !says(/^(autoclave|steri)$/)
  )
    return true;
  // "2 and 3 bagged and in the steriliser".
  const steri = next.parts.some(
    (p) => p.entity?.is === 'autoclave' || hasTag(p, 'autoclave') || hasTag(p, 'steri'),
  );
  if (!tips && steri && /^(washed|bagged|used|removed)$/.test(read.frame.name) && says(/^(in|into|to)$/))
    return true;
  // "3 fogging, 5 on instead".
  if (
    tips &&
    says(/^on$/) &&
    /^(fault|used|washed|retired|missing|held|bagged|inspected)$/.test(read.frame.name)
  )
    return true;
  // "Scan done on blue, 8's off": the tip is the next act's.
  if (read.frame.name.startsWith('scan') && says(/^off$/)) return true;
  // "19 in surgery 1, put blue in there" speaks back of the place.
  return says(/^(in |over )?there$/);
}

/** "Kept 7 back", "Otter stays here": what was not done to it. */
export function staysBehind(next: Draft): boolean {
  return next.parts.some((p) => p.entity === undefined && STAYS.test(p.text));
}

const STAYS = /^(kept|left|saved|skipped|missed|stays?|stayed|staying|remains|remained)$/;

/** "Lefty failed calibration, Biscuit passed", "debris on 3, 8 is fine": another's result. */
export function hasOwnResult(next: Draft, read: Interpretation): boolean {
  const result = next.parts.some((p) => hasTag(p, 'pass') || hasTag(p, 'fail') || hasTag(p, 'debris'));
  if (read.frame.name === 'inspected' && read.result.made.some((m) => 'outcome' in m.entry))
    return result && next.parts.some((p) => p.entity?.is === 'tips');
  return result && next.parts.some((p) => p.entity?.is === 'scanner' || p.entity?.is === 'load');
}
