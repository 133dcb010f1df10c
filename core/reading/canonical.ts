import canonicalize from 'canonicalize';

/**
 * What was read as JSON in the form of RFC 8785, to compare by: the same whether it was just read or comes back from
 * the record, where the order of members is another.
 */
export function canonical(value: unknown): string {
  return canonicalize(value) ?? '';
}
