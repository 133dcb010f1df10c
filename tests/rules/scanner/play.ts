import type { Rule } from '../../../core/rules/matter.ts';
import { scannerRules } from '../../../core/rules/scanner/rules.ts';
import type { Instant } from '../../../core/time/instant.ts';
import { toLocal } from '../../../core/time/zone.ts';
import type { Given } from '../given.ts';

/**
 * Runs the clock from one local time to another as the desk does: everything due is said, posts of one group together.
 * Gives what was said, such as "Mon 10:30 !quay calibration first scanner:A scanner:B".
 */
export function play(
  given: Given,
  from: string,
  to: string,
  rules: readonly Rule[] = scannerRules,
): readonly string[] {
  const posts: string[] = [];
  const end = given.at(to);
  for (let now = given.at(from); now <= end; ) {
    const { said, next } = lookAt(given, now, rules);
    posts.push(...said);
    // What was said may bring the next stage about: look once more from here.
    if (said.length === 0) now = next;
  }
  return posts;
}

function lookAt(given: Given, now: Instant, rules: readonly Rule[]) {
  const { practice, state, said: log } = given;
  const matters = rules.flatMap((rule) => rule({ practice, state, said: log, now }));
  const groups = new Map<string, string[]>();
  const later: Instant[] = [];
  for (const matter of matters) {
    const unsaid = matter.stages.filter(({ stage }) => log.saidAt(matter.key, stage) === null);
    const due = unsaid.filter(({ at }) => at <= now);
    later.push(...unsaid.filter(({ at }) => at > now).map(({ at }) => at));
    const stage = due.at(-1)?.stage;
    if (stage === undefined) continue;
    for (const each of due) log.said(matter.key, each.stage, now);
    const { weekday, time } = toLocal(now, given.zone);
    const head = `${weekday} ${time} ${matter.room.replace(/:.*/, '')} ${matter.about} ${stage}`;
    const group = groups.get(`${matter.group} ${head}`) ?? [head];
    groups.set(`${matter.group} ${head}`, [...group, ...matter.items]);
  }
  return { said: [...groups.values()].map((post) => post.join(' ')), next: Math.min(...later) };
}
