import { createServer, request, type Server } from 'node:http';

/** A line to a homeserver on which things go wrong: what is sent arrives, and the answer is lost. */
export interface BadLine {
  readonly url: string;
  /** How many answers to sends are lost from now on. */
  lose(count: number): void;
  /** How many were lost. */
  lost(): number;
  close(): void;
}

/** Opens a line to a homeserver on this machine. */
export async function badLine(to: string): Promise<BadLine> {
  const target = new URL(to);
  let losing = 0;
  let lost = 0;
  const server: Server = createServer((asked, answer) => {
    const { method, url: path, headers } = asked;
    const onward = request(
      { host: target.hostname, port: target.port, method, path, headers },
      (answered) => {
        if (losing > 0 && method === 'PUT' && /\/send\//.test(path ?? '')) {
          losing--;
          lost++;
          answered.resume();
          answered.on('end', () => asked.socket.destroy());
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
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}
