import { Clause } from '../clause.ts';
import { made } from '../frames/frame.ts';
import type { Made } from '../result.ts';
import { textOf } from './act-text.ts';

/** Said behind it and no reason: "close that incident please", "the incident is closed now". */
const COURTESY = /^(?:please|pls|now|thanks|thank you|ta|so|for us|for me)$/i;

/** "Are there any incidents to close" asks for them. */
function opensAsked({ parts: [first] }: Clause): boolean {
  return first !== undefined && ASKED.test(textOf(first));
}

const ASKED = /^(?:are|is|any|which|what|whats|how|have|has|there|list|show|when|who)\b/;

/** "That incident can be closed", "we can close the incident": leave given is the closing. */
function withoutLeave(c: Clause): Clause {
  const parts = c.parts.filter(
    (p, i) => !(i < 3 && /^(?:can|can be|can now be|may be|we|we can|i|i can|you can)$/.test(textOf(p))),
  );
  return parts.length === c.parts.length ? c : new Clause(parts, c.scope);
}

/** "Incident closed: reported, patient followed up": closing it, with what was done in its own words. */
export function close(whole: Clause): Made | null {
  if (whole.at('incident') < 0 || opensAsked(whole)) return null;
  const c = withoutLeave(whole);
  const incident = c.at('incident');
  const shut = c.at('shut');
  if (incident < 0 || shut < 0) return null;
  const wide = c.parts.slice(0, Math.max(incident, shut));
  if (
    wide.some((p) => p.unknown || p.entity !== undefined || p.senses.some((s) => s.sort === 'other')) ||
    Math.min(incident, shut) > 3
  )
    return null;
  if (c.has('neg', 'wh', 'oblige') && Math.max(c.at('neg'), c.at('oblige')) < shut) return null;
  const last = Math.max(incident, shut);
  const after = c.parts
    .slice(last + 1)
    .filter((p, i) => !(i === 0 && (p.mark || /^(because|as|since|with)$/.test(p.text))));
  const [first] = after;
  const end = c.parts[c.parts.length - 1];
  if (first === undefined || end === undefined) return made('close', {});
  const reason = c.scope.note
    .slice(c.scope.offset(first)[0], c.scope.offset(end)[1])
    .replace(/^[\s:,.\-–—;]+|[\s.!]+$/g, '');
  return made('close', reason === '' || COURTESY.test(reason) ? {} : { reason });
}
