/** SVG as text: coordinates that are always finite, and marks that point where they should. */
import { describe, expect, it } from 'vitest';
import { arrow, box, element, label, tenth } from '../../../src/figures/drawing/element.js';

describe('a coordinate', () => {
  it('is a tenth, never NaN, -0 or without end', () => {
    expect([1.26, 1.24, -1.26, -0.01, 0].map(tenth)).toEqual(['1.3', '1.2', '-1.3', '0', '0']);
    expect([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 100_001, -100_001].map(tenth)).toEqual([
      '0',
      '100000',
      '-100000',
      '100000',
      '-100000',
    ]);
  });
});

describe('an element', () => {
  it('leaves out attributes that are not told, and closes itself without children', () => {
    expect(element('g', { x: 1.23, y: undefined, id: 'a"b' })).toBe('<g x="1.2" id="a&quot;b"/>');
    expect(element('g', {}, 'x', 'y')).toBe('<g>xy</g>');
  });
  it('of text tells anchor, size and weight where they are not the usual ones', () => {
    expect(label(1, 2, '<')).toBe('<text x="1" y="2">&lt;</text>');
    expect(label(1, 2, 'a', { anchor: 'start', size: 12, bold: false })).toBe('<text x="1" y="2">a</text>');
    expect(label(1, 2, 'a', { anchor: 'end', size: 11, bold: true, fill: 'red' })).toBe(
      '<text x="1" y="2" text-anchor="end" font-size="11" font-weight="600" fill="red">a</text>',
    );
  });
  it('of a rectangle has no negative size', () => {
    expect(box(1, 2, -3, -4, {})).toBe('<rect x="1" y="2" width="0" height="0"/>');
    expect(box(1, 2, 0.5, 0.4, {})).toBe('<rect x="1" y="2" width="0.5" height="0.4"/>');
  });
  it('of an arrow has its head at the tip and a neck where it is long enough', () => {
    const down = arrow(10, 0, 20, 'red');
    expect(down).toContain('<line x1="10" y1="0" x2="10" y2="13" stroke="red" stroke-width="2"/>');
    expect(down).toContain('points="10,20 6,13 14,13"');
    expect(arrow(10, 20, 0, 'red')).toContain('points="10,0 6,7 14,7"');
    expect(arrow(10, 20, 0, 'red')).toContain('y2="7"');
    expect(arrow(10, 0, 7, 'red')).toContain('y1="0" x2="10" y2="0"');
    expect(arrow(10, 1, 8.5, 'red')).toContain('y1="1" x2="10" y2="1.5"');
    expect(arrow(10, 0, 6.9, 'red')).toContain('y1="0" x2="10" y2="0"');
    expect(arrow(10, 5, 5, 'red')).toContain('points="10,5 6,12 14,12"');
  });
});
