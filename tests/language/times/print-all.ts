import { BACK_CASES } from './back.cases.ts';
import { BACK_DAYS, FORWARD_DAYS } from './days.cases.ts';
import { FORWARD_CASES, START_CASES } from './forward.cases.ts';
import { back, contextAt, dates, forward, starts } from './told.ts';

// Prints the host's offset in summer, then every case as read; run under several TZ by host-zone.test.ts.
const lines = [String(new Date(Date.UTC(2026, 6, 1)).getTimezoneOffset())];
for (const zone of ['Europe/London', 'Australia/Lord_Howe']) {
  const context = contextAt(undefined, zone);
  for (const [note] of BACK_CASES) lines.push(`${note} → ${back(note, context)}`);
  for (const [note] of FORWARD_CASES) lines.push(`${note} → ${forward(note, context)}`);
  for (const [note] of START_CASES) lines.push(`${note} → ${starts(note, context)}`);
  for (const [note] of BACK_DAYS) lines.push(`${note} → ${dates(note, context, 'back')}`);
  for (const [note] of FORWARD_DAYS) lines.push(`${note} → ${dates(note, context, 'forward')}`);
}
process.stdout.write(`${lines.join('\n')}\n`);
