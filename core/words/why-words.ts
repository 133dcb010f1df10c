import type { Why } from '../language/read.ts';

/** Rules in plain words, where their name says too little. */
const RULES: Readonly<Record<string, string>> = {
  fitted: 'tip put on',
  removed: 'tip taken off',
  'load-started': 'load put on',
  'load-finished': 'load’s result',
  shown: 'person shown how',
  booked: 'scans booked',
  cancelled: 'scans cancelled',
};
/** Acts in plain words. */
const ACTS: Readonly<Record<string, string>> = {
  amend: 'a correction',
  undo: 'taken back',
  later: 'put off',
  pick: 'an answer',
  close: 'incident closed',
};
/** Slots in plain words. */
const SLOTS: Readonly<Record<string, string>> = {
  items: 'what',
  item: 'what',
  which: 'which tips',
  except: 'left out',
  by: 'who',
  celsius: 'degrees',
  note: 'from',
  of: 'of',
  filter: 'which tips',
};

/** The rule that made an entry, in plain words: "moved", "question: where", "in doubt: sent", "asked back: calibrated". */
export function ruleWords({ list, rule }: Why): string {
  const [head = '', tail] = rule.split(':');
  const plain = (name: string) => RULES[name] ?? name.replaceAll('-', ' ');
  if (head === 'ask') return `question: ${plain(tail ?? '')}`;
  if (head === 'act') return ACTS[tail ?? ''] ?? plain(tail ?? '');
  if (head === 'doubt') return `in doubt: ${plain(tail ?? '')}`;
  if (list === 'plans') return `meant, not done: ${plain(head)}`;
  return list === 'unclear' ? `asked back: ${plain(head)}` : plain(head);
}

/** What gave the slots, one short piece for each run of words: `site and room “surgery 2”`, `when: the note’s own time`. */
export function slotWords({ slots }: Why): readonly string[] {
  const pieces = new Map<string, string[]>();
  for (const [slot, source] of Object.entries(slots)) {
    const words = 'said' in source ? ` “${source.said}”` : `: ${source.filledIn}`;
    pieces.set(words, [...(pieces.get(words) ?? []), SLOTS[slot] ?? slot]);
  }
  return [...pieces].map(([words, names]) => `${names.join(' and ')}${words}`);
}

/** An entry's whole reason on one line. */
export function whyWords(why: Why): string {
  const pieces = slotWords(why);
  return pieces.length === 0 ? ruleWords(why) : `${ruleWords(why)}: ${pieces.join('; ')}`;
}
