import type { z } from 'zod';
import type { Finding, Path } from '../mistakes.ts';
import { saidOf } from './leaf.ts';
import { nearest } from './nearest.ts';
import { valueAt } from './raw.ts';

/** What the schema objects to, in plain words. `raw` is what it was given. */
export function findingsOf(error: z.core.$ZodError, raw: unknown): readonly Finding[] {
  return error.issues.flatMap((issue): Finding[] => {
    const path = issue.path.filter((part) => typeof part !== 'symbol');
    if (issue.code === 'unrecognized_keys') {
      const known = issue.message.split(' ');
      return issue.keys.map((key) => unknownKey([...path, key], known, valueAt(raw, [...path, key])));
    }
    if (issue.code === 'custom') {
      const said = saidOf(issue.params);
      if (said !== null) return [{ path, at: said.at ?? 'value', wrong: said.wrong, right: said.right }];
    }
    if (issue.code === 'invalid_type') return [wrongSort(path, issue.expected)];
    return [{ path, at: 'value', wrong: issue.message, right: 'what the example file shows there' }];
  });
}

function unknownKey(path: Path, known: readonly string[], value: unknown): Finding {
  const key = String(path.at(-1));
  const near = nearest(key, known);
  // "also: green, lime" in braces makes a key of "lime".
  const other =
    value === undefined ? `[ ] around the list that "${key}" belongs to` : `one of ${known.join(', ')}`;
  return { path, at: 'key', wrong: `the key "${key}" is not known here`, right: near ?? other };
}

function wrongSort(path: Path, expected: string): Finding {
  if (expected === 'array') {
    return { path, at: 'value', wrong: 'a list belongs here', right: 'entries that each begin with -' };
  }
  return {
    path,
    at: 'value',
    wrong: 'a block of keys belongs here',
    right: '{key: value, …}, as in {id: main, name: Main Street}',
  };
}
