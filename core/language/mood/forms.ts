import type { Clause } from '../clause.ts';
import { hasTag, type Part } from '../part.ts';

/** Forms in which the part that says what happened stands. */
export function formsAt(part: Part | undefined): string {
  if (part === undefined) return '';
  const verbs = part.senses.filter((s) => s.sort === 'verb');
  // A noun that could be a verb too ("autoclave") says nothing of mood.
  if (
    part.senses.some((s) => s.sort === 'noun' || s.sort === 'name') &&
    verbs.every((s) => s.form === 'b' || s.form === 's')
  )
    return '';
  return [...new Set(verbs.map((s) => s.form))].join('');
}

/** The part that says what is done: of the verbs that the frame used, a base form counts before what it names. */
export function pivotOf(c: Clause, verb: number): number {
  const forms = formsAt(c.parts[verb]);
  if (forms.includes('d') && !/^(i'm|we're|be|is|are|'s)$/.test(c.parts[verb]?.text ?? '')) return verb;
  for (const [i, part] of c.parts.entries()) {
    if (!c.used.has(i) || part.entity !== undefined) continue;
    const own = formsAt(part);
    if (
      own.includes('b') &&
      !own.includes('d') &&
      !hasTag(part, 'be') &&
      !hasTag(part, 'do') &&
      !hasTag(part, 'glue') &&
      part.senses.every((s) => s.sort === 'verb')
    )
      return i;
  }
  return verb;
}
