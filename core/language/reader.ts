import { blockedTokens } from './anchors.ts';
import { strangeIn } from './evidence/strange.ts';
import { addLexicon } from './lexicon/compile.ts';
import type { Scan } from './mentions/scan.ts';
import { addNames, type Names } from './names.ts';
import { needsMetIn } from './needs/needs.ts';
import { readNote } from './note.ts';
import type { Part } from './part.ts';
import { partsOf } from './parts.ts';
import type { MakeReader, NoteRead } from './read.ts';
import { asRestated } from './restated.ts';
import { bySlips, type TokensRead } from './spelling/slips.ts';
import { Spelling } from './spelling/spelling.ts';
import { withSpokenMarks, withSpokenNumbers } from './spoken-marks.ts';
import { Table } from './table.ts';
import { timeHabits } from './time-habits.ts';
import { findTimes } from './times/find.ts';
import { resolveDays } from './times/resolve-days.ts';
import type { TimeContext, TimeSpan } from './times/time-span.ts';
import type { Token } from './token.ts';
import { tokenize } from './tokens.ts';
import { askOfUnknown } from './unknown-names.ts';

/** Makes a reader for a practice: lexicon, names and learned words compiled into one table. Never throws on any note. */
export const makeReader: MakeReader = (practice, learned = []) => {
  const table = new Table();
  addLexicon(table);
  const names = addNames(table, practice, learned);
  const spelling = new Spelling(table);
  const habitsIn = timeHabits(practice);
  return (note, context) => {
    const chatSites = context.room === undefined ? [] : (names.siteOfChat.get(context.room) ?? []);
    const time = { at: context.at, ...habitsIn(chatSites) };
    const raw = tokenize(note);
    const typedNeeds = needsOf(raw);
    const typed = spelling.correct(
      withSpokenNumbers(withSpokenMarks(raw.filter((token) => !FILLER.test(token.text)))),
    );
    const tokens = asRestated(typed, table) ?? typed;
    const around: Around = { note, typedNeeds, table, names, time, chatSites };
    const first = readTokens(tokens, around);
    const asked = mayAsk(first.read.read) ? first.asked() : null;
    if (asked !== null) return asked;
    return first.strange > 0 || first.read.score <= 0
      ? bySlips(note, tokens, first, spelling, (words) => readTokens(words, around, true))
      : first.read.read;
  };
};

/** Where nothing was understood, or only that some scanner was meant, an unknown word may be its name. */
function mayAsk({ reading, gaps }: NoteRead): boolean {
  const { facts, asks, acts, plans, unclear } = reading;
  const [only] = unclear;
  if (facts.length + asks.length + acts.length + plans.length > 0 || unclear.length > 1) return false;
  return only === undefined || (only.about === 'scanner' && gaps[0]?.words === undefined);
}

/** What dictation takes down of thinking aloud: it stands between any two words. */
const FILLER = /^(um+|uh+m*|erm+|ehm+)$/;

interface Around {
  readonly note: string;
  readonly typedNeeds: number;
  readonly table: Table;
  readonly names: Names;
  readonly time: TimeContext;
  readonly chatSites: readonly string[];
}

function needsOf(tokens: readonly Token[]): number {
  let bits = 0;
  for (const { text } of tokens) bits |= needsMetIn(text);
  return bits;
}

/** `again`: read with another word, which is of use only as an act, or where it leaves no strange word. */
function readTokens(tokens: readonly Token[], around: Around, again = false): TokensRead {
  const { note, typedNeeds, table, names, time, chatSites } = around;
  const texts = tokens.map((token) => token.text);
  const scan: Scan = { note, tokens, texts, table, names, matches: [], anchored: [] };
  const times = findTimes(tokens, time, blockedTokens(scan));
  const parts = partsOf(scan, times);
  const offset = (part: Part): readonly [number, number] => [
    tokens[part.from]?.start ?? 0,
    tokens[part.to - 1]?.end ?? note.length,
  ];
  const spaced = (part: Part) =>
    tokens[part.from]?.spaced === true && tokens[part.from + 1]?.spaced !== false;
  const strange = strangeIn(parts);
  const shared = {
    names,
    chatSites,
    note,
    needsMet: typedNeeds | needsOf(tokens),
    time,
    offset,
    strange,
    listing: isListing(tokens),
    sentences: 0,
    signature: null,
    days: (span: TimeSpan) => backDay(span, time),
  };
  const typed = (from: Part, to: Part) => note.slice(offset(from)[0], offset(to)[1]);
  const reread = (others: readonly Part[]) => readNote(others, { ...shared, strange: 0 }, spaced).read;
  return {
    read: readNote(parts, shared, spaced, again && strange >= 1),
    strange,
    parts,
    asked: () => askOfUnknown(parts, names, typed, reread),
  };
}

/** Marks that no one types to colleagues: two of them and it is code, a table or a link. */
function isListing(tokens: readonly Token[]): boolean {
  let marks = 0;
  for (const token of tokens) {
    if (token.kind === 'mark' && LISTING.has(token.text) && !(token.text === '@' && token.spaced)) marks++;
  }
  return marks >= 2;
}

const LISTING = new Set([...'[]{}<>=|\\_@~^$%']);

function backDay(span: TimeSpan, time: TimeContext): string | null {
  const stretch = resolveDays(span, time, 'back');
  // "From last week" tells no day.
  const whole = span.days.some(({ first }) => first.sort === 'week' || first.sort === 'month');
  return stretch === null || stretch.doubt !== undefined || whole ? null : stretch.from;
}
