import { expect, it } from 'vitest';
import { loadSpeak } from '../../../core/rules/loads/speak.ts';
import { scannerSpeak } from '../../../core/rules/scanner/speak.ts';
import { tipSpeak } from '../../../core/rules/tips/speak.ts';

it('no kind of finding is spoken of by two tables (that none is left out, the compiler sees)', () => {
  const kinds = [scannerSpeak, tipSpeak, loadSpeak].flatMap((table) => Object.keys(table));
  expect(kinds.filter((kind, at) => kinds.indexOf(kind) !== at)).toEqual([]);
});
