/** The list of tables of the chapter. */
import { describe, expect, it } from 'vitest';
import { membersTables } from '../../src/members/index.js';

describe('tables', () => {
  it('every table of the chapter has rows, a source and an authoritative column', () => {
    expect(membersTables).toHaveLength(20);
    for (const table of membersTables) {
      expect(table.rows.length).toBeGreaterThan(1);
      expect(table.source.title.length * table.authoritative.length).toBeGreaterThan(0);
    }
  });
});
