import { type Document, isAlias, isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml';
import type { Mistake, Path } from '../mistakes.ts';
import { startOfFault, syntaxMistake, worthTelling } from './yaml-syntax.ts';

/** A practice file as YAML sees it: plain values, all texts as written, and where each stands. */
export interface YamlText {
  /** Maps, lists and texts: `08:30`, `2026-12-25` and `007` stay texts. A key with nothing after it is `undefined`. */
  readonly raw: unknown;
  readonly mistakes: readonly Mistake[];
  /** Line and column of the value at a path (or of its key), or of the nearest thing around it that exists. */
  place(path: Path, at: 'key' | 'value'): { readonly line: number; readonly column: number };
}

/**
 * Reads YAML 1.2 with the failsafe schema, in which every plain value is a text: no time turns into a number of
 * seconds, no id loses its zeros, no date its shape. What is meant as a number is read as one later.
 */
export function readYaml(text: string): YamlText {
  const counter = new LineCounter();
  const document = parseDocument(text, {
    // Odd keys are told as mistakes of the file, with their line; the library's own warnings would go past the person.
    logLevel: 'error',
    schema: 'failsafe',
    lineCounter: counter,
    prettyErrors: false,
    uniqueKeys: true,
  });
  const at = (offset: number) => {
    const { line, col } = counter.linePos(Math.min(offset, text.length));
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  const mistakes = worthTelling([...document.errors, ...document.warnings]).map((error) => ({
    ...at(startOfFault(error, text)),
    path: '',
    ...syntaxMistake(error, text),
  }));
  let raw: unknown = null;
  try {
    raw = withoutEmpties(document.toJS({ maxAliasCount: 100 }));
  } catch {
    const star = Math.max(text.indexOf('*'), 0);
    mistakes.push({
      ...at(star),
      path: '',
      wrong: 'a value that begins with * points to something that is not in the file, or to too much of it',
      right: 'write the value out, or put it in quotes',
    });
  }
  return { raw, mistakes, place: (path, of) => at(offsetOf(document, path, of)) };
}

function isEmpty(value: unknown): boolean {
  return value === '' || value === '~' || value === null;
}

/**
 * `also:` with nothing after it says nothing: its value is `undefined`. The key stays, because `sites: north, quay}`
 * without brackets makes a key `quay` of the second site, and that must not go unnoticed.
 */
function withoutEmpties(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutEmpties);
  if (typeof value === 'string') return value.trim();
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value);
  return Object.fromEntries(
    entries.map(([key, inner]) => [key, isEmpty(inner) ? undefined : withoutEmpties(inner)]),
  );
}

function offsetOf(document: Document, path: Path, at: 'key' | 'value'): number {
  let node: unknown = document.contents;
  let offset = startOf(node) ?? 0;
  for (const [depth, part] of path.entries()) {
    if (isAlias(node)) node = node.resolve(document);
    const { key, value } = step(node, part);
    const found =
      at === 'key' && depth === path.length - 1 ? (startOf(key) ?? startOf(value)) : startOf(value);
    if (found === undefined) return startOf(key) ?? offset;
    offset = found;
    node = value;
  }
  return offset;
}

function step(node: unknown, part: string | number): { readonly key: unknown; readonly value: unknown } {
  if (isSeq(node)) return { key: undefined, value: typeof part === 'number' ? node.items[part] : undefined };
  if (!isMap(node)) return { key: undefined, value: undefined };
  const pair = node.items.find(({ key }) => isScalar(key) && String(key.value) === part);
  return { key: pair?.key, value: pair?.value };
}

function startOf(node: unknown): number | undefined {
  return isRanged(node) ? node.range?.[0] : undefined;
}

function isRanged(node: unknown): node is Node {
  return typeof node === 'object' && node !== null && 'range' in node;
}
