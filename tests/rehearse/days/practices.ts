/** Three sites in three zones, one of them shut on Mondays; two scanners at one site, one at another. */
export const SALTMARSH = `
practice: Saltmarsh Dental
timezone: Europe/London
sites:
  - id: hbr
    name: Harbour Row
    also: [harbour]
    rooms:
      - {id: h1, name: Surgery 1, also: [room 1]}
      - {id: h2, name: Surgery 2, also: [room 2]}
      - {id: ster, name: Steri room, also: [decon]}
    hours: {mon: 08:30-17:30, tue: 08:30-17:30, wed: [08:30-12:30, 13:30-17:30], thu: 08:30-17:30, fri: 08:30-16:00}
  - id: mill
    name: Millgate
    also: [the mill]
    timezone: Europe/Paris
    rooms: [{id: m1, name: Chair 1}]
    hours: {mon: 09:00-18:00, tue: 09:00-18:00, wed: 09:00-18:00, thu: 09:00-18:00, fri: 09:00-18:00}
  - id: elm
    name: Elm Lane
    also: [elm]
    timezone: America/New_York
    rooms: [{id: e1, name: Bay 1}]
    hours: {tue: 08:00-16:00, wed: 08:00-16:00, thu: 08:00-16:00}
scanners:
  - {id: K, name: kestrel, home: hbr, notes: {set-up: [Base on the left.], pack: [Grey case.], clean: [No sprays.], calibrate: [Switch it on early.]}}
  - {id: O, name: osprey, home: hbr}
  - {id: W, name: wren, home: elm}
tips:
  - {ids: 1-10, home: hbr, cycles: 100}
  - {ids: 11-14, home: mill, cycles: 100}
  - {ids: 15-18, home: elm, cycles: 100}
people:
  - {name: Meg, id: "@meg:x.org", part: lead}
  - {name: Ola, id: "@ola:x.org", part: deputy}
  - {name: Tom, id: "@tom:x.org"}
  - {name: Jo, id: "@jo:x.org"}
chat:
  - {room: "!hbr:x.org", sites: [hbr]}
  - {room: "!mill:x.org", sites: [mill]}
  - {room: "!elm:x.org", sites: [elm]}
rules: {loadTable: uk}
`;

/** One site, one scanner; closed on the last Monday of November 2026. */
export const HILL_TOP = `
practice: Hill Top Dental
timezone: Europe/London
sites:
  - id: hill
    name: Hill Top
    rooms: [{id: r1, name: Surgery 1}, {id: st, name: Steri room}]
    hours: {mon: 08:30-17:30, tue: 08:30-17:30, wed: [08:30-12:30, 13:30-17:30], thu: 08:30-17:30, fri: 08:30-17:30}
    closed: [2026-11-30]
scanners:
  - {id: S1, name: swift, home: hill}
tips:
  - {ids: 1-6, home: hill}
people:
  - {name: Meg, id: "@meg:x.org", part: lead}
  - {name: Tom, id: "@tom:x.org"}
chat:
  - {room: "!hill:x.org", sites: [hill]}
`;
