import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { run } from '../../bot/commands/export.ts';
import { localWithOffset } from '../../bot/store/export/row.ts';
import { openStore } from '../../bot/store/store.ts';
import { temporaryFolders } from './temp-folder.ts';

const newFolder = temporaryFolders();

const practice = `
practice: Ferngate Dental
timezone: Europe/London
sites:
  - {id: quay, name: Quay Street, rooms: [{id: s1, name: Surgery 1}], hours: {mon: 08:30-17:30}}
  - {id: far, name: Far Side, timezone: Australia/Adelaide, rooms: [], hours: {mon: 08:30-17:30}}
scanners:
  - {id: A, name: blue scanner, home: quay}
tips:
  - {ids: 1-12, home: quay}
people:
  - {name: Rosa, id: "@rosa:example.org", part: lead}
chat:
  - {room: "!quay:example.org", sites: [quay]}
  - {room: "!both:example.org", sites: [quay, far]}
`;

const entry = (what: object, noted: string, room = '!quay:example.org') => {
  return { what, noted, by: null, from: '@rosa:example.org', room };
};

function record(): string {
  const folder = join(newFolder(), 'record');
  const store = openStore(folder);
  const note = (noted: string, ...whats: object[]) => ({
    at: noted,
    turn: {
      cause: { sort: 'note', id: `$${noted}`, room: '!quay:example.org', from: '@rosa:example.org', noted },
      entries: whats.map((what) => entry({ when: noted, ...what }, noted)),
    },
  });
  store.append([
    { at: '2026-10-01T07:00:00Z', turn: { cause: { sort: 'practice', file: practice }, entries: [] } },
    note('2026-10-23T23:30:00Z', { kind: 'used', tips: ['4', '6'], by: '=Tom' }),
    note('2026-10-26T09:00:00Z', {
      kind: 'load-finished',
      load: '118',
      outcome: 'passed',
      celsius: 134,
      minutes: 3.5,
      dry: true,
    }),
    note('2026-10-26T09:05:00Z', { kind: 'temperature', celsius: -5, site: 'far' }),
    note(
      '2026-10-26T09:10:00Z',
      { kind: 'held', items: ['tip:4'], reason: 'said "odd", \nodd smell' },
      { kind: 'wiped', scanner: 'A', part: 'all' },
    ),
    {
      at: '2026-10-26T09:12:00Z',
      turn: {
        cause: {
          sort: 'edit',
          id: '$e',
          room: '!quay:example.org',
          from: '@rosa:example.org',
          noted: '2026-10-26T09:12:00Z',
          of: '$x',
        },
        setsAside: [3],
        correction: 'edited',
        entries: [
          entry(
            { kind: 'load-finished', load: '118', outcome: 'failed', when: '2026-10-26T09:00:00Z' },
            '2026-10-26T09:12:00Z',
          ),
        ],
      },
    },
  ]);
  store.close();
  return folder;
}

async function table(folder: string, ...args: string[]): Promise<Record<string, string>[]> {
  let text = '';
  const code = await run(['--store', folder, ...args], {
    out: (line) => {
      text += `${line}\n`;
    },
    err: () => {},
  });
  expect(code).toBe(0);
  expect(text.endsWith('\r\n')).toBe(true);
  return Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;
}

describe('export', () => {
  it('says where a load that was said to have passed counts as failed', async () => {
    const folder = record();
    const store = openStore(folder);
    store.append([
      {
        at: '2026-10-26T10:00:00Z',
        turn: {
          cause: {
            sort: 'note',
            id: '$late',
            room: '!quay:example.org',
            from: '@rosa:example.org',
            noted: 'x',
          },
          entries: [
            entry(
              {
                kind: 'load-finished',
                load: '119',
                outcome: 'passed',
                indicator: 'failed',
                when: '2026-10-26T10:00:00Z',
              },
              '2026-10-26T10:00:00Z',
            ),
          ],
        },
      },
    ]);
    store.close();
    const rows = await table(folder, '--item', 'load:119');
    expect(rows.map((row) => row.result)).toEqual(['passed; indicator failed; counts as failed']);
  });

  it('shows what an inspector looks for, local and UTC, with corrections', async () => {
    const rows = await table(record());
    expect(rows).toHaveLength(6);
    expect(rows[0]).toEqual({
      'when (local)': '2026-10-24T00:30:00+01:00',
      'when (UTC)': '2026-10-23T23:30:00Z',
      what: 'used',
      item: 'tip 4, tip 6',
      where: 'Quay Street',
      result: '',
      by: "'=Tom",
      'noted when (local)': '2026-10-24T00:30:00+01:00',
      'corrected by': '',
      line: '2',
    });
    expect(rows[1]).toMatchObject({
      'when (local)': '2026-10-26T09:00:00+00:00',
      item: 'load 118',
      result: 'passed; 134 °C; 3.5 min; dry yes',
      by: 'Rosa',
      'corrected by': 'edited by Rosa, 2026-10-26T09:12:00+00:00 (line 6)',
    });
    expect(rows[2]).toMatchObject({
      where: 'Far Side',
      result: '-5 °C'.replace(/^-/, "'-"),
      'when (local)': '2026-10-26T19:35:00+10:30',
    });
    expect(rows[3]).toMatchObject({ what: 'held', item: 'tip 4', result: 'said "odd", \nodd smell' });
    expect(rows[4]).toMatchObject({ what: 'wiped', item: 'scanner A', result: 'all' });
    expect(rows[5]).toMatchObject({ result: 'failed', 'corrected by': '' });
  });

  it.each([
    [['--from', '2026-10-24', '--to', '2026-10-24'], ['used']],
    [['--to', '2026-10-25'], ['used']],
    [['--site', 'far'], ['temperature']],
    [
      ['--item', 'tip:4'],
      ['used', 'held'],
    ],
    [
      ['--item', 'load 118'],
      ['load finished', 'load finished'],
    ],
    [['--item', 'tip:9'], []],
  ])('takes %s', async (args, kinds) => {
    expect((await table(record(), ...args)).map((row) => row.what)).toEqual(kinds);
  });

  it('gives JSON lines with the entry as kept', async () => {
    const out: string[] = [];
    await run(['--store', record(), '--json', '--item', 'scanner:A'], {
      out: (line) => void out.push(line),
      err: () => {},
    });
    expect(out.map((line) => JSON.parse(line))).toMatchObject([
      { what: 'wiped', line: 5, entry: { kind: 'wiped', scanner: 'A', part: 'all' } },
    ]);
  });

  it('says what is wrong with what was asked', async () => {
    const io = { out: () => {}, err: () => {} };
    const folder = record();
    await expect(run(['--store', folder, '--from', '24/10'], io)).rejects.toThrow(
      'a date such as 2026-11-23',
    );
    await expect(run(['--store', folder, '--site', 'moon'], io)).rejects.toThrow('quay, far');
  });
});

