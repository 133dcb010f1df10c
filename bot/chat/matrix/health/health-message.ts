import type { Line, Message } from '../../../../core/words/message.ts';
import type { Finding } from './finding.ts';

/** How the program does, for the manager's phone: what wants a person first, with what to do. */
export function healthMessage(findings: readonly Finding[], version: string): Message {
  const look = findings.filter(({ good }) => !good);
  const well = findings.filter(({ good }) => good);
  const title = look.length === 0 ? 'All is well' : lookWords(look.length);
  return [
    { line: [{ strong: title }, ` · Scanward ${version}`] },
    ...(look.length === 0 ? [] : [{ points: look.map(pointOf) }, { line: ['Well:'] as Line }]),
    { points: well.map(({ line }) => [line]) },
  ];
}

/** What has begun to want a person, said once. */
export function troubleMessage(findings: readonly Finding[]): Message {
  return [{ line: [{ strong: lookWords(findings.length) }] }, { points: findings.map(pointOf) }];
}

function lookWords(count: number): string {
  return count === 1 ? 'One thing wants a look' : `${count} things want a look`;
}

function pointOf({ line, todo }: Finding): Line {
  return todo === undefined ? [line] : [`${line}. ${todo}`];
}
