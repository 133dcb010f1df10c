import type { Finding, FindingKind } from '../record/finding.ts';
import { loadSpeak } from './loads/speak.ts';
import type { View } from './matter.ts';
import { scannerSpeak } from './scanner/speak.ts';
import type { Speak, SpeakTable, Speech } from './speech.ts';
import { tipSpeak } from './tips/speak.ts';

/** Every kind of finding has its words: one that no table speaks for does not compile. */
const table: SpeakTable = { ...scannerSpeak, ...tipSpeak, ...loadSpeak };

/** What is said at once of something that the record noticed, in order; empty where it is only kept. */
export function speak(finding: Finding, view: View): readonly Speech[] {
  return speakerOf(finding.kind)(finding, view);
}

function speakerOf<K extends FindingKind>(kind: K): (finding: Finding, view: View) => readonly Speech[] {
  const speakOne: Speak<K> = table[kind];
  return (finding, view) => (isOfKind(finding, kind) ? speakOne(finding, view) : []);
}

function isOfKind<K extends FindingKind>(
  finding: Finding,
  kind: K,
): finding is Extract<Finding, { kind: K }> {
  return finding.kind === kind;
}
