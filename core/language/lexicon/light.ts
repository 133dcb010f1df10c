/** Senses of verbs that are said of anything: they tell little of what a clause speaks of. */
export const LIGHT_VERBS: ReadonlySet<string> = new Set(
  'be have do say see know keep give get work check go come pass finish need turn'.split(' '),
);
