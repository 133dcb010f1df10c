import { z } from 'zod';
import { fromIso } from '../../core/time/instant.ts';
import type { Heard } from '../keeper/heard.ts';
import { PlainError } from '../plain-error.ts';

const instant = z.string().transform((text, context) => {
  const at = fromIso(text);
  if (at === null) {
    context.addIssue({ code: 'custom', message: `"${text}" is not an instant such as 2026-11-23T08:05:00Z` });
    return z.NEVER;
  }
  return at;
});

/** An event id, or the bot's latest post about something. */
const target = z.union([z.string(), z.strictObject({ last: z.string() })]);
const chat = { at: instant, room: z.string(), from: z.string(), id: z.string() };

const line = z.union([
  z.strictObject({ at: instant, end: z.literal(true) }),
  z.strictObject({ at: instant, restart: z.literal(true), back: z.exactOptional(instant) }),
  z.object({ ...chat, edits: z.string(), text: z.string() }),
  z.object({ ...chat, redacts: z.string() }),
  z.object({ ...chat, reacts: target, key: z.string() }),
  z.object({ ...chat, text: z.string(), replyTo: z.exactOptional(target) }),
]);

type Parsed = z.infer<typeof line>;
type Target = z.infer<typeof target>;
type Latest = (room: string, about: string) => string | null;

/** One line of a rehearsal's script; what is heard is known only when it is played, since it may name the bot's latest post. */
export type ScriptLine =
  | { readonly at: number; readonly end: true }
  | { readonly at: number; readonly restart: true; readonly back?: number }
  | { readonly at: number; readonly heard: (latest: Latest) => Heard | null };

/** Reads one line of a script. Throws a PlainError with the line's number and what would be right. */
export function parseScriptLine(text: string, number: number): ScriptLine {
  const parsed = line.safeParse(parseJson(text, number));
  if (!parsed.success) throw new PlainError(`Script line ${number}: ${z.prettifyError(parsed.error)}`);
  const { data } = parsed;
  if ('end' in data || 'restart' in data) return data;
  return { at: data.at, heard: (latest) => toHeard(data, latest) };
}

function parseJson(text: string, number: number): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new PlainError(
      `Script line ${number} is not a JSON object such as {"at": "2026-11-23T08:05:00Z", "end": true}.`,
    );
  }
}

type ChatLine = Exclude<Parsed, { end: true } | { restart: true }>;

/** No event has this id. */
const NOWHERE = '';

/** `null` where a reaction points at a post of ours that does not exist: such a line is ignored. */
function toHeard(data: ChatLine, latest: Latest): Heard | null {
  const { at, room, from, id } = data;
  const base = { id, room, from, at };
  const eventId = (of: Target) => (typeof of === 'string' ? of : latest(room, of.last));
  if ('edits' in data) return { sort: 'edit', ...base, edits: data.edits, text: data.text };
  if ('redacts' in data) return { sort: 'redaction', ...base, redacts: data.redacts };
  if ('reacts' in data) {
    const reacts = eventId(data.reacts);
    return reacts === null ? null : { sort: 'reaction', ...base, reacts, emoji: data.key };
  }
  const { text } = data;
  if (data.replyTo === undefined) return { sort: 'note', ...base, text };
  // A reply to a post that there is not is still a note, but no answer to anything.
  const replyTo = eventId(data.replyTo) ?? NOWHERE;
  return { sort: 'note', ...base, text, replyTo };
}
