import { House, note } from './house.ts';

/**
 * Many notes at once, a quarter of them told twice, as by a chat that lost its place: throws where one of them is not in
 * the record exactly once and in order, or the record does not read back.
 */
export async function burst(folder: string, count: number): Promise<void> {
  const house = new House(folder);
  const notes = Array.from({ length: count }, (_, n) =>
    note(`$${n}`, '09:00', n % 2 === 0 ? 'wiped down blue' : 'scan done on green'),
  );
  house.keeper.receive(notes);
  house.keeper.receive(notes.slice(0, count / 4));
  await house.work('09:01');
  const recorded = house.recorded.join(' ');
  const open = house.store.transport.next();
  house.close();
  if (recorded !== notes.map(({ id }) => id).join(' ')) throw new Error('not each note once and in order');
  if (open !== null) throw new Error(`${open.id} is still in the inbox`);
  const again = new House(folder);
  const { notices, desk } = again.keeper;
  const whole = desk.turns === again.store.head.n && notices.length === 0;
  again.close();
  if (!whole) throw new Error('the snapshot was of no use to the next start');
}
