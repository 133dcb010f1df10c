import { describe, expect, test } from 'vitest';
import { loadPractice } from '../../bot/commands/practice-file.ts';
import { zoneOfChatRoom } from '../../core/practice/look-up.ts';

const path = (name: string) => new URL(`../../config/practices/${name}`, import.meta.url).pathname;

describe('the example practice', () => {
  const { practice } = loadPractice(path('example.yaml'));

  test('has two sites, three scanners, sixteen tips, two autoclaves, a chat room for each site', () => {
    expect(practice.sites.map(({ id }) => id)).toEqual(['mill', 'north']);
    expect(practice.scanners.map(({ also }) => also[0])).toEqual(['green', 'blue', 'white']);
    expect(practice.tips).toHaveLength(16);
    expect(practice.autoclaves.map(({ id }) => id)).toEqual(['big', 'small']);
    expect(practice.chat.map(({ sites }) => sites)).toEqual([['mill'], ['north']]);
    expect(practice.people.map(({ part }) => part)).toEqual(['lead', 'deputy', 'manager', 'staff']);
  });

  test('knows what the first note of the README names', () => {
    expect(practice.scanners.some(({ also }) => also.includes('green'))).toBe(true);
    expect(practice.sites.some(({ name }) => name.toLowerCase() === 'north clinic')).toBe(true);
  });
});

describe('the larger practice', () => {
  const { practice } = loadPractice(path('large.yaml'));

  test('has six sites in five zones, nine scanners, eighty tips', () => {
    expect(practice.sites).toHaveLength(6);
    expect(new Set(practice.sites.map(({ timezone }) => timezone))).toEqual(
      new Set(['Europe/London', 'Europe/Dublin', 'Australia/Adelaide', 'America/New_York', 'Asia/Kolkata']),
    );
    expect(practice.scanners).toHaveLength(9);
    expect(practice.tips).toHaveLength(80);
  });

  test('its chat rooms go by their own clocks', () => {
    expect(zoneOfChatRoom(practice, '!garden:example.org')).toBe('Asia/Kolkata');
    expect(zoneOfChatRoom(practice, '!uk:example.org')).toBe('Europe/London');
  });
});
