import { changedRules } from '../../../core/defaults/changed-rules.ts';
import { PRACTICE_FILE } from '../../../core/desk/standing.ts';
import { parsePractice } from '../../../core/practice/parse.ts';
import type { Practice } from '../../../core/practice/practice.ts';
import type { JournalLine } from '../line.ts';
import type { KeptEntry } from './kept-entry.ts';

/** The practice in a file that the record holds; `null` where this build no longer reads it. */
export function readPractice(file: string): Practice | null {
  const parsed = parsePractice(file);
  return 'practice' in parsed ? parsed.practice : null;
}

/** What the file that this line takes into the record changes of the rules, a row each; none of the record's first file. */
export function ruleChanges(line: JournalLine, before: Practice | null, file: string): readonly KeptEntry[] {
  const after = readPractice(file);
  if (before === null || after === null) return [];
  return changedRules(before, after).map((change, index) => ({
    id: `${line.n}.${index + 1}`,
    line: line.n,
    what: { kind: 'rule-changed', ...change },
    kind: 'rule-changed',
    when: line.at,
    noted: line.at,
    by: PRACTICE_FILE,
    room: '',
  }));
}
