import type { Sense, Sort, Table } from '../table.ts';
import { tokenize } from '../tokens.ts';
import { isEnglish } from './english-words.ts';
import { type Form, formsOf, plural } from './inflect.ts';
import { nouns, others } from './nouns.ts';
import { verbForms, verbs } from './verbs.ts';
import { firstNames, glue, moodWords, numberWords } from './words.ts';

/** Contractions whose letters without the apostrophe are another word. */
const KEEPS_APOSTROPHE = new Set([
  "we'll",
  "i'll",
  "she'll",
  "he'll",
  "we're",
  "it's",
  "won't",
  "let's",
  "i'd",
  "we'd",
]);

/** The folded tokens of a phrase of the lexicon or of a name, as `tokenize` gives them. */
export function phraseOf(text: string): string[] {
  // Nearly all are small letters and single spaces: 18,000 phrases would otherwise be two thirds of a reader's making.
  if (PLAIN.test(text)) return text.split(' ');
  return tokenize(text).map((token) => token.text);
}

const PLAIN = /^[a-z]+(?: [a-z]+)*$/;

type Put = (phrase: string, sort: Sort, tag: string, form?: Form | '', ref?: string) => void;

/** Puts the whole lexicon into a table: it is the same for every practice. */
export function addLexicon(table: Table): void {
  const put: Put = (phrase, sort, tag, form = '', ref = '') => {
    const sense: Sense = { sort, tag, form, ref };
    table.add(phraseOf(phrase), sense);
    const bare = phrase.includes("'") ? withoutApostrophes(phrase) : phrase;
    if (bare !== phrase) table.add(phraseOf(bare), sense);
  };
  for (const phrase of listed(glue)) put(phrase, 'glue', 'glue');
  table.add(["'s"], { sort: 'glue', tag: 'glue', form: '', ref: '' });
  for (const [tag, list] of Object.entries(moodWords))
    for (const phrase of listed(list)) put(phrase, 'mood', tag);
  addVerbs(table, put);
  addNouns(put);
  for (const name of firstNames.trim().split(/\s+/)) put(name, 'person', 'person');
  for (const [word, value] of Object.entries(numberWords)) put(word, 'number', 'number', '', String(value));
}

function addVerbs(table: Table, put: Put): void {
  for (const [tag, list] of Object.entries(verbs)) {
    for (const [form, how] of listed(list).flatMap(formsOf)) {
      put(form, 'verb', tag, how);
      for (const typed of typedFor(form, how)) table.alias(typed, form.split(' ')[0] ?? form);
    }
  }
  for (const [tag, list] of Object.entries(verbForms)) {
    for (const entry of list.split(';')) {
      const [form = '', phrase = ''] = cut(entry.trim(), ':');
      put(phrase, 'verb', tag, formOf(form));
    }
  }
}

function formOf(text: string): Form {
  return text === 'b' || text === 's' || text === 'g' || text === 'n' ? text : 'd';
}

function addNouns(put: Put): void {
  for (const [tag, list] of Object.entries(nouns)) {
    for (const noun of listed(list)) {
      put(noun, 'noun', tag, 'b');
      if (noun.length > 2) put(plural(noun), 'noun', tag, 's');
    }
  }
  for (const noun of listed(others)) {
    put(noun, 'other', 'other');
    put(plural(noun), 'other', 'other');
  }
}

/** How endings are typed in a hurry: "dropd", "droped", "wipped", "takin". */
function typedFor(form: string, how: Form): string[] {
  const [head = ''] = form.split(' ');
  const all: string[] = [];
  if (how === 'd' && head.endsWith('ed') && head.length > 4) {
    const stem = head.slice(0, -2);
    all.push(`${stem}d`);
    if (/([bdgmnprt])\1$/.test(stem)) all.push(`${stem.slice(0, -1)}ed`, `${stem.slice(0, -1)}d`);
    else if (/[aeiou][bdgmnpt]$/.test(stem)) all.push(`${stem}${stem.at(-1)}ed`);
  }
  if (how === 'g' && head.endsWith('ing') && head.length > 5) all.push(head.slice(0, -1));
  return all.filter((typed) => !isEnglish(typed));
}

function listed(text: string): string[] {
  return text
    .split(/[,\n]/)
    .map((phrase) => phrase.trim())
    .filter((phrase) => phrase !== '');
}

function cut(text: string, mark: string): [string, string] {
  const at = text.indexOf(mark);
  return [text.slice(0, at), text.slice(at + 1)];
}

function withoutApostrophes(phrase: string): string {
  return phrase
    .split(' ')
    .map((word) => (KEEPS_APOSTROPHE.has(word) || word.endsWith("'s") ? word : word.replace(/'/g, '')))
    .join(' ');
}
