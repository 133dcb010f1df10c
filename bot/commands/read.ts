import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { NoteContext, NoteRead, Reader } from '../../core/language/read.ts';
import { makeReader } from '../../core/language/reader.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import { fromIso } from '../../core/time/instant.ts';
import { whyWords } from '../../core/words/why-words.ts';
import { plainCause } from '../store/trouble.ts';

export interface ReadIo {
  /** Notes, one a line, without their line ends. */
  readonly input: AsyncIterable<string>;
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
}

const USAGE = 'read --practice FILE [--at 2026-11-23T10:15:00Z] [--why] < notes';
const EMPTY = JSON.stringify({ facts: [], asks: [], acts: [], plans: [], unclear: [] });

/**
 * Reads notes, one a line (plain text or a JSON object with `text`, `at`, `from`, `room`), and prints one reading a
 * line, in order. A line that cannot be taken is told on `err` and reads as nothing. Gives the exit code: 0, 1 where
 * a line was bad, 2 where nothing could start.
 */
export async function run(args: string[], io: ReadIo): Promise<number> {
  const start = begin(args, io);
  if (start === null) return 2;
  let number = 0;
  let bad = 0;
  for await (const raw of io.input) {
    number++;
    const line = raw.endsWith('\r') ? raw.slice(0, -1) : raw;
    const note = noteOf(number === 1 ? line.replace(/^\ufeff/, '') : line, start.at);
    if ('wrong' in note) {
      bad++;
      io.err(`line ${number}: ${note.wrong}`);
      io.out(EMPTY);
      continue;
    }
    io.out(printed(start.read(note.text, note.context), start.why));
  }
  return bad > 0 ? 1 : 0;
}

interface Start {
  readonly read: Reader;
  readonly at: number;
  readonly why: boolean;
}

function begin(args: string[], io: ReadIo): Start | null {
  const options = optionsOf(args);
  if (typeof options === 'string') {
    io.err(options);
    io.err(`usage: ${USAGE}`);
    return null;
  }
  const at = options.at === undefined ? Date.now() : fromIso(options.at);
  if (at === null) {
    io.err(`--at ${options.at}: not an instant; write it like 2026-11-23T10:15:00Z`);
    return null;
  }
  const text = textOf(options.practice, io);
  if (text === null) return null;
  const parsed = parsePractice(text);
  if ('practice' in parsed) return { read: makeReader(parsed.practice), at, why: options.why };
  for (const mistake of parsed.mistakes) {
    io.err(
      `${options.practice}:${mistake.line}:${mistake.column}: ${mistake.wrong}; right would be: ${mistake.right}`,
    );
  }
  return null;
}

function textOf(path: string, io: ReadIo): string | null {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    io.err(`The practice file ${path} cannot be read: ${plainCause(error)}.`);
    return null;
  }
}

function optionsOf(args: string[]): { practice: string; at: string | undefined; why: boolean } | string {
  try {
    const { values } = parseArgs({
      args,
      options: {
        practice: { type: 'string' },
        at: { type: 'string' },
        why: { type: 'boolean', default: false },
      },
    });
    if (values.practice === undefined) return '--practice FILE is missing';
    return { practice: values.practice, at: values.at, why: values.why };
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

type Note = { readonly text: string; readonly context: NoteContext };

/** A line is JSON only where it is an object: `42` and `"hello"` are what somebody typed. */
function noteOf(line: string, at: number): Note | { readonly wrong: string } {
  if (!line.trimStart().startsWith('{')) return { text: line, context: { at } };
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return { wrong: 'not a JSON object; write {"text": "…"}, or plain text that does not begin with {' };
  }
  if (typeof value !== 'object' || value === null) return { text: line, context: { at } };
  return fieldsOf(value, at);
}

function fieldsOf(value: object, at: number): Note | { readonly wrong: string } {
  const fields = new Map<string, unknown>(Object.entries(value));
  const text = fields.get('text');
  if (typeof text !== 'string') return { wrong: '"text" is missing; right would be {"text": "used tip 4"}' };
  const [from, room, when] = [fields.get('from'), fields.get('room'), fields.get('at')];
  if (from !== undefined && typeof from !== 'string')
    return { wrong: '"from" is no text; right would be "@rosa:example.org"' };
  if (room !== undefined && typeof room !== 'string')
    return { wrong: '"room" is no text; right would be "!quay:example.org"' };
  const instant = when === undefined ? at : typeof when === 'string' ? fromIso(when) : null;
  if (instant === null) return { wrong: `"at" is no instant; right would be "2026-11-23T10:15:00Z"` };
  return {
    text,
    context: {
      at: instant,
      ...(from === undefined ? {} : { from }),
      ...(room === undefined ? {} : { room }),
    },
  };
}

function printed(read: NoteRead, why: boolean): string {
  if (!why) return JSON.stringify(read.reading);
  return JSON.stringify({ ...read.reading, why: read.why.map((one) => ({ ...one, words: whyWords(one) })) });
}
