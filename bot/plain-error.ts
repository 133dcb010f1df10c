/** A mistake of the person's or the machine's, told in plain words with the way out; shown without a stack. */
export class PlainError extends Error {
  override readonly name = 'PlainError';
}
