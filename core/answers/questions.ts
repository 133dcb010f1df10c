import type { Choice } from '../desk/question.ts';
import type { Gap } from '../language/read.ts';
import type { Practice } from '../practice/practice.ts';
import type { View } from '../rules/matter.ts';
import type { Line, Message } from './message.ts';

/** A question back: what is shown and what may be answered. */
export interface Wording {
  readonly message: Message;
  readonly choices: readonly Choice[];
}

/** More choices than this are not read on a phone: the person is asked to type the name. */
const OFFERED = 9;

const ASKED: Readonly<Record<string, string>> = {
  scanner: 'Which scanner?',
  tip: 'Which tip?',
  site: 'Which site?',
  room: 'Which room?',
  load: 'Which load?',
  outcome: 'How did it go?',
  certainty: 'Is that certain?',
  time: 'At what time?',
  what: 'What happened?',
};

/** What the bot asks where a note is unclear, with numbered choices; `null` where nothing sensible can be asked. */
export function questionFor(gap: Gap, view: View): Wording | null {
  const { about, of } = gap.unclear;
  const choices = choicesFor(gap, view.practice);
  const head: Line = [{ strong: ASKED[about] ?? 'What do you mean?' }, ...aside(gap, of)];
  if (choices.length === 0) {
    const how = 'Please type the note again with that in it.';
    return { message: [{ line: head }, { line: [how] }], choices };
  }
  if (choices.length > OFFERED) return { message: [{ line: head }], choices };
  return { message: [{ line: head }, { steps: choices.map(({ label }) => [label]) }], choices };
}

function aside(gap: Gap, of: string | undefined): Line {
  if (of !== undefined) return [` (${of.replace(':', ' ')})`];
  return gap.words === undefined ? [] : [` I do not know “${gap.words}”.`];
}

function choicesFor(gap: Gap, practice: Practice): readonly Choice[] {
  const { about, choices } = gap.unclear;
  if (choices !== undefined && choices.length > 0)
    return choices.map((value) => ({ label: labelOf(about, value, practice), value }));
  switch (about) {
    case 'scanner':
      return practice.scanners.map(({ id, name }) => ({ label: name, value: id }));
    case 'site':
      return practice.sites.map(({ id, name }) => ({ label: name, value: id }));
    case 'outcome':
      return [
        { label: 'passed', value: 'passed' },
        { label: 'failed', value: 'failed' },
      ];
    case 'certainty':
      return gap.draft === undefined
        ? []
        : [
            { label: 'yes, it is so', value: 'yes' },
            { label: 'no', value: 'no' },
          ];
    default:
      return [];
  }
}

function labelOf(about: string, value: string, practice: Practice): string {
  const bare = value.slice(value.indexOf(':') + 1);
  if (about === 'scanner') return practice.scanners.find(({ id }) => id === bare)?.name ?? value;
  if (about === 'site') return practice.sites.find(({ id }) => id === bare)?.name ?? value;
  if (about === 'tip') return `tip ${bare}`;
  return value.replace(':', ' ');
}
