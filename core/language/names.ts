import type { Practice } from '../practice/practice.ts';
import { phraseOf } from './lexicon/compile.ts';
import { addAutoclave } from './names/autoclave-names.ts';
import { addLearned } from './names/learned-names.ts';
import { addPlaces } from './names/place-names.ts';
import { addScanners } from './names/scanner-names.ts';
import { STERI_WORDS } from './names/steri-names.ts';
import type { LearnedWord } from './read.ts';
import type { Table } from './table.ts';
import { TipIds } from './tip-ids.ts';

/** The practice as the reader needs it: lookups that are made once. */
export interface Names {
  readonly practice: Practice;
  readonly tips: TipIds;
  readonly scannerIds: readonly string[];
  readonly siteIds: readonly string[];
  /** `site/room` of rooms where autoclaving is done. */
  readonly sterileRooms: ReadonlySet<string>;
  readonly siteOfChat: ReadonlyMap<string, readonly string[]>;
  /** Ids of single letters: "a" is one only where it cannot be the article. */
  readonly letterIds: ReadonlyMap<string, string>;
}

/** Puts the practice's names into the table and makes the lookups. */
export function addNames(table: Table, practice: Practice, learned: readonly LearnedWord[]): Names {
  const name = (words: string, tag: string, ref: string) => {
    const phrase = phraseOf(words);
    if (phrase.length === 0) return;
    // "The back" without its article is the adverb.
    const adverb = phrase.length === 2 && phrase[0] === 'the' && table.isGlue(phrase[1] ?? '');
    const first = phrase[0] === 'the' && !adverb ? phrase.slice(1) : phrase;
    for (const form of [phrase, first, phrase[0] === 'the' ? phrase : ['the', ...first]]) {
      if (form.length > 0) table.add(form, { sort: 'name', tag, form: '', ref });
    }
  };
  const letterIds = new Map<string, string>();
  const byId = (id: string, tag: string, ref: string) => {
    if (!table.isSmall(id.toLowerCase())) name(id, tag, ref);
  };
  addScanners(practice, { name, byId }, letterIds);
  const sterileRooms = addPlaces(practice, { name, byId });
  for (const words of STERI_WORDS) name(words, 'steri', '');
  for (const one of practice.autoclaves) addAutoclave(one, { name, byId });
  for (const person of practice.people) {
    for (const words of [person.name, ...person.also]) name(words, 'person', person.name);
  }
  for (const { words, means } of learned) addLearned(name, words, means);
  return {
    practice,
    tips: new TipIds(practice.tips.map((tip) => tip.id)),
    scannerIds: practice.scanners.map((scanner) => scanner.id),
    siteIds: practice.sites.map((site) => site.id),
    sterileRooms,
    siteOfChat: new Map(practice.chat.map((chat) => [chat.room, chat.sites])),
    letterIds,
  };
}
