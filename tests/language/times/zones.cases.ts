/**
 * Clock changes and zones. Transitions: IANA tzdb 2026c; a time that occurs twice is the first, one that does not
 * occur is read with the offset before the gap (RFC 5545 §3.3.5). Instants were computed from those two.
 */
export interface ZoneCase {
  readonly zone: string;
  /** Local time of the note; where it occurs twice, the second one is given as an instant in `atUtc`. */
  readonly at: string;
  readonly atUtc?: string;
  readonly note: string;
  readonly when: string;
}

export const ZONE_CASES: readonly ZoneCase[] = [
  // Spring, London: 01:00 to 02:00 is skipped on 29 March 2026.
  {
    zone: 'Europe/London',
    at: '2026-03-29 10:00',
    note: 'calibrated at 1.30am',
    when: '2026-03-29T01:30:00Z',
  },
  {
    zone: 'Europe/London',
    at: '2026-03-29 10:00',
    note: 'calibrated at 00:59',
    when: '2026-03-29T00:59:00Z',
  },
  { zone: 'Europe/London', at: '2026-03-29 10:00', note: 'calibrated at 2am', when: '2026-03-29T01:00:00Z' },
  {
    zone: 'Europe/London',
    at: '2026-03-30 09:00',
    note: 'calibrated yesterday at 9am',
    when: '2026-03-29T08:00:00Z',
  },
  {
    zone: 'Europe/London',
    at: '2026-03-30 09:00',
    note: 'calibrated on Saturday at 9am',
    when: '2026-03-28T09:00:00Z',
  },
  {
    zone: 'Europe/London',
    at: '2026-03-29 02:30',
    note: 'calibrated an hour ago',
    when: '2026-03-29T00:30:00Z',
  },
  {
    zone: 'Europe/London',
    at: '2026-03-29 02:30',
    note: 'calibrated 2 hours ago',
    when: '2026-03-28T23:30:00Z',
  },
  // Autumn, London: 01:00 to 02:00 comes twice on 25 October 2026.
  {
    zone: 'Europe/London',
    at: '2026-10-25 10:00',
    note: 'calibrated at 1.30am',
    when: '2026-10-25T00:30:00Z',
  },
  { zone: 'Europe/London', at: '2026-10-25 10:00', note: 'calibrated at 2am', when: '2026-10-25T02:00:00Z' },
  {
    zone: 'Europe/London',
    at: '2026-10-26 09:00',
    note: 'calibrated yesterday at 9am',
    when: '2026-10-25T09:00:00Z',
  },
  {
    zone: 'Europe/London',
    at: '2026-10-26 09:00',
    note: 'calibrated on Saturday at 9am',
    when: '2026-10-24T08:00:00Z',
  },
  {
    zone: 'Europe/London',
    at: '2026-10-25 03:00',
    note: 'calibrated 2 hours ago',
    when: '2026-10-25T01:00:00Z',
  },
  {
    zone: 'Europe/London',
    at: '',
    atUtc: '2026-10-25T01:40:00Z',
    note: 'calibrated at 1.30am',
    when: '2026-10-25T00:30:00Z',
  },
  {
    zone: 'Europe/London',
    at: '',
    atUtc: '2026-10-25T01:40:00Z',
    note: 'calibrated 20 min ago',
    when: '2026-10-25T01:20:00Z',
  },
  // New York: 02:00 skipped on 8 March 2026, twice on 1 November 2026.
  {
    zone: 'America/New_York',
    at: '2026-03-08 10:00',
    note: 'calibrated at 2.30am',
    when: '2026-03-08T07:30:00Z',
  },
  { zone: 'America/New_York', at: '2026-03-09 10:00', note: 'calibrated at 9', when: '2026-03-09T13:00:00Z' },
  {
    zone: 'America/New_York',
    at: '2026-03-09 10:00',
    note: 'calibrated on Friday at 9',
    when: '2026-03-06T14:00:00Z',
  },
  {
    zone: 'America/New_York',
    at: '2026-11-01 10:00',
    note: 'calibrated at 1.30am',
    when: '2026-11-01T05:30:00Z',
  },
  {
    zone: 'America/New_York',
    at: '2026-11-02 10:00',
    note: 'calibrated yesterday at 9am',
    when: '2026-11-01T14:00:00Z',
  },
  {
    zone: 'America/New_York',
    at: '2026-11-02 10:00',
    note: 'calibrated Saturday at 9am',
    when: '2026-10-31T13:00:00Z',
  },
  // Lord Howe moves by half an hour.
  {
    zone: 'Australia/Lord_Howe',
    at: '2026-10-04 10:00',
    note: 'calibrated at 2.15am',
    when: '2026-10-03T15:45:00Z',
  },
  {
    zone: 'Australia/Lord_Howe',
    at: '2026-04-05 10:00',
    note: 'calibrated at 1.45am',
    when: '2026-04-04T14:45:00Z',
  },
  {
    zone: 'Australia/Lord_Howe',
    at: '2026-10-04 10:00',
    note: 'calibrated yesterday at 9am',
    when: '2026-10-02T22:30:00Z',
  },
  {
    zone: 'Australia/Lord_Howe',
    at: '2026-10-04 10:00',
    note: 'calibrated at 9am',
    when: '2026-10-03T22:00:00Z',
  },
  {
    zone: 'Australia/Lord_Howe',
    at: '2026-10-06 10:20',
    note: 'calibrated at quarter past',
    when: '2026-10-05T23:15:00Z',
  },
  // Sydney and Adelaide.
  {
    zone: 'Australia/Sydney',
    at: '2026-10-04 10:00',
    note: 'calibrated at 2.30am',
    when: '2026-10-03T16:30:00Z',
  },
  {
    zone: 'Australia/Sydney',
    at: '2026-04-05 10:00',
    note: 'calibrated at 2.30am',
    when: '2026-04-04T15:30:00Z',
  },
  {
    zone: 'Australia/Adelaide',
    at: '2026-10-05 16:00',
    note: 'calibrated this arvo at 3',
    when: '2026-10-05T04:30:00Z',
  },
  {
    zone: 'Australia/Adelaide',
    at: '2026-04-06 16:00',
    note: 'calibrated at 9',
    when: '2026-04-05T23:30:00Z',
  },
  // Half and quarter hours from UTC.
  { zone: 'Asia/Kolkata', at: '2026-11-25 16:20', note: 'calibrated at 4', when: '2026-11-25T10:30:00Z' },
  {
    zone: 'Asia/Kolkata',
    at: '2026-11-25 16:20',
    note: 'calibrated at ten to',
    when: '2026-11-25T10:20:00Z',
  },
  {
    zone: 'Asia/Kathmandu',
    at: '2026-11-25 16:20',
    note: 'calibrated at quarter past',
    when: '2026-11-25T10:30:00Z',
  },
  {
    zone: 'America/St_Johns',
    at: '2026-11-01 10:00',
    note: 'calibrated at 1.30am',
    when: '2026-11-01T04:00:00Z',
  },
  {
    zone: 'America/St_Johns',
    at: '2026-11-25 16:20',
    note: 'calibrated yesterday at 5',
    when: '2026-11-24T20:30:00Z',
  },
  // The local date is not the UTC date.
  { zone: 'Australia/Sydney', at: '2026-11-25 09:20', note: 'calibrated at 9', when: '2026-11-24T22:00:00Z' },
  {
    zone: 'Pacific/Auckland',
    at: '2026-11-25 09:20',
    note: 'calibrated yesterday at 5',
    when: '2026-11-24T04:00:00Z',
  },
  {
    zone: 'America/Los_Angeles',
    at: '2026-11-25 17:20',
    note: 'calibrated at 5',
    when: '2026-11-26T01:00:00Z',
  },
  // Year's end and leap days.
  {
    zone: 'Europe/London',
    at: '2027-01-01 09:00',
    note: 'calibrated yesterday at 3',
    when: '2026-12-31T15:00:00Z',
  },
  {
    zone: 'Europe/London',
    at: '2027-01-04 09:00',
    note: 'calibrated on 31 December at 3',
    when: '2026-12-31T15:00:00Z',
  },
  {
    zone: 'Europe/London',
    at: '2027-01-04 09:00',
    note: 'calibrated on the 30th at 3',
    when: '2026-12-30T15:00:00Z',
  },
  { zone: 'Europe/London', at: '2028-02-29 16:00', note: 'calibrated at 3', when: '2028-02-29T15:00:00Z' },
  {
    zone: 'Europe/London',
    at: '2028-03-01 09:00',
    note: 'calibrated yesterday at 3',
    when: '2028-02-29T15:00:00Z',
  },
  {
    zone: 'Europe/London',
    at: '2028-03-02 09:00',
    note: 'calibrated on 29 Feb at 3',
    when: '2028-02-29T15:00:00Z',
  },
  {
    zone: 'Europe/London',
    at: '2028-03-02 09:00',
    note: 'calibrated on the 29th at 3',
    when: '2028-02-29T15:00:00Z',
  },
];

