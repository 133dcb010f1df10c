import canonicalize from 'canonicalize';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvLines } from '../../bot/store/export/csv.ts';
import { hashOfLine, noHash, sumOf } from '../../bot/store/line.ts';
import { sealTurn } from '../../bot/store/seal.ts';

const sealNothing = {
  person: (name: string) => name,
  text: () => ({ ref: 0, sealed: '' }),
};

describe('SHA-256 as the chain uses it', () => {
  // FIPS 180-4 examples; the empty message from NIST's CAVP (also RFC 6962, the root of an empty tree).
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    [
      'abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmnoijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu',
      'cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1',
    ],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('%.20s…', (message, digest) => {
    expect(hashOfLine(message)).toBe(digest);
    expect(hashOfLine(Buffer.from(message))).toBe(digest);
  });

  // A chain check of our own making, not published: worked out apart from this program.
  it('chained over three small lines', () => {
    let hash = noHash;
    const hashes = ['{"n":1}', '{"n":2}', '{"n":3}'].map((line) => {
      hash = hashOfLine(hash + line);
      return hash;
    });
    expect(hashes).toEqual([
      'd72c261cbe5387f5a686148bff2fa3118def7c3600e28933ef12e5c91dbe76af',
      '9a1b33e47193746a8f2903fc45355d0fb02c192adf3b853902fb5fc20214d623',
      'dc489072af3f4c984a57efc0c1520697c9a4d4e5f5457c791f00ebe9f6624794',
    ]);
  });

  // The check value of CRC-32/ISO-HDLC over "123456789" is given in every catalogue of CRCs (from memory: cbf43926).
  it('CRC-32 of 123456789', () => {
    expect(sumOf('123456789')).toBe('cbf43926');
  });
});

describe('canonical JSON (RFC 8785), by the library and by the writer of journal lines', () => {
  const both = (json: string): [string | undefined, string] => {
    const value: unknown = JSON.parse(json);
    return [canonicalize(value), sealTurn(value, sealNothing).text];
  };

  // RFC 8785, 3.2.2 to 3.2.4.
  it('orders and writes as in the RFC', () => {
    const json = String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`;
    const text = String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`;
    expect(both(json)).toEqual([text, text]);
    // The same pair is "values" of the author's suite.
    expect(hashOfLine(text)).toBe('2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb');
  });

  // cyberphone/json-canonicalization, testdata: structures, french, arrays, with the SHA-256 of each output.
  it.each([
    [
      'structures',
      String.raw`{"1":{"f":{"f":"hi","F":5},"\n":56.0},"10":{},"":"empty","a":{},"111":[{"e":"yes","E":"no"}],"A":{}}`,
      '605f65004ec2db7692522a0852c22f1c989e036d547e88963d1a3143cf3195d5',
    ],
    [
      'arrays',
      `[56,{"d":true,"10":null,"1":[]}]`,
      '099601b171cafed97c333f8878d68e7f8c8f795412adb34b2fdcf0e7c7beac42',
    ],
    [
      'french',
      `{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ignore locale"}`,
      'd99d0ebdcb0033cb858cfa830ae46bc0fb3309413b271f1da828c89901a27ed5',
    ],
    [
      'unicode',
      String.raw`{"Unnormalized Unicode":"A\u030a"}`,
      '0d99aad92a125196ff887876643fd3206786a84ddce2cee52ba4ad256d2381d3',
    ],
    [
      'weird',
      String.raw`{"\u20ac":"Euro Sign","\r":"Carriage Return","\u000a":"Newline","1":"One","\u0080":"Control\u007f","\ud83d\ude02":"Smiley","\u00f6":"Latin Small Letter O With Diaeresis","\ufb33":"Hebrew Letter Dalet With Dagesh","</script>":"Browser Challenge"}`,
      '6af595a9aa80110b964b4de3f82a05fa6ae7423005019bacfa2620dddc4e94d1',
    ],
  ])('%s', (_, json, digest) => {
    const [library, ours] = both(json);
    expect(ours).toBe(library);
    expect(hashOfLine(ours)).toBe(digest);
  });

  // RFC 8785, appendix B: a number by its IEEE 754 bits.
  it.each([
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['44b52d02c7e14af6', '1e+23'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('the number with bits %s is %s', (bits, text) => {
    const number = Buffer.from(bits, 'hex').readDoubleBE();
    expect(canonicalize(number)).toBe(text);
    expect(sealTurn(number, sealNothing).text).toBe(text);
  });
});

describe('CSV', () => {
  const csv = (...cells: (string | number)[]): string => [...csvLines(['a'], [cells], (row) => row)][1] ?? '';

  // RFC 4180, section 2, rules 1 to 7.
  it('ends lines with CRLF, quotes what must be, doubles quotes, keeps spaces', () => {
    expect(csv('aaa', 'b"bb', 'ccc')).toBe('aaa,"b""bb",ccc\r\n');
    expect(csv('aaa', 'b\r\nbb', 'ccc')).toBe('aaa,"b\r\nbb",ccc\r\n');
    expect(csv('a,b', ' c ')).toBe('"a,b"," c "\r\n');
    expect(Papa.parse(csv('b"bb', 'b\r\nbb', ' c ', 'd;e').trimEnd()).data).toEqual([
      ['b"bb', 'b\r\nbb', ' c ', 'd;e'],
    ]);
  });

  // OWASP, CSV Injection: both of its examples, and each of the signs it names.
  it('lets no cell begin a formula', () => {
    expect(csv('=1+2";=1+2')).toBe(`"'=1+2"";=1+2"\r\n`);
    expect(csv(`=1+2'" ;,=1+2`)).toBe(`"'=1+2'"" ;,=1+2"\r\n`);
    for (const sign of ['=', '+', '-', '@', '\t', '\r', '\n']) {
      expect(csv(`${sign}cmd`).startsWith(`"'${sign}cmd`), JSON.stringify(sign)).toBe(true);
    }
  });

  it('keeps numbers as they are, also negative ones', () => {
    expect(csv(-5, '-5', '-5.25', '+3', '-5+3', '17.5')).toBe(`-5,-5,-5.25,+3,"'-5+3",17.5\r\n`);
  });
});
