import type { NoteRead } from '../../language/read.ts';
import type { Question } from '../../rules/question.ts';

/** Which of the offered answers a typed note names: by number, by label or value, by yes or no; `null` when none. */
export function matchChoice(question: Question, text: string, read: NoteRead): string | null {
  const { choices } = question;
  const words = fold(text);
  const number = /^#?(\d{1,3})$/.exec(words)?.[1];
  const labelled = choices.find(({ label, value }) =>
    [label, nameIn(label), bare(value)].map(fold).includes(words),
  );
  if (labelled !== undefined) return labelled.value;
  // "green" of "green scanner", where no other begins so.
  const begun = choices.filter(({ label }) => words !== '' && fold(label).startsWith(`${words} `));
  if (begun.length === 1 && begun[0] !== undefined) return begun[0].value;
  if (number !== undefined) return choices[Number(number) - 1]?.value ?? null;
  const said = /^\s*(yes|yep|yeah|aye|no|nope|nah)\s*(?:[,.;:!–—-]|$)/i.exec(text)?.[1];
  if (said !== undefined) return choiceFor(question, /^[ya]/i.test(said) ? 'yes' : 'no');
  for (const act of read.reading.acts) {
    if (act.kind === 'yes' || act.kind === 'no') return choiceFor(question, act.kind);
    if (act.kind === 'pick') return picked(question, act.choice);
  }
  return null;
}

function picked(question: Question, choice: string): string | null {
  const named = question.choices.find(({ value }) =>
    [value, bare(value), autoclaveIn(value), roomIn(value)].includes(choice),
  );
  if (named !== undefined) return named.value;
  const place = /^\d{1,3}$/.test(choice) ? Number(choice) : 0;
  return question.choices[place - 1]?.value ?? (question.choices.length === 0 ? choice : null);
}

/** "yes" where yes is among the answers. */
function choiceFor(question: Question, value: string): string | null {
  return question.choices.find((choice) => choice.value === value)?.value ?? null;
}

function bare(value: string): string {
  return value.slice(value.indexOf(':') + 1);
}

/** "big autoclave" of "big autoclave: tips 2 and 5". */
function nameIn(label: string): string {
  return label.replace(/:.*$/, '');
}

/** `big` of a load's key such as `big/118@2026-11-23`. */
function autoclaveIn(value: string): string {
  return value.replace(/\/.*$/, '');
}

/** `m1` of a room with its site such as `mill/m1`. */
function roomIn(value: string): string {
  return value.slice(value.indexOf('/') + 1);
}

function fold(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}#-]+/gu, ' ')
    .trim()
    .replace(LEAD, '')
    .replace(TAIL, '');
}

/** What people put round the name that they were asked for: "oh sorry, it was on the green one please". */
const LEAD =
  /^(?:(?:oh|sorry|ah|oops|er|um|i meant?|that|this|it|it s|its|that s|thats|was|is|for|in|on|at|with|the|my)\b ?)+(?=\S)/;
const TAIL = /(?: (?:one|please|pls|plz|sorry|thanks|thx|ta|cheers))+$/;
