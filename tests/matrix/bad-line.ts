import { createServer, request, type Server } from 'node:http';

/** A line to a homeserver on which things go wrong: what is sent arrives, and the answer is lost. */
export interface BadLine {
  readonly url: string;
  /** How many answers to sends are lost from now on. */
  lose(count: number): void;
  /** How many were lost. */
  lost(): number;
  /** How many changes of a room's state are answered by a fault of the line's own from now on, without being passed on. */
  refuseStates(count: number): void;
  /** How many were refused. */
  refused(): number;
  /** From now on keys sent to other devices are taken and not passed on, */
  holdKeys(): void;
  /** … until they are let go. */
  releaseKeys(): Promise<void>;
  /** From now on what comes over the line was typed so long ago, ms, by the homeserver's clock; less than 0: it runs ahead. */
  age(ms: number): void;
  close(): void;
}

/** Opens a line to a homeserver on this machine. */
export async function badLine(to: string): Promise<BadLine> {
  const target = new URL(to);
  let losing = 0;
  let lost = 0;
  let refusing = 0;
  let refused = 0;
  let holding = false;
  let older = 0;
  const held: { readonly path: string; readonly headers: Record<string, string>; readonly body: string }[] =
    [];
  const server: Server = createServer((asked, answer) => {
    const { method, url: path, headers } = asked;
    if (holding && /\/sendToDevice\/m\.room\.encrypted\//.test(path ?? '')) {
      let body = '';
      asked.on('data', (chunk: Buffer) => {
        body += chunk.toString('utf8');
      });
      asked.on('end', () => {
        held.push({ path: path ?? '', headers: { authorization: headers.authorization ?? '' }, body });
        answer.writeHead(200, { 'content-type': 'application/json' }).end('{}');
      });
      return;
    }
    if (refusing > 0 && method === 'PUT' && /\/state\//.test(path ?? '')) {
      refusing--;
      refused++;
      asked.resume();
      answer.writeHead(502).end();
      return;
    }
    const onward = request(
      // What is to be changed on its way must not be packed.
      {
        host: target.hostname,
        port: target.port,
        method,
        path,
        headers: { ...headers, 'accept-encoding': 'identity' },
      },
      (answered) => {
        if (losing > 0 && method === 'PUT' && /\/send\//.test(path ?? '')) {
          losing--;
          lost++;
          answered.resume();
          answered.on('end', () => asked.socket.destroy());
          return;
        }
        if (older !== 0 && /json/.test(answered.headers['content-type'] ?? '')) {
          let body = '';
          answered.setEncoding('utf8');
          answered.on('data', (chunk: string) => {
            body += chunk;
          });
          answered.on('end', () => {
            const { 'content-length': _, ...kept } = answered.headers;
            answer.writeHead(answered.statusCode ?? 500, kept);
            answer.end(
              body.replace(
                /("origin_server_ts":)(\d+)/g,
                (_all, name, time) => name + (Number(time) - older),
              ),
            );
          });
          return;
        }
        answer.writeHead(answered.statusCode ?? 500, answered.headers);
        answered.pipe(answer);
      },
    );
    onward.on('error', () => asked.socket.destroy());
    answer.on('close', () => onward.destroy());
    asked.pipe(onward);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    url: `http://127.0.0.1:${port}`,
    lose: (count) => {
      losing = count;
    },
    lost: () => lost,
    refuseStates: (count) => {
      refusing = count;
    },
    refused: () => refused,
    age: (ms) => {
      older = ms;
    },
    holdKeys: () => {
      holding = true;
    },
    releaseKeys: async () => {
      holding = false;
      for (const { path, headers: kept, body } of held.splice(0)) {
        await fetch(`${to}${path}`, { method: 'PUT', headers: kept, body });
      }
    },
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}
