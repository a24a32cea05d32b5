/**
 * Reading a designation against `JSON.parse` of the same text as a JSON string, by turns in one process; at most ten times is
 * asked for. Then hostile texts of growing length: time for each character must not grow.
 */
import { isLeft } from 'fp-ts/lib/Either.js';
import { readTireDesignation } from '../dist/tires.js';
import { compare, median, table } from './harness.js';

const sizes = [
  'ST225/75R15 113/108L LRD',
  'LT235/85R16 120/116R LRE',
  'P205/75R15 97S',
  '31x10.50R15LT 109R LRC',
  '7.50-16LT LRD',
  '8-14.5MH LRG',
  '4.80-12 LRB',
  '20.5x8.0-10 LRE',
  '11R22.5 144/142L LRG',
  '195R14C 106/104Q',
];

/** Each would make a reader that goes back over its text slow: long runs that promise a part and never end in one. */
const hostile = [
  { name: 'digits without an end', of: (length: number): string => '2'.repeat(length) },
  { name: 'spaces before a letter', of: (length: number): string => `ST225/75R15${' '.repeat(length - 12)}!` },
  { name: 'a size and then slashes', of: (length: number): string => `ST225/75R15 ${'/'.repeat(length - 12)}` },
  { name: 'numbers with points', of: (length: number): string => '1.'.repeat(length / 2) },
  { name: 'letters without an end', of: (length: number): string => 'L'.repeat(length) },
  {
    name: 'side marks over and over',
    of: (length: number): string => `ST225/75R15 ${'OWL '.repeat((length - 12) / 4)}`,
  },
];

function nanoseconds(text: string): number {
  const times = Array.from({ length: 31 }, () => {
    const begun = process.hrtime.bigint();
    for (let i = 0; i < 500; i += 1) readTireDesignation(text);
    return Number(process.hrtime.bigint() - begun) / 500;
  });
  return median(times);
}

export function benchTires(): void {
  for (const size of sizes) if (isLeft(readTireDesignation(size))) throw new Error(`${size} is a designation`);
  const quoted = sizes.map((size) => JSON.stringify(size));
  const total = sizes.reduce((sum, size) => sum + size.length, 0);
  compare(`Reading ${sizes.length} tire designations, ${total} characters`, [
    {
      name: 'JSON.parse of the same texts',
      run: () => {
        let length = 0;
        for (const text of quoted) length += (JSON.parse(text) as string).length;
        return [length];
      },
    },
    {
      name: 'readTireDesignation',
      run: () => {
        for (const size of sizes) readTireDesignation(size);
        return [total];
      },
    },
  ]);
  for (const { name, of } of hostile) {
    readTireDesignation(of(76));
    table(
      `Hostile text: ${name} (more than 80 characters are refused unread)`,
      [20, 40, 76, 10_000, 1_000_000].map((length) => {
        const text = of(length);
        return { name: `${text.length} characters`, figure: nanoseconds(text) / Math.min(text.length, 80) };
      }),
      'ns a character read',
    );
  }
}
