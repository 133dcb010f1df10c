/** A file to put into an archive. */
export interface TarFile {
  name: string;
  /** Bytes; `parts` must come to exactly that. */
  size: number;
  parts: Iterable<Uint8Array>;
}

const blockSize = 512;

/** Writes files as a tar archive (ustar, POSIX.1-1988): any unpacker reads it. Names are ASCII, under 100 bytes. */
export function* writeTar(files: Iterable<TarFile>, seconds: number): Generator<Uint8Array> {
  for (const { name, size, parts } of files) {
    yield header(name, size, seconds);
    let written = 0;
    for (const part of parts) {
      written += part.length;
      yield part;
    }
    if (written !== size) throw new Error(`${name} came to ${written} bytes, not ${size}.`);
    yield new Uint8Array(padding(size));
  }
  yield new Uint8Array(2 * blockSize);
}

function padding(size: number): number {
  return (blockSize - (size % blockSize)) % blockSize;
}

function header(name: string, size: number, seconds: number): Buffer {
  if (Buffer.byteLength(name) >= 100) throw new Error(`${name} is too long a name for the archive.`);
  const block = Buffer.alloc(blockSize);
  const octal = (value: number, at: number, digits: number): void => {
    block.write(value.toString(8).padStart(digits, '0'), at, 'latin1');
  };
  block.write(name, 0, 'utf8');
  octal(0o600, 100, 7); // mode
  octal(0, 108, 7); // owner
  octal(0, 116, 7); // group
  octal(size, 124, 11);
  octal(seconds, 136, 11);
  block.fill(' ', 148, 156); // the sum counts its own field as spaces
  block.write('0', 156, 'latin1'); // a plain file
  block.write('ustar\x0000', 257, 'latin1');
  const sum = block.reduce((total, byte) => total + byte, 0);
  block.write(`${sum.toString(8).padStart(6, '0')}\0 `, 148, 'latin1');
  return block;
}

/** Where the bytes of one file of an archive go. */
export interface Unpacking {
  write(part: Uint8Array): void;
  end(): void;
}

/** Reads an archive as it comes, in pieces of any length. `open` is called for each file in it, in order. */
export async function readTar(
  archive: AsyncIterable<Uint8Array>,
  open: (name: string) => Unpacking,
): Promise<void> {
  const reader = new TarReader(open);
  for await (const chunk of archive) reader.push(chunk);
  if (!reader.ended) throw new Error('it ends in the middle');
}

class TarReader {
  ended = false;
  readonly #open: (name: string) => Unpacking;
  #held: Buffer = Buffer.alloc(0);
  #file: Unpacking | null = null;
  /** Bytes of the file in hand still to come, and of padding after it. */
  #left = 0;
  #skip = 0;

  constructor(open: (name: string) => Unpacking) {
    this.#open = open;
  }

  push(chunk: Uint8Array): void {
    this.#held = Buffer.concat([this.#held, chunk]);
    while (!this.ended && this.#step());
  }

  /** Takes what it can of what is held; false when more must come first. */
  #step(): boolean {
    if (this.#file !== null) return this.#takeFile(this.#file);
    if (this.#skip > 0) {
      this.#skip -= this.#take(this.#skip).length;
      return this.#skip === 0;
    }
    if (this.#held.length < blockSize) return false;
    const found = readHeader(this.#take(blockSize));
    if (found === null) this.ended = true;
    else {
      this.#file = this.#open(found.name);
      this.#left = found.size;
      this.#skip = padding(found.size);
    }
    return true;
  }

  #takeFile(file: Unpacking): boolean {
    const part = this.#take(this.#left);
    file.write(part);
    this.#left -= part.length;
    if (this.#left > 0) return false;
    file.end();
    this.#file = null;
    return true;
  }

  #take(length: number): Buffer {
    const part = this.#held.subarray(0, length);
    this.#held = this.#held.subarray(part.length);
    return part;
  }
}

/** Null for the empty block that ends an archive. */
function readHeader(block: Buffer): { name: string; size: number } | null {
  if (block.every((byte) => byte === 0)) return null;
  const field = (at: number, length: number): string =>
    block
      .toString('utf8', at, at + length)
      .split('\0')[0]
      ?.trim() ?? '';
  const sum = Number.parseInt(field(148, 8), 8);
  const counted = Buffer.from(block)
    .fill(' ', 148, 156)
    .reduce((total, byte) => total + byte, 0);
  if (sum !== counted) throw new Error('it is not an archive, or is damaged');
  return { name: field(0, 100), size: Number.parseInt(field(124, 12), 8) };
}
