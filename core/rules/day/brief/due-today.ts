import type { Item } from '../../../reading/slots.ts';
import type { Instant } from '../../../time/instant.ts';
import type { Line } from '../../../words/message.ts';
import type { About } from '../../about.ts';
import { loadRules } from '../../loads/rules.ts';
import type { Matter, View } from '../../matter.ts';
import { scannerRules } from '../../scanner/rules.ts';
import { tipRules } from '../../tips/rules.ts';

/** Something that will be asked for by closing, or was asked for and is still to do. */
export interface DueToday {
  /** Name of the rule that asks. */
  readonly rule: string;
  readonly items: readonly Item[];
  readonly line: Line;
  /** When it is asked for; `null`: it has been asked for already, or is due now. */
  readonly at: Instant | null;
}

/** Wipes and covers are said of their scanner, incidents by themselves; orders have their own post, once. */
const TOLD = new Set<About>(['calibration', 'spore-test', 'load', 'tips']);

/** What is due at a site from now until `until`: what the other rules find open there, each thing once, by when it is asked. */
export function dueToday(view: View, site: string, until: Instant): readonly DueToday[] {
  const once = new Map<string, Matter>();
  for (const rule of [...loadRules, ...scannerRules, ...tipRules]) {
    for (const matter of rule(view)) {
      if (matter.site !== site || !TOLD.has(matter.about) || firstAt(matter) > until) continue;
      const thing = `${matter.rule} ${matter.items.join()} ${JSON.stringify(matter.line)}`;
      const other = once.get(thing);
      if (other === undefined || firstAt(matter) < firstAt(other)) once.set(thing, matter);
    }
  }
  return [...once.values()]
    .map((matter) => dueOf(view, matter))
    .sort((one, other) => (one.at ?? 0) - (other.at ?? 0));
}

function firstAt({ stages }: Matter): Instant {
  return Math.min(...stages.map(({ at }) => at));
}

function dueOf(view: View, matter: Matter): DueToday {
  const [block] = matter.line;
  const at = firstAt(matter);
  const asked = view.said.saidAt(matter.key, 'first') !== null || at <= view.now;
  return {
    rule: matter.rule,
    items: matter.items,
    line: block !== undefined && 'line' in block ? block.line : [],
    at: asked ? null : at,
  };
}
