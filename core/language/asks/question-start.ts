import { opensQuestion } from '../mood/questions.ts';
import { needing, needsMetIn } from '../needs/needs.ts';
import { hasTag } from '../part.ts';
import type { Segment, Sentence } from '../segments.ts';

/** The segment from which a sentence may ask something; −1 where it does not. */
export function questionStart(sentence: Sentence): number {
  const { segments } = sentence;
  const at = segments.findIndex((s) => opensQuestion(s.parts));
  if (at >= 0) return at;
  if (sentence.question)
    return segments.length > 1 && segments[0] !== undefined && isGreeting(segments[0]) ? 0 : 0;
  const record = segments.findIndex((s) =>
    s.parts.some((p) => ASKING_WORDS.has(p.text) || p.senses.some((sense) => ASKING_TAGS.has(sense.tag))),
  );
  if (record >= 0) return 0;
  const opening = (segments[0]?.parts ?? []).slice(0, 9);
  if (!opening.some((p) => (needsMetIn(p.text) & OPENING) !== 0)) return -1;
  return OPENS_ASK.test(opening.map((p) => p.text).join(' ')) ? 0 : -1;
}

/** What a sentence that is put as no question may ask with all the same. */
const ASKING_TAGS: ReadonlySet<string> = new Set(['record', 'incident', 'anyq', 'wh']);
const ASKING_WORDS: ReadonlySet<string> = new Set(
  'help|trace|enough|history|timeline|status|contents|details|overview|rundown|look back|look-back|lookback|who can|who knows'.split(
    '|',
  ),
);

/** Bare openings that ask for something to be found, shown or told. */
const OPENS_ASK =
  /^((hi|hello|hey|please|pls|so|ok|right|sorry|lads|can you|could you) )*(need to (find|know)\b|everything that\b|calibration (steps|procedure)|looking for\b|locate\b|find\b|date of\b|show\b|gimme\b|full list\b|all tips\b|all the tips\b|tips? status|latest\b|last (cal|calibration|temp|temperature|scan|wipe|move)|look back|do a look back|track\b|print\b|explain\b|learned words|learnt words|tell me\b|time ?line|instructions|commands|options|never .* before|setting up\b|\w+ \w+ (keeps|keep) (fog|mist|steam)|\w+ keeps (fog|mist|steam))/;

/** What such an opening needs to stand in it. */
const OPENING = needing(OPENS_ASK);

/** Nothing but greetings and the like. */
export function isGreeting(segment: Segment): boolean {
  return segment.parts.every((p) => p.senses.some((s) => s.sort === 'glue'));
}

/** "Morning briefing", "spore test results": what is asked for by its name alone, with no word of asking. */
export function namesNotice([segment, next]: readonly Segment[]): boolean {
  if (segment === undefined || next !== undefined || segment.parts.length > 7) return false;
  return segment.parts.some((p) => p.entity === undefined && NOTICE.test(p.text));
}

const NOTICE =
  /^(?:summary|brief|briefing|round up|roundup|round-up|sitrep|results?|dates?|hours|incidents|failures|commands|cycles|run down|run-down|state of play|locations?|training|temp|temperature|bookings|list|loads|log|reset|checklist|fill|speed|play|counts?|times?|last|latest|what if|hows)$/;

/** Without a question mark, only these openings leave no doubt that something is asked. */
export function plainlyAsks(segments: readonly Segment[]): boolean {
  const first = segments[0];
  if (first === undefined || !opensQuestion(first.parts)) return false;
  return (
    /^(is|are|was|were|has|have)$/.test(first.parts[0]?.text ?? '') ||
    !first.parts.some((p) => hasTag(p, 'lose'))
  );
}
