import { describe, expect, test } from 'vitest';
import { formatMistakes } from '../../core/practice/mistakes.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import { BASE, baseWith } from './base-file.ts';

/** What is replaced in the base file, by what; then line, path, what is wrong, what would be right. */
type Row = readonly [string, string, number, string, string, string];

function mistakesIn(text: string) {
  const parsed = parsePractice(text);
  return 'mistakes' in parsed ? parsed.mistakes : [];
}

const rows: Readonly<Record<string, readonly Row[]>> = {
  'keys and shapes': [
    ['dates: day-first', 'datess: day-first', 30, 'datess', 'the key "datess" is not known here', 'dates'],
    [
      'also: [main, quay]',
      'alias: [main]',
      6,
      'sites.quay.alias',
      'the key "alias" is not known here',
      'also',
    ],
    ['name: Steri room', 'named: Steri room', 9, 'sites.quay.rooms.steri.named', 'the key "named"', 'name'],
    ['practice: Ferngate Dental\n', '', 1, 'practice', 'it is missing', 'the name of the practice'],
    [
      'practice: Ferngate Dental',
      'practice: [a]',
      1,
      'practice',
      'a list where one text belongs',
      'the name',
    ],
    ['{id: A, name', '{name', 17, 'scanners.blue scanner.id', 'it is missing', 'such as A'],
    [
      'id: big',
      'id: the big one',
      20,
      'autoclaves.the big one.id',
      '"the big one" cannot be an id',
      'without blanks',
    ],
    ['{name: Tom}', '{part: staff}', 26, 'people.2.name', 'it is missing', 'Rosa'],
    ['{name: Tom}', 'Tom', 26, 'people.2', 'a block of keys belongs here', '{key: value'],
    ['also: [blue]', 'also: {a: b}', 17, 'scanners.A.also', 'a list of texts belongs', '[one, two]'],
    ['dates: day-first', 'dates: us', 30, 'dates', '"us" is none of day-first, month-first', 'one of'],
    ['part: lead', 'part: leed', 25, 'people.Rosa.part', '"leed" is none of', 'lead'],
    ['cycles: 100', 'cycles: lots', 22, 'tips.1-12.cycles', '"lots" is not a whole number', 'from 1 to'],
    ['cyclesSoFar: 0', 'cyclesSoFar: -1', 22, 'tips.1-12.cyclesSoFar', '"-1" is not', 'from 0 to'],
    ['celsius: 134', 'celsius: 34', 20, 'autoclaves.big.cycles.1.celsius', '"34" is not', 'from 100 to 150'],
    [
      'minutes: 3.5',
      'min: 3, minutes: 3.5',
      20,
      'autoclaves.big.cycles.1.min',
      'the key "min" is not known',
      'minutes',
    ],
  ],
  'lists without brackets': [
    [
      'sites: [north]',
      'sites: north, quay',
      29,
      'chat.!north:example.org.quay',
      'the key "quay" is not known here',
      '[ ] around the list',
    ],
    [
      'also: [green]',
      'also: green, lime',
      18,
      'scanners.B.lime',
      'the key "lime" is not known here',
      '[ ] around the list',
    ],
    [
      '{mon: 08:30-17:30',
      '{mon, tue: 08:30-17:30',
      10,
      'sites.quay.hours.mon',
      'nothing is said of mon',
      'or closed',
    ],
    [
      '{loadTable: uk}',
      '{loadTable: }',
      31,
      'rules.loadTable',
      'nothing is not what loadTable may be',
      'one of',
    ],
  ],
  'time zones': [
    ['Europe/London', 'Europe/Lundon', 2, 'timezone', '"Europe/Lundon" is not a time zone', 'Europe/London'],
    ['Europe/London', 'London', 2, 'timezone', '"London" is not a time zone', 'Europe/London'],
    ['Europe/London', 'GMT', 2, 'timezone', '"GMT" is not a time zone', 'Europe/London'],
    ['Europe/London', '+01:00', 2, 'timezone', '"+01:00" is not a time zone', 'Europe/London'],
    ['timezone: Europe/London\n', '', 1, 'timezone', 'it is missing', 'timezone: Europe/London'],
    [
      'name: North Clinic',
      'timezone: New York',
      13,
      'sites.north.timezone',
      '"New York"',
      'America/New_York',
    ],
  ],
  hours: [
    [
      'mon: 08:30-17:30',
      'mon: 8 till late',
      10,
      'sites.quay.hours.mon',
      '"8 till late" cannot be read',
      '08:30-17:30',
    ],
    ['mon: 08:30-17:30', 'mon: 9-5', 10, 'sites.quay.hours.mon', '"9-5" cannot be read', '08:30-17:30'],
    ['mon: 08:30-17:30', 'mon: 08:30-25:30', 10, 'sites.quay.hours.mon', 'cannot be read', '08:30-17:30'],
    ['mon: 08:30-17:30', 'mon: 08:30', 10, 'sites.quay.hours.mon', 'cannot be read', '08:30-17:30'],
    [
      'mon: 08:30-17:30',
      'mon: 17:30-08:30',
      10,
      'sites.quay.hours.mon',
      'closes before it opens',
      '08:30-17:30',
    ],
    ['mon: 08:30-17:30', 'mon: 08:30-08:30', 10, 'sites.quay.hours.mon', 'closes before it opens', '08:30'],
    ['13:30-17:30]', '12:00-17:30]', 10, 'sites.quay.hours.wed.2', 'overlaps 08:30-12:30', 'a break between'],
    [
      '[08:30-12:30, 13:30',
      '[18:30-19:30, 13:30',
      10,
      'sites.quay.hours.wed.2',
      'comes after 18:30-19:30',
      'earlier span first',
    ],
    [
      '{mon: 08:30-17:30',
      '{mnday: 08:30-17:30',
      10,
      'sites.quay.hours.mnday',
      '"mnday" is not a day of the week',
      'mon',
    ],
    [
      '{mon: 08:30-17:30, wed',
      '{mon-wed: 08:30-17:30, wed',
      10,
      'sites.quay.hours.wed',
      'wed is said twice',
      'each day once',
    ],
    [
      'hours: {mon: 09:00-17:00}',
      'hours: 09:00-17:00',
      15,
      'sites.north.hours',
      'where the week belongs',
      '{mon:',
    ],
  ],
  'closed days': [
    [
      '2026-12-25',
      '2026-02-29',
      11,
      'sites.quay.closed.1',
      '"2026-02-29" is not a date of the calendar',
      '2026-12-25',
    ],
    [
      '2026-12-25',
      '25/12/2026',
      11,
      'sites.quay.closed.1',
      'is not a date written year-month-day',
      '2026-12-25',
    ],
    [
      '2026-12-25',
      '2026-12-28 to 2026-12-24',
      11,
      'sites.quay.closed.1',
      'ends before it begins',
      '2026-12-24 to 2026-12-28',
    ],
    [
      '2026-12-25',
      '2026-12-24 to 2062-12-28',
      11,
      'sites.quay.closed.1',
      'is longer than a year',
      '2026-12-25',
    ],
  ],
  'ids and names that two things share': [
    [
      'name: Tom',
      'name: Rosa',
      26,
      'people.Rosa.name',
      '"Rosa" also means the person "Rosa"',
      'only this person',
    ],
    [
      '{id: B',
      '{id: a',
      18,
      'scanners.a.id',
      'the id "a" belongs to another scanner',
      'upper and lower case',
    ],
    [
      'name: North Clinic',
      'name: the main',
      13,
      'sites.north.name',
      '"the main" also means the site "Quay Street"',
      'only this site',
    ],
    [
      'also: [green]',
      'also: [green, Blue]',
      18,
      'scanners.B.also.2',
      '"Blue" also means the scanner "blue scanner"',
      'only this scanner',
    ],
    [
      'also: [green]',
      'also: main',
      18,
      'scanners.B.also',
      '"main" also means the site "Quay Street"',
      'only this scanner',
    ],
    [
      'also: [green]',
      'also: a',
      18,
      'scanners.B.also',
      '"a" also means the scanner "blue scanner"',
      'only this scanner',
    ],
    [
      'name: Steri room',
      'name: room 1',
      9,
      'sites.quay.rooms.steri.name',
      '"room 1" also means the room "Surgery 1"',
      'only this room',
    ],
    [
      '{id: steri',
      '{id: s1',
      9,
      'sites.quay.rooms.s1.id',
      'the id "s1" belongs to another room at this site',
      'nothing else has',
    ],
    [
      'name: Tom',
      'name: rosa',
      26,
      'people.rosa.name',
      '"rosa" also means the person "Rosa"',
      'only this person',
    ],
    [
      '{name: Tom}',
      '{name: Tom, id: "@rosa:example.org"}',
      26,
      'people.Tom.id',
      '@rosa:example.org is listed twice',
      'one entry a person',
    ],
    [
      '!north:example.org',
      '!quay:example.org',
      29,
      'chat.!quay:example.org.room',
      'is listed twice',
      'one entry, with all its sites',
    ],
  ],
  tips: [
    ['ids: 1-12', 'ids: 12-1', 22, 'tips.12-1.ids', '"12-1" cannot be read as tip ids', '1-12'],
    ['ids: 1-12', 'ids: 1-9999', 22, 'tips.1-9999.ids', '"1-9999" cannot be read', 'at most'],
    ['ids: 1-12', 'ids: A1-B4', 22, 'tips.A1-B4.ids', '"A1-B4" cannot be read', 'both ends alike'],
    ['ids: 1-12', 'ids: tip 4', 22, 'tips.tip 4.ids', '"tip 4" cannot be read', 'without blanks'],
    ['ids: 1-12, ', '', 22, 'tips.1.ids', 'it is missing', 'ids: 1-12'],
    ['[N1, N2]', '[N1, 12]', 23, 'tips.2.ids.2', 'tip 12 is listed twice', 'each tip once'],
    ['[N1, N2]', '[n1, N1]', 23, 'tips.2.ids.2', 'tip N1 is listed twice', 'each tip once'],
    ['[N1, N2]', '1-3', 23, 'tips.1-3.ids', 'tips 1, 2, 3 are listed twice', 'each tip once'],
  ],
  references: [
    ['home: quay}', 'home: quey}', 17, 'scanners.A.home', 'no site has the id "quey"', 'quay'],
    ['home: quay}', 'home: Quay Street}', 17, 'scanners.A.home', 'no site has the id "Quay Street"', 'quay'],
    [', home: quay}', '}', 17, 'scanners.A', 'home is missing', 'home: one of quay, north'],
    [
      'site: quay,',
      'site: elsewhere,',
      20,
      'autoclaves.big.site',
      'no site has the id "elsewhere"',
      'one of quay, north',
    ],
    [
      'home: quay, cycles',
      'home: norht, cycles',
      22,
      'tips.1-12.home',
      'no site has the id "norht"',
      'north',
    ],
    [
      'sites: [north]',
      'sites: [south]',
      29,
      'chat.!north:example.org.sites.1',
      'no site has the id "south"',
      'north',
    ],
    [', sites: [north]', '', 29, 'chat.!north:example.org', 'it serves no site', 'sites: one of quay, north'],
  ],
  'chat identities': [
    [
      '"@rosa:example.org"',
      'rosa',
      25,
      'people.Rosa.id',
      '"rosa" is not a chat identity',
      '"@name:server", in quotes',
    ],
    [
      '"!north:example.org"',
      '"#north:example.org"',
      29,
      'chat.#north:example.org.room',
      'is not the id of a chat room',
      '#alias',
    ],
    [
      '"@rosa:example.org"',
      '@rosa:example.org',
      25,
      '',
      'a value that begins with @ must stand in quotes',
      '"@rosa:example.org"',
    ],
    [
      '"!north:example.org"',
      '!north:example.org',
      29,
      '',
      'a value that begins with ! must stand in quotes',
      '"!north:example.org"',
    ],
  ],
  rules: [
    ['loadTable: uk', 'loadTabel: uk', 31, 'rules.loadTabel', 'there is no rule "loadTabel"', 'loadTable'],
    [
      'loadTable: uk',
      'loadTable: eu',
      31,
      'rules.loadTable',
      '"eu" is not what loadTable may be',
      'one of none, uk',
    ],
    [
      'loadTable: uk',
      'settleTauMinutes: soon',
      31,
      'rules.settleTauMinutes',
      '"soon" is not what',
      'a number from 5 to 180 (minutes)',
    ],
    [
      'loadTable: uk',
      'settleWithinCelsius: 8',
      31,
      'rules.settleWithinCelsius',
      '"8" is not what',
      'from 0.5 to 3 (°C)',
    ],
    [
      'loadTable: uk',
      'wrappedGoodMonths: 24',
      31,
      'rules.wrappedGoodMonths',
      '"24" is not what',
      'a whole number from 1 to 12',
    ],
    ['loadTable: uk', 'faultLeast: 2.5', 31, 'rules.faultLeast', '"2.5" is not what', 'a whole number'],
    [
      'loadTable: uk',
      'privateNotes: perhaps',
      31,
      'rules.privateNotes',
      '"perhaps" is not what',
      'true or false',
    ],
    [
      'loadTable: uk',
      'calibrationAskAt: 22:00',
      31,
      'rules.calibrationAskAt',
      '"22:00" is not what',
      'a time from',
    ],
    ['{loadTable: uk}', 'uk', 31, 'rules', '"uk" where rules belong', '{loadTable: uk}'],
    [
      'loadTable: uk',
      'sites: {nort: {loadTable: uk}}',
      31,
      'rules.sites.nort',
      'no site has the id "nort"',
      'north',
    ],
    ['loadTable: uk', 'sites: {north: uk}', 31, 'rules.sites.north', '"uk" where rules belong', '{'],
    [
      'loadTable: uk',
      'sites: {north: {sporeRecall: first}}',
      31,
      'rules.sites.north.sporeRecall',
      'cannot differ by site',
      'for the practice',
    ],
    [
      'loadTable: uk',
      'scanners: {A: {loadTable: uk}}',
      31,
      'rules.scanners.A.loadTable',
      'cannot differ by scanner',
      'for the site or the practice',
    ],
    [
      'loadTable: uk',
      'scanners: {A: {wipeAfterMinutes: 0}}',
      31,
      'rules.scanners.A.wipeAfterMinutes',
      '"0" is not what',
      'from 1 to 30',
    ],
  ],
  'the YAML itself': [
    [
      'dates: day-first',
      'practice: Other',
      30,
      '',
      '"practice" is said twice in one place',
      'keep one of the two',
    ],
    ['    also: [main, quay]', '\talso: [main, quay]', 6, '', 'indented with a tab', 'spaces'],
    [
      'name: Quay Street',
      'name: Quay: Street',
      5,
      '',
      'a second ": " on this line',
      'one "key: value" a line',
    ],
    [
      'name: North Clinic',
      "name: 'North Clinic",
      13,
      '',
      'a quote, bracket or comma is missing',
      'close every',
    ],
    ['dates: day-first', '---\ndates: day-first', 30, '', 'more than one document', 'one practice a file'],
    ['name: Tom', 'name: *tom', 26, '', 'a value that begins with *', 'in quotes'],
  ],
};

