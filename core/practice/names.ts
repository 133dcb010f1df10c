/**
 * A name as it is compared: case, blanks, curly quotes and a leading "the" make no other name. "The Quay" is "quay".
 */
export function foldName(name: string): string {
  return name
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[‘’`´]/g, "'")
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^the (?=\S)/, '');
}
