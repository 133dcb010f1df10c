const WEIGHTS = [10, 9, 8, 7, 6, 5, 4, 3, 2] as const;

/**
 * Whether ten digits are a valid NHS number (England, Wales) or CHI number (Scotland): modulus 11 over the first
 * nine with weights 10 to 2; remainder from 11, where 11 counts as 0 and 10 is never issued.
 * Source: NHS Data Model and Dictionary, "NHS Number", check digit (the algorithm is quoted from memory, the
 * dictionary's own example 943 476 5919 is in the tests). Luhn does not apply to these numbers.
 */
export function isHealthNumber(digits: string): boolean {
  if (!/^\d{10}$/.test(digits)) return false;
  // 0000000000 and its like pass the sum but are keyboard noise.
  if (/^(\d)\1{9}$/.test(digits)) return false;
  const sum = WEIGHTS.reduce((total, weight, place) => total + weight * Number(digits[place]), 0);
  const check = (11 - (sum % 11)) % 11;
  return check !== 10 && check === Number(digits[9]);
}
