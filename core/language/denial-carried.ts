import type { Draft } from './clauses.ts';
import { hasTag, type Part } from './part.ts';

/** Something that was not done, in which sentence, and whether its thing was named. */
interface Denied {
  readonly sentence: number;
  readonly named: boolean;
}

const GOES_ON = /^(?:,|or|nor|and|&|n|then)$/;

/**
 * "Haven't wiped, covered or calibrated green", "4 hasn't been washed, bagged or sent": one denial for a row of acts. The
 * drafts to which it carries: those that begin with their verb, as long as the thing comes with the last or was said with the
 * first; not past "but", "so" or somebody else, and none with a thing of its own where the denied one had one.
 */
export function deniedWith(drafts: readonly Draft[]): ReadonlySet<Draft> {
  const carried = new Set<Draft>();
  let before: Denied | null = null;
  for (const draft of drafts) {
    const denied = carriedOn(draft, before);
    if (denied !== null) carried.add(draft);
    before = denied ?? denialIn(draft);
  }
  return carried;
}

/** The denial as it stands behind the draft to which it carries; `null` where it does not. */
function carriedOn(draft: Draft, before: Denied | null): Denied | null {
  if (before === null || !carries(draft, before)) return null;
  return { ...before, named: before.named || namesThing(draft.parts) };
}

function carries(draft: Draft, before: Denied): boolean {
  if (before.sentence !== draft.sentence || !GOES_ON.test(draft.joint)) return false;
  const [first] = draft.parts.filter((p) => !p.mark && p.text !== 'or' && p.text !== 'nor');
  const opens = first?.entity === undefined && first?.senses.some((s) => s.sort === 'verb') === true;
  return opens && !(before.named && (namesThing(draft.parts) || draft.parts.some((p) => IT.test(p.text))));
}

function denialIn({ parts, sentence }: Draft): Denied | null {
  const act = parts.some((p) => p.entity === undefined && p.senses.some((s) => s.sort === 'verb'));
  const denies = parts.some((p) => p.entity === undefined && hasTag(p, 'neg'));
  return act && denies ? { sentence, named: namesThing(parts) } : null;
}

const IT = /^(?:it|them|both|'em|em|that|these|those)$/;
const THINGS: ReadonlySet<string> = new Set(['scanner', 'tips', 'load', 'autoclave', 'some']);

function namesThing(parts: readonly Part[]): boolean {
  return parts.some(
    (p) =>
      (p.entity !== undefined && THINGS.has(p.entity.is)) || (p.entity === undefined && hasTag(p, 'scanner')),
  );
}
