/** A morning of notes, a minute apart. */
export const MORNING = [
  'tips 1 to 8 are sterile',
  'calibrated blue, all good',
  'tip 4 on blue',
  'starting a scan on blue',
  'scan done on blue',
  'wiped down blue',
  'took tip 4 off',
  'tip 4 washed',
  'tip 4 bagged',
  'load 7 on with tip 4',
  'load 7 passed, 134 for 3.5 min',
  'tip 5 on blue',
  'starting a scan on blue',
  'scan done on blue',
  'wiped down blue',
];