describe.each(Object.entries(rows))('%s', (_, table) => {
  test.each(table)('%j → %j', (from, to, line, path, wrong, right) => {
    const mistakes = mistakesIn(baseWith([from, to]));
    const [first] = mistakes;
    expect(mistakes.map((mistake) => `${mistake.line} ${mistake.path}: ${mistake.wrong}`)).toHaveLength(1);
    expect(first).toMatchObject({ line, path });
    expect(first?.wrong).toContain(wrong);
    expect(first?.right).toContain(right);
  });
});

test('the base file has none, or the table above would show other mistakes', () => {
  expect(mistakesIn(BASE)).toEqual([]);
});

test('two sites with one id', () => {
  const mistakes = mistakesIn(baseWith(['id: north', 'id: quay']));
  expect(mistakes[0]).toMatchObject({
    line: 12,
    path: 'sites.quay.id',
    wrong: 'the id "quay" belongs to another site of this practice',
  });
});

test('many mistakes are told at once, in the order of the file', () => {
  const text = baseWith(
    ['Europe/London', 'Europe/Lundon'],
    ['mon: 08:30-17:30', 'mon: 17:30-08:30'],
    ['home: quay}', 'home: quey}'],
    ['ids: 1-12', 'ids: 12-1'],
    ['part: lead', 'part: boss'],
    ['loadTable', 'loadTabel'],
  );
  const mistakes = mistakesIn(text);
  expect(mistakes.map(({ line }) => line)).toEqual([2, 10, 17, 22, 25, 31]);
  expect(formatMistakes(mistakes.slice(0, 2), 'ours.yaml')).toBe(
    [
      'ours.yaml has 2 mistakes. Nothing starts until this is put right:',
      '  line 2, timezone: "Europe/Lundon" is not a time zone of the IANA list (Area/City). Right would be: Europe/London',
      '  line 10, sites.quay.hours.mon: "17:30-08:30" closes before it opens. Right would be: 08:30-17:30, or 23:59 for midnight',
    ].join('\n'),
  );
});

test.each([
  ['', 'the file is empty'],
  ['\n\n# only a remark\n', 'this is not a practice file'],
  ['just text', 'this is not a practice file'],
  ['- a\n- b', 'this is not a practice file'],
])('%j: %s', (text, wrong) => {
  expect(mistakesIn(text)).toMatchObject([{ line: 1, wrong }]);
});

test.each([
  ['practice: X\ntimezone: Europe/London', ['sites', 'scanners']],
  ['practice: X\ntimezone: Europe/London\nsites: []\nscanners: []', ['sites', 'scanners']],
  ['practice: X\ntimezone: Europe/London\nsites: {id: a}\nscanners: none', ['sites', 'scanners']],
])('a practice without sites and scanners is none: %j', (text, paths) => {
  expect(mistakesIn(text).map(({ path }) => path)).toEqual(paths);
});

test('keys that are names of every object are just unknown keys', () => {
  const text = baseWith(['dates: day-first', '__proto__: {a: 1}\nconstructor: 2']);
  expect(mistakesIn(text).map(({ path }) => path)).toEqual(['__proto__', 'constructor']);
});
