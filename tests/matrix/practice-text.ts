/** A practice file with chat rooms that exist. Open day and night, so that no test depends on the hour. */
export function practiceText(rooms: readonly string[], more = ''): string {
  const week = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']
    .map((day) => `${day}: 00:00-23:59`)
    .join(', ');
  const sites = rooms.map(
    (_, index) =>
      `  - {id: site${index}, name: Site ${index}, rooms: [{id: s1, name: Surgery 1}], hours: {${week}}}`,
  );
  const chat = rooms.map((room, index) => `  - {room: "${room}", sites: [site${index}]}`);
  return `practice: Ferngate Dental
timezone: Europe/London
sites:
${sites.join('\n')}
scanners:
  - {id: A, name: blue scanner, also: [blue], home: site0}
  - {id: B, name: green scanner, also: [green], home: site0}
tips:
  - {ids: 1-12, home: site0, cycles: 100}
people:
  - {name: Priya, id: "@priya:example.org", part: lead}
  - {name: Dan, id: "@dan:example.org"}
chat:
${chat.join('\n')}
${more}`;
}
