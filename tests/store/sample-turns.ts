import type { NewTurn } from '../../bot/store/store.ts';

const people = ['@rosa:example.org', '@tom:example.org', '@aoife:example.org', '@dev:example.org'];
const verbs = ['used', 'washed', 'bagged', 'sent'];

/** The `i`-th turn of an invented practice: one note a minute from November 2026 on, with one fact. */
export function sampleTurn(i: number, extra: Record<string, unknown> = {}): NewTurn {
  const at = new Date(Date.UTC(2026, 10, 23, 8) + i * 60_000).toISOString();
  const tip = String((i % 40) + 1);
  const from = people[i % people.length] ?? '';
  return {
    at,
    turn: {
      at,
      cause: { sort: 'note', id: `$event${i}`, room: '!quay:example.org', from, noted: at },
      entries: [
        { what: { kind: verbs[i % verbs.length], tips: [tip], when: at }, noted: at, by: from, from },
      ],
      effects: [{ key: `$event${i}/react`, room: '!quay:example.org', does: 'react', to: `$event${i}` }],
      items: [`tip:${tip}`, 'scanner:A'],
      made: { grammar: 1, rules: 1, zones: '2026c' },
      ...extra,
    },
  };
}
