/** What was read of a history is not what was written. */
export class RowDamage extends Error {
  override readonly name = 'RowDamage';
}
