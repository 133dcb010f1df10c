import { createRequire } from 'node:module';
import { parse } from 'chrono-node';

/** A library that finds something in a note: dates, entities or intents. */
export interface Peer {
  readonly name: string;
  readonly read: (note: string) => unknown;
}

const require = createRequire(import.meta.url);

interface WinkDoc {
  entities(): { out(): unknown };
  tokens(): { out(): unknown };
}
interface NlpJs {
  settings: { autoSave: boolean };
  addLanguage(language: string): void;
  addDocument(language: string, text: string, intent: string): void;
  train(): Promise<void>;
  process(language: string, text: string): Promise<unknown>;
}

/** A few phrasings for each intent, so that the classifier has something to tell apart. */
const TRAINING: Readonly<Record<string, readonly string[]>> = {
  sent: ['tip 4 sent to the autoclave', 'sent tips 2 and 7', 'tips 3-6 are in the autoclave'],
  calibrated: ['calibrated green', 'green passed calibration', 'calibration of scanner A failed'],
  moved: ['moved green to surgery 2', 'green is in room 4 now', 'took the scanner to the mill'],
  wiped: ['wiped green down', 'green wiped', 'cleaned and covered the scanner'],
  where: ['where is green', 'which room is the scanner in', "where's tip 4"],
  talk: ['good morning all', 'who wants coffee', 'see you tomorrow'],
};

/** The peers, loaded and trained. */
export async function peers(): Promise<readonly Peer[]> {
  return [chrono(), wink(), compromise(), await nlpjs()];
}

function chrono(): Peer {
  return { name: 'chrono-node (dates alone)', read: (note) => parse(note) };
}

function wink(): Peer {
  const make = require('wink-nlp') as (model: unknown) => { readDoc(text: string): WinkDoc };
  const nlp = make(require('wink-eng-lite-web-model'));
  return {
    name: 'wink-nlp with its English model (entities)',
    read: (note) => nlp.readDoc(note).entities().out(),
  };
}

function compromise(): Peer {
  const nlp = require('compromise') as (text: string) => { json(): unknown };
  return { name: 'compromise (tags, json)', read: (note) => nlp(note).json() };
}

async function nlpjs(): Promise<Peer> {
  const { dockStart } = require('@nlpjs/basic') as {
    dockStart(settings: object): Promise<{ get(name: string): NlpJs }>;
  };
  const quiet = {
    settings: { nlp: { autoSave: false, autoLoad: false, log: false } },
    use: ['Basic', 'LangEn'],
  };
  const dock = await dockStart(quiet);
  const nlp = dock.get('nlp');
  nlp.settings.autoSave = false;
  nlp.addLanguage('en');
  for (const [intent, texts] of Object.entries(TRAINING))
    for (const text of texts) nlp.addDocument('en', text, intent);
  await nlp.train();
  return { name: '@nlpjs/basic (intent and entities)', read: (note) => nlp.process('en', note) };
}
