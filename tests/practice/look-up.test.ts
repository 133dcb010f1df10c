import { describe, expect, test } from 'vitest';
import * as lookUp from '../../core/practice/look-up.ts';
import { BASE, baseWith, practiceIn } from './base-file.ts';

const practice = practiceIn(BASE);

describe('things by their ids', () => {
  test.each([
    ['site', lookUp.siteOf(practice, 'north')?.name, 'North Clinic'],
    ['scanner', lookUp.scannerOf(practice, 'B')?.name, 'green scanner'],
    ['tip', lookUp.tipOf(practice, 'N2')?.home, 'north'],
    ['autoclave', lookUp.autoclaveOf(practice, 'big')?.site, 'quay'],
    ['room of its site', lookUp.roomOf(practice, 'quay', 's1')?.also[0], 'room 1'],
    ['room of the other site', lookUp.roomOf(practice, 'north', 's1')?.also[0], undefined],
    ['room of no site', lookUp.roomOf(practice, 'south', 's1'), undefined],
    ['person', lookUp.personOf(practice, '@rosa:example.org')?.name, 'Rosa'],
    ['unknown site', lookUp.siteOf(practice, 'constructor'), undefined],
    ['autoclaves of a site', lookUp.autoclavesOfSite(practice, 'quay').length, 1],
    ['autoclaves of another', lookUp.autoclavesOfSite(practice, 'north').length, 0],
  ])('%s', (_, found, expected) => {
    expect(found).toBe(expected);
  });
});

describe('people', () => {
  const staffed = practiceIn(
    baseWith([
      '{name: Tom}',
      '{name: Tom, part: deputy}\n  - {name: Ann, part: manager}\n  - {name: Joe, part: lead}',
    ]),
  );
  test('parts, in the order of the file', () => {
    expect(lookUp.leadOf(staffed)?.name).toBe('Rosa');
    expect(lookUp.peopleOf(staffed, 'lead').map(({ name }) => name)).toEqual(['Rosa', 'Joe']);
    expect(lookUp.deputiesOf(staffed).map(({ name }) => name)).toEqual(['Tom']);
    expect(lookUp.managersOf(staffed).map(({ name }) => name)).toEqual(['Ann']);
  });

  test('who is not listed is staff, may release nothing, and is called by the chat identity', () => {
    expect(lookUp.partOf(staffed, '@zoe:example.org')).toBe('staff');
    expect(lookUp.mayRelease(staffed, '@zoe:example.org')).toBe(false);
    expect(lookUp.mayRelease(staffed, '@rosa:example.org')).toBe(true);
    expect(lookUp.nameOf(staffed, '@zoe:example.org')).toBe('zoe');
    expect(lookUp.nameOf(staffed, '@rosa:example.org')).toBe('Rosa');
  });
});

describe('chat rooms', () => {
  const names = (room: string, of = practice) => lookUp.sitesOfChatRoom(of, room).map(({ id }) => id);

  test('serve the sites that the file says', () => {
    expect(names('!quay:example.org')).toEqual(['quay']);
    expect(names('!else:example.org')).toEqual([]);
    expect(lookUp.chatRoomsOfSite(practice, 'north').map(({ room }) => room)).toEqual(['!north:example.org']);
  });

  test('serve every site where none are listed', () => {
    const chatless = practiceIn(BASE.replace(/chat:\n(?: {2}-.*\n)*/, ''));
    expect(names('!any:example.org', chatless)).toEqual(['quay', 'north']);
  });

  test("go by their site's clock, by the practice's where their sites have several", () => {
    const mixed = practiceIn(
      baseWith(
        ['name: North Clinic', 'name: North Clinic\n    timezone: Asia/Kolkata'],
        ['sites: [quay]', 'sites: [quay, north]'],
      ),
    );
    expect(lookUp.zoneOfChatRoom(mixed, '!north:example.org')).toBe('Asia/Kolkata');
    expect(lookUp.zoneOfChatRoom(mixed, '!quay:example.org')).toBe('Europe/London');
    expect(lookUp.zoneOfChatRoom(mixed, '!else:example.org')).toBe('Europe/London');
  });
});
