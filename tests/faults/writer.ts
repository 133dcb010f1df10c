// A bot in small, to be killed: takes events that the chat keeps sending, keeps a turn for each, and answers.
// Writes "said N" to standard output only once turn and outbox are on the disk: that is the room.
import { writeSync } from 'node:fs';
import { openStore, type Store } from '../../bot/store/store.ts';
import { sampleTurn } from '../store/sample-turns.ts';

const [folder = '', last = '0'] = process.argv.slice(2);
const store = openStore(folder);
for (const notice of store.notices) writeSync(1, `notice ${notice}\n`);
if (store.readOnly !== null) throw new Error(store.readOnly);
recover(store);
let next = Number(store.transport.position() ?? 0);
while (next < Number(last)) {
  const burst = Array.from({ length: 1 + (next % 4) }, (_, i) => next + i);
  const events = burst.map((i) => ({ id: `$event${i}`, room: '!quay', at: '2026-11-23T08:00:00Z', body: i }));
  // Each event comes twice, as after a lost connection.
  store.transport.receive([...events, ...events], String(next + burst.length));
  next += burst.length;
  answerAll(store);
  if (next % 50 < 4) store.saveSnapshot({ through: store.head.n });
}
store.close();

/** What a crash left between journal and outbox, and between journal and inbox. */
function recover(open: Store): void {
  for (const line of open.lines(open.transport.enqueuedThrough())) enqueue(open, line.n, line.turn);
  sendAll(open);
  answerAll(open);
}

function answerAll(open: Store): void {
  for (let event = open.transport.next(); event !== null; event = open.transport.next()) {
    const { id, body } = event;
    if (open.lineOfEvent(id) === null) {
      const [line] = open.append([
        sampleTurn(Number(body), Number(body) % 3 === 0 ? { text: `note ${body}` } : {}),
      ]);
      if (line !== undefined) enqueue(open, line.n, line.turn);
    }
    open.transport.done(id);
    sendAll(open);
  }
}

function enqueue(open: Store, n: number, turn: unknown): void {
  const id = /\$event\d+/.exec(JSON.stringify(turn))?.[0] ?? '';
  open.transport.enqueue(n, [{ key: `${id}/said`, room: '!quay', body: id }]);
}

function sendAll(open: Store): void {
  for (const { key, body } of open.transport.unsent()) {
    writeSync(1, `said ${String(body)}\n`);
    open.transport.sent(key, `$out-${key}`);
  }
}
