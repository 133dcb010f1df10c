import { ruleValue } from '../../defaults/rule-value.ts';
import { type Instant, MINUTE } from '../../time/instant.ts';
import type { Matter, View } from '../matter.ts';
import { outOfQuietFrom } from '../quiet.ts';

type Stages = Matter['stages'];

/**
 * When something unsaid may be said: out of quiet hours, and where its time went by unsaid (the program was down, the
 * scanner away) not in the quiet that there is now either.
 */
export function sayableAt(view: View, site: string, at: Instant): Instant {
  return outOfQuietFrom(view, site, at);
}

/** One reminder and no more. */
export function onlyOnce(view: View, site: string, key: string, at: Instant): Stages {
  return [{ stage: 'first', at: view.said.saidAt(key, 'first') ?? sayableAt(view, site, at) }];
}

/**
 * First asking, again, naming the lead. The later ones count from when the first was delivered; "later" moves the next of
 * them and those behind it. Where both have become due together only the lead's is left.
 */
export function threeStages(view: View, site: string, key: string, at: Instant): Stages {
  const { practice, said } = view;
  const delivered = said.saidAt(key, 'first');
  if (delivered === null) return onlyOnce(view, site, key, at);
  const first = { stage: 'first', at: delivered } as const;
  const until = said.putOffUntil(key) ?? Number.NEGATIVE_INFINITY;
  const repeat = ruleValue(practice, 'calibrationRepeatMinutes', { site }) * MINUTE;
  const toLead = Math.max(repeat, ruleValue(practice, 'calibrationLeadMinutes', { site }) * MINUTE);
  const saidAgain = said.saidAt(key, 'again');
  const again = saidAgain ?? sayableAt(view, site, Math.max(delivered + repeat, until));
  // What was put off before it was asked again has moved both.
  const behind = saidAgain === null || until <= saidAgain ? until + toLead - repeat : until;
  const lead = said.saidAt(key, 'lead') ?? sayableAt(view, site, Math.max(delivered + toLead, behind));
  const last = { stage: 'lead', at: lead } as const;
  const together = saidAgain === null && lead <= again;
  return together ? [first, last] : [first, { stage: 'again', at: again }, last];
}
