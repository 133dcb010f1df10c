import { createServer, type Server } from 'node:http';
import { PlainError } from '../../../plain-error.ts';
import type { Finding } from './finding.ts';

/**
 * A page for a watcher, `http://127.0.0.1:PORT/health`, to this machine alone: 200 while the homeserver is heard, 503 where
 * the program is deaf, no answer where it is dead; with a line for each finding. Throws PlainError where the port is taken.
 */
export async function openHealthPage(port: number, findings: () => readonly Finding[]): Promise<Server> {
  const page = createServer(({ url, method }, answer) => {
    if (url !== '/health' || (method !== 'GET' && method !== 'HEAD')) {
      answer.writeHead(404).end();
      return;
    }
    const found = findings();
    const isDeaf = found.some(({ of, good }) => of === 'heard' && !good);
    const text = found.map(({ line, good }) => `${good ? 'well ' : 'LOOK '} ${line}\n`).join('');
    answer.writeHead(isDeaf ? 503 : 200, { 'content-type': 'text/plain; charset=utf-8' }).end(text);
  });
  await new Promise<void>((resolve, reject) => {
    page.once('error', () => reject(new PlainError(`Port ${port} of this machine is taken.`)));
    page.listen(port, '127.0.0.1', resolve);
  });
  return page;
}
