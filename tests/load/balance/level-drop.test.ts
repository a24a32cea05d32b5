/** How far the ball mount drops, or rises. */
import { describe, expect, it } from 'vitest';
import { levelDrop } from '../../../src/load/index.js';
import { inch, show } from '../../../src/units/index.js';
import { expectReplays } from '../../helpers/working.js';

describe('levelDrop', () => {
  it('drops, or rises', () => {
    expect(show(levelDrop(inch(23), inch(19)).drop.value)).toBe('4 in');
    for (const receiver of ['19', '19.5']) expect(levelDrop(inch(receiver), inch(19)).notes).toEqual([]);
    expect(levelDrop(inch('18.9'), inch(19)).notes.map(({ tag }) => tag)).toEqual(['Rise']);
    expect(levelDrop(inch(17), inch(19)).notes[0]?.tag).toBe('Rise');
    expectReplays(levelDrop(inch(23), inch(19)).drop);
  });
});