/** When a plan or a reminder begins: hours run on real elapsed time, "at 9" on the wall clock. */
export const ZONE_STARTS: readonly ZoneCase[] = [
  { zone: 'Europe/London', at: '2026-03-28 16:00', note: 'tomorrow at 9', when: '2026-03-29T08:00:00Z' },
  { zone: 'Europe/London', at: '2026-03-28 16:00', note: 'tomorrow at 1.30am', when: '2026-03-29T01:30:00Z' },
  { zone: 'Europe/London', at: '2026-03-29 00:30', note: 'in an hour', when: '2026-03-29T01:30:00Z' },
  { zone: 'Europe/London', at: '2026-03-28 16:00', note: 'in 24 hours', when: '2026-03-29T16:00:00Z' },
  { zone: 'Europe/London', at: '2026-03-28 16:00', note: 'on Monday', when: '2026-03-30T07:30:00Z' },
  { zone: 'Europe/London', at: '2026-10-24 16:00', note: 'tomorrow at 1.30am', when: '2026-10-25T00:30:00Z' },
  { zone: 'Europe/London', at: '2026-10-24 16:00', note: 'tomorrow at 9', when: '2026-10-25T09:00:00Z' },
  { zone: 'Europe/London', at: '2026-10-24 16:00', note: 'on Monday at close', when: '2026-10-26T17:30:00Z' },
  {
    zone: 'America/New_York',
    at: '2026-03-07 16:00',
    note: 'tomorrow at 2.30am',
    when: '2026-03-08T07:30:00Z',
  },
  {
    zone: 'America/New_York',
    at: '2026-10-31 16:00',
    note: 'tomorrow at 1.30am',
    when: '2026-11-01T05:30:00Z',
  },
  { zone: 'America/New_York', at: '2026-10-31 16:00', note: 'on Monday at 9', when: '2026-11-02T14:00:00Z' },
  {
    zone: 'Australia/Lord_Howe',
    at: '2026-10-03 16:00',
    note: 'tomorrow at 2.15am',
    when: '2026-10-03T15:45:00Z',
  },
  {
    zone: 'Australia/Lord_Howe',
    at: '2026-04-04 16:00',
    note: 'tomorrow at 9',
    when: '2026-04-04T22:30:00Z',
  },
  { zone: 'America/St_Johns', at: '2026-03-07 16:00', note: 'tomorrow at 9', when: '2026-03-08T11:30:00Z' },
  { zone: 'Asia/Kathmandu', at: '2026-12-31 16:00', note: 'tomorrow at 9', when: '2027-01-01T03:15:00Z' },
  { zone: 'Pacific/Auckland', at: '2028-02-28 16:00', note: 'tomorrow at 9', when: '2028-02-28T20:00:00Z' },
];
