import type { Finding } from '../mistakes.ts';
import { entriesOf, isFields } from './raw.ts';

/** The practice's zone may be left out only where every site names its own. */
export function missingZones(raw: unknown): readonly Finding[] {
  if (isFields(raw) && raw.timezone !== undefined) return [];
  const sites = entriesOf(raw, 'sites');
  if (sites.length > 0 && sites.every(({ fields }) => fields.timezone !== undefined)) return [];
  return [{ path: ['timezone'], at: 'key', wrong: 'it is missing', right: 'timezone: Europe/London' }];
}