// RFC 3339, 5.6: full-date "T" full-time with the zone's offset; over the clock change of 25 October 2026 (tzdb).
it.each([
  ['2026-10-25T00:59:59Z', 'Europe/London', '2026-10-25T01:59:59+01:00'],
  ['2026-10-25T01:00:00Z', 'Europe/London', '2026-10-25T01:00:00+00:00'],
  ['2026-11-23T08:05:00Z', 'America/St_Johns', '2026-11-23T04:35:00-03:30'],
])('%s in %s is %s', (utc, zone, local) => {
  expect(localWithOffset(utc, zone)).toBe(local);
});

describe('export of what was changed and of incidents', () => {
  const changed = practice.replace(
    'home: quay}\ntips:',
    'home: quay}\nrules: {wipeAfterMinutes: 15, scanners: {A: {coverAfterMinutes: 20}}}\ntips:',
  );

  it('given a later practice file changes rules, then each is a row: from what to what, by the practice file', async () => {
    expect(changed).not.toBe(practice);
    const folder = join(newFolder(), 'record');
    const store = openStore(folder);
    const file = (at: string, text: string) => ({
      at,
      turn: { cause: { sort: 'practice', file: text }, entries: [] },
    });
    store.append([file('2026-10-01T07:00:00Z', practice), file('2026-10-02T07:00:00Z', changed)]);
    store.close();
    const rows = await table(folder);
    expect(rows.map(({ what, item, result, by, line }) => [what, item, result, by, line])).toEqual([
      ['rule changed', '', 'name wipeAfterMinutes; from 10; to 15', 'practice file', '2'],
      ['rule changed', 'scanner A', 'name coverAfterMinutes; from 15; to 20', 'practice file', '2'],
    ]);
    expect(rows[0]?.['when (UTC)']).toBe('2026-10-02T07:00:00Z');
  });

  it('given an incident is opened, answered and closed, then each is a row with who, when and what was done', async () => {
    const folder = join(newFolder(), 'record');
    const store = openStore(folder);
    const incident = { incident: '2.0:unsafe-tip', of: '2.0' };
    const at = '2026-10-26T09:00:00Z';
    store.append([
      { at: '2026-10-01T07:00:00Z', turn: { cause: { sort: 'practice', file: practice }, entries: [] } },
      {
        at,
        turn: {
          cause: { sort: 'note', id: '$1', room: '!quay:example.org', from: '@rosa:example.org', noted: at },
          entries: [
            entry(
              { kind: 'incident-opened', when: at, ...incident, items: ['tip:4'], sort: 'unsafe-tip' },
              at,
            ),
            entry({ kind: 'incident-answered', when: at, ...incident, tip: '4', reached: true }, at),
            entry(
              { kind: 'incident-closed', when: at, incident: incident.incident, reason: 'dentist told' },
              at,
            ),
          ],
        },
      },
    ]);
    store.close();
    const rows = await table(folder);
    expect(rows.map(({ what, item, result, by }) => [what, item, result, by])).toEqual([
      ['incident opened', 'tip 4', 'unsafe-tip; incident 2.0:unsafe-tip', 'Rosa'],
      ['incident answered', 'tip 4', 'incident 2.0:unsafe-tip; reached yes', 'Rosa'],
      ['incident closed', '', 'incident 2.0:unsafe-tip; dentist told', 'Rosa'],
    ]);
  });

  it('given something unsafe was warned of, then that is a row with who was told', async () => {
    const folder = join(newFolder(), 'record');
    const store = openStore(folder);
    const at = '2026-10-26T09:00:00Z';
    const post = { does: 'post', key: '2/0', room: '!quay:example.org', message: [], items: ['tip:4'] };
    store.append([
      { at: '2026-10-01T07:00:00Z', turn: { cause: { sort: 'practice', file: practice }, entries: [] } },
      {
        at,
        turn: {
          cause: { sort: 'note', id: '$1', room: '!quay:example.org', from: '@rosa:example.org', noted: at },
          entries: [entry({ kind: 'fitted', when: at, tip: '4', scanner: 'A' }, at)],
          effects: [
            { ...post, about: 'warning', mentions: ['@rosa:example.org'] },
            { ...post, key: '2/1', about: 'question', mentions: [] },
          ],
        },
      },
    ]);
    store.close();
    const rows = await table(folder);
    expect(rows.map(({ what, item, result, by }) => [what, item, result, by])).toEqual([
      ['fitted', 'tip 4, scanner A', '', 'Rosa'],
      ['warning said', 'tip 4', 'told Rosa', 'Scanward'],
    ]);
  });
});
