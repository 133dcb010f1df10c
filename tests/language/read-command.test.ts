import { describe, expect, it } from 'vitest';
import { run } from '../../bot/commands/read.ts';
import { corpusPractice } from './practice-at.ts';

async function reading(
  lines: readonly string[],
  args: readonly string[] = ['--at', '2026-11-24T12:40:00Z'],
  practice = corpusPractice('threeways'),
) {
  const out: string[] = [];
  const err: string[] = [];
  async function* input() {
    yield* lines;
  }
  const code = await run(['--practice', practice, ...args], {
    input: input(),
    out: (l) => out.push(l),
    err: (l) => err.push(l),
  });
  return { code, out: out.map((line) => JSON.parse(line)), err };
}

describe('read', () => {
  it('prints one reading a line, in order', async () => {
    const { code, out } = await reading([
      'used tip 4',
      'morning all',
      '{"text": "moved green to north", "room": "!mill:example.org"}',
    ]);
    expect(code).toBe(0);
    expect(out.map((one) => one.facts.map((fact: { kind: string }) => fact.kind))).toEqual([
      ['used'],
      [],
      ['moved'],
    ]);
    expect(Object.keys(out[1])).toEqual(['facts', 'asks', 'acts', 'plans', 'unclear']);
  });

  it('takes what is no JSON object for plain text', async () => {
    const { out, err } = await reading(['42', '"hello"', '[1]', 'null']);
    expect(out).toHaveLength(4);
    expect(out[0].acts).toEqual([{ kind: 'pick', choice: '42' }]);
    expect(err).toEqual([]);
  });

  it('takes the instant of the line before that of the command', async () => {
    const { out } = await reading(['used tip 4', '{"text": "used tip 4", "at": "2026-01-02T03:04:05Z"}']);
    expect(out.map((one) => one.facts[0].when)).toEqual(['2026-11-24T12:40:00Z', '2026-01-02T03:04:05Z']);
  });

  it.each([
    ['{"text": 1}', '"text"'],
    ['{"text": "x", "at": "yesterday"}', '2026-11-23T10:15:00Z'],
    ['{"text": ', 'plain text'],
    ['{"text": "x", "room": 7}', '"room"'],
  ])('tells what is wrong with %s and goes on', async (line, told) => {
    const { code, out, err } = await reading([line, 'used tip 4']);
    expect(code).toBe(1);
    expect(out).toHaveLength(2);
    expect(out[0]).toEqual({ facts: [], asks: [], acts: [], plans: [], unclear: [] });
    expect(err.join('\n')).toContain(told);
    expect(err[0]).toMatch(/^line 1: /);
  });

  it('tells why where it is asked to', async () => {
    const { out } = await reading(['used tip 4'], ['--why']);
    expect(out[0].why[0]).toMatchObject({ rule: 'used', slots: { tips: { said: 'tip 4' } } });
  });

  it('starts on nothing but a good practice file', async () => {
    const { code, out, err } = await reading(['used tip 4'], [], '/nowhere.yaml');
    expect([code, out.length]).toEqual([2, 0]);
    expect(err.join('\n')).toContain('/nowhere.yaml');
  });

  it('names an instant that is none', async () => {
    const { code, err } = await reading([], ['--at', 'noon']);
    expect(code).toBe(2);
    expect(err.join('\n')).toContain('2026-11-23T10:15:00Z');
  });
});
