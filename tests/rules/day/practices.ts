/** Two sites in two zones (one half an hour off the full hour), a break on Wednesdays, closed weeks over the new year. */
export const TWO_ZONES = `practice: Harbour and Hill Dental
timezone: Europe/London
sites:
  - id: quay
    name: Quay Street
    rooms: [{id: s1, name: Surgery 1}]
    hours: {mon: 08:30-17:30, tue: 08:30-17:30, wed: [08:30-12:30, 13:30-17:30], thu: 08:30-17:30, fri: 08:30-16:00}
    closed: [2026-12-25 to 2027-01-03]
  - id: hill
    name: Hill House
    timezone: Asia/Kolkata
    rooms: [{id: s1, name: Surgery 1}]
    hours: {mon: 09:00-17:00, tue: 09:00-17:00, sat: 09:00-12:00}
scanners:
  - {id: A, name: blue scanner, home: quay}
  - {id: B, name: green scanner, home: hill}
tips:
  - {ids: 1-6, home: quay, cycles: 100}
  - {ids: H1-H3, home: hill}
people:
  - {name: Rosa, id: "@rosa:example.org", part: lead}
  - {name: Tom, id: "@tom:example.org"}
chat:
  - {room: "!quay:example.org", sites: [quay]}
  - {room: "!hill:example.org", sites: [hill]}
rules: {loadTable: uk}
`;

/** One site, open Monday to Friday, one scanner, six tips. */
export const ONE_SITE = `practice: Quay Dental
timezone: Europe/London
sites:
  - id: quay
    name: Quay Street
    rooms: [{id: s1, name: Surgery 1}]
    hours: {mon: 08:30-17:30, tue: 08:30-17:30, wed: [08:30-12:30, 13:30-17:30], thu: 08:30-17:30, fri: 08:30-16:00}
    closed: [2026-12-25 to 2027-01-03]
scanners:
  - {id: A, name: blue scanner, home: quay}
tips:
  - {ids: 1-6, home: quay, cycles: 100}
people:
  - {name: Rosa, id: "@rosa:example.org", part: lead}
  - {name: Tom, id: "@tom:example.org"}
chat:
  - {room: "!quay:example.org", sites: [quay]}
rules: {loadTable: uk}
`;
