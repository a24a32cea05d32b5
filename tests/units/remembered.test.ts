import { expect, it } from 'vitest';
import { remembered } from '../../src/units/internal.js';

it('asks once for a text, undefined answers included', () => {
  const asked: string[] = [];
  const length = remembered((text) => {
    asked.push(text);
    return text === '' ? undefined : text.length;
  });
  expect([length('GVWR'), length('GVWR'), length(''), length('')]).toEqual([4, 4, undefined, undefined]);
  expect(asked).toEqual(['GVWR', '']);
});

it('lets all go when it holds too many, and answers the same', () => {
  const length = remembered((text) => text.length);
  for (let i = 0; i < 1200; i += 1) expect(length(String(i))).toBe(String(i).length);
  expect(length('0')).toBe(1);
});
