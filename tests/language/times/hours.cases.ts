/** How the opening hours and the moment of the note decide; local times. `hours: false` where the site is not known. */
export interface HoursCase {
  readonly at: string;
  readonly note: string;
  readonly meant: string;
  readonly hours?: false;
}

export const BACK_BY_HOURS: readonly HoursCase[] = [
  // Early in the day a bare hour of the afternoon is yesterday's.
  { at: '2026-11-25 08:10', note: 'sent tip 4 at 5', meant: '2026-11-24 17:00' },
  { at: '2026-11-25 08:10', note: 'sent tip 4 at 4', meant: '2026-11-24 16:00' },
  { at: '2026-11-25 08:10', note: 'sent tip 4 at 8', meant: '08:00' },
  { at: '2026-11-25 09:10', note: 'sent tip 4 at 9', meant: '09:00' },
  { at: '2026-11-25 09:10', note: 'sent tip 4 at 8', meant: '08:00' },
  { at: '2026-11-25 18:20', note: 'sent tip 4 at 6', meant: '18:00' },
  { at: '2026-11-25 20:10', note: 'sent tip 4 at 8', meant: '20:00' },
  { at: '2026-11-25 22:30', note: 'sent tip 4 at 8', meant: '08:00' },
  { at: '2026-11-25 00:30', note: 'sent tip 4 at 11', meant: '2026-11-24 11:00' },
  { at: '2026-11-25 00:30', note: 'sent tip 4 at quarter to', meant: '2026-11-24 23:45' },
  { at: '2026-11-25 13:05', note: 'sent tip 4 at 1', meant: '13:00' },
  { at: '2026-11-25 12:40', note: 'sent tip 4 at half 12', meant: '12:30' },
  // After a weekend the day before is Friday, and that is far.
  { at: '2026-11-23 08:10', note: 'sent tip 4 at 3', meant: '2026-11-20 15:00 ?far' },
  { at: '2026-11-23 08:10', note: 'sent tip 4 on Friday at 3', meant: '2026-11-20 15:00' },
  // The brief's own: 5 is the afternoon where the site is open then and shut at 05:00.
  { at: '2026-11-25 16:20', note: 'yesterday at 5', meant: '2026-11-24 17:00' },
  { at: '2026-11-23 16:20', note: 'yesterday at 5', meant: '2026-11-22 17:00' },
  { at: '2026-11-25 16:20', note: 'yesterday at 5', meant: '2026-11-24 17:00', hours: false },
  { at: '2026-11-25 16:20', note: 'sent at 9', meant: '09:00', hours: false },
  { at: '2026-11-25 16:20', note: 'sent at 4', meant: '16:00', hours: false },
  { at: '2026-11-25 16:20', note: 'this morning', meant: 'now since 00:00 till 12:00', hours: false },
  { at: '2026-11-25 16:20', note: 'today', meant: 'now since 00:00', hours: false },
  // A day that the site is closed begins at midnight; so does the time before opening.
  { at: '2026-11-28 11:00', note: 'this morning', meant: 'now since 00:00' },
  { at: '2026-11-28 11:00', note: 'today', meant: 'now since 00:00' },
  { at: '2026-12-25 11:00', note: 'this morning', meant: 'now since 00:00' },
  { at: '2026-11-25 07:50', note: 'this morning', meant: 'now since 00:00' },
  { at: '2026-11-25 07:50', note: 'today', meant: 'now since 00:00' },
  { at: '2026-11-25 09:50', note: 'this morning', meant: 'now since 08:30' },
  { at: '2026-11-25 09:50', note: 'this afternoon', meant: 'now ?future' },
  { at: '2026-11-25 09:50', note: 'after lunch', meant: 'now ?future' },
  { at: '2026-11-23 09:50', note: 'yesterday', meant: 'now since 2026-11-22 00:00 till 00:00' },
  { at: '2026-11-23 09:50', note: 'over the weekend', meant: 'now since 2026-11-21 00:00 till 00:00' },
  { at: '2026-11-29 09:50', note: 'at the weekend', meant: 'now since 2026-11-28 00:00' },
  { at: '2026-11-27 16:30', note: 'at close', meant: '16:00' },
  { at: '2026-11-25 16:30', note: 'sent at opening', meant: '08:30' },
  // A weekday named on its own day, and the day after.
  { at: '2026-11-23 11:00', note: 'Monday at 9', meant: '09:00' },
  { at: '2026-11-23 11:00', note: 'Monday at 2', meant: '2026-11-16 14:00' },
  { at: '2026-11-24 11:00', note: 'Monday at 2', meant: '2026-11-23 14:00' },
  { at: '2026-11-26 11:00', note: 'last Thursday at 9', meant: '2026-11-19 09:00' },
  { at: '2026-11-27 11:00', note: 'last Thursday at 9', meant: '2026-11-26 09:00' },
];

export const FORWARD_BY_HOURS: readonly HoursCase[] = [
  { at: '2026-11-25 08:00', note: 'scans at 9, 10:30 and 2', meant: '2026-11-25 09:00 10:30 14:00' },
  { at: '2026-11-25 11:00', note: 'scans at 9, 10:30 and 2', meant: '2026-11-25 09:00 10:30 14:00' },
  { at: '2026-11-25 17:00', note: 'scans at 9, 10:30 and 2', meant: '2026-11-26 09:00 10:30 14:00' },
  { at: '2026-11-27 17:00', note: 'scans at 9, 10:30 and 2', meant: '2026-11-30 09:00 10:30 14:00' },
  { at: '2026-12-24 17:00', note: 'scan at 9', meant: '2026-12-28 09:00' },
  { at: '2026-11-25 08:00', note: 'scan at 2', meant: '2026-11-25 14:00' },
  { at: '2026-11-25 08:00', note: 'scan tomorrow at 8', meant: '2026-11-26 08:00' },
  { at: '2026-11-25 08:00', note: 'scan tomorrow at 6', meant: '2026-11-26 18:00' },
  { at: '2026-11-25 08:00', note: 'scan tomorrow at 2', meant: '2026-11-26 14:00', hours: false },
  { at: '2026-11-25 08:00', note: 'scan tomorrow at 9', meant: '2026-11-26 09:00', hours: false },
  { at: '2026-12-26 09:00', note: 'closed 24th to 2nd Jan', meant: '2026-12-26..2027-01-02' },
  { at: '2026-12-30 09:00', note: 'closed till Monday', meant: '2026-12-30..2027-01-04' },
  { at: '2026-12-31 09:00', note: 'closed tomorrow', meant: '2027-01-01' },
  { at: '2026-12-28 09:00', note: 'closed Thursday and Friday', meant: '2026-12-31..2027-01-01' },
  { at: '2028-02-01 09:00', note: 'closed 29 Feb', meant: '2028-02-29' },
  { at: '2028-02-28 09:00', note: 'closed tomorrow', meant: '2028-02-29' },
  { at: '2028-02-27 09:00', note: 'closed 28 Feb to 1 March', meant: '2028-02-28..2028-03-01' },
  { at: '2026-11-29 09:00', note: 'scan next Monday at 9', meant: '2026-11-30 09:00' },
  { at: '2026-11-30 09:00', note: 'scan next Monday at 9', meant: '2026-12-07 09:00' },
  { at: '2026-11-30 09:00', note: 'scan on Monday at 10', meant: '2026-12-07 10:00' },
  { at: '2026-11-30 09:00', note: 'scan this Monday at 10', meant: '2026-11-30 10:00' },
  { at: '2026-11-29 09:00', note: 'closed this weekend', meant: '2026-11-29' },
];
