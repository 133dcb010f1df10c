/** One mistake in a practice file, in words for the person who wrote it. Lines and columns count from 1. */
export interface Mistake {
  readonly line: number;
  readonly column: number;
  /** Where in the file, by names: `sites.quay.hours.mon`. */
  readonly path: string;
  /** What is wrong: `"Europe/Lundon" is not a time zone`. */
  readonly wrong: string;
  /** What would be right, as it could be written: `Europe/London`. */
  readonly right: string;
}

/** A place in the file as keys and list positions. */
export type Path = readonly (string | number)[];

/** A mistake before its line is looked up. `at` is the key itself, the value, or the thing that lacks something. */
export interface Finding {
  readonly path: Path;
  readonly at: 'key' | 'value';
  readonly wrong: string;
  readonly right: string;
}

/**
 * All mistakes as plain text, one a line, in the file's order, under a line that says how many there are.
 * `fileName` is shown as given.
 */
export function formatMistakes(mistakes: readonly Mistake[], fileName: string): string {
  const count = mistakes.length === 1 ? 'one mistake' : `${mistakes.length} mistakes`;
  const lines = mistakes.map((mistake) => {
    const where = mistake.path === '' ? `line ${mistake.line}` : `line ${mistake.line}, ${mistake.path}`;
    return `  ${where}: ${mistake.wrong}. Right would be: ${mistake.right}`;
  });
  return [`${fileName} has ${count}. Nothing starts until this is put right:`, ...lines].join('\n');
}
