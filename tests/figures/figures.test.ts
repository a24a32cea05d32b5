/**
 * Every figure: compared with what is kept, well-formed, told to a reader who does not see it, in both systems of units.
 *
 * `UPDATE=1 npx vitest run tests/figures` writes the kept figures anew; look at them before committing.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import { placementBar, ratingBars, sideView, tornado } from '../../src/figures/index.js';
import { rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { faultsOfXml } from '../helpers/xml.js';
import { samples } from './samples.js';

const kept = fileURLToPath(new URL('expected/', import.meta.url));
const all = Object.entries(samples);

/** One element a line, so that a difference can be read. */
const inLines = (svg: string): string => `${svg.replaceAll('><', '>\n<')}\n`;

describe.each(all)('%s', (name, draw) => {
  it.each([640, 320])('is the one that is kept, %i wide', (width) => {
    const file = `${kept}${name}-${width}.svg`;
    const drawn = inLines(draw({ width, idPrefix: name }));
    if (process.env.UPDATE === '1') {
      mkdirSync(kept, { recursive: true });
      writeFileSync(file, drawn);
    }
    expect(drawn).toBe(readFileSync(file, 'utf8'));
  });

  it('is well-formed, in pounds and in kilograms, inline and standing alone', () => {
    for (const units of ['us', 'metric'] as const)
      for (const standalone of [true, false]) {
        const svg = draw({ units, standalone });
        expect(faultsOfXml(svg.replace(/<style>.*?<\/style>/, ''))).toEqual([]);
        expect(svg).not.toMatch(/NaN|Infinity|undefined|\[object/);
      }
  });

  it('begins with title and description, has a viewBox and no size, and keeps its ids to its prefix', () => {
    const svg = draw({ idPrefix: 'mine' });
    expect(svg).toMatch(
      /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" id="mine-figure" viewBox="0 0 640 \d+" role="img" aria-labelledby="mine-title mine-desc"[^>]*><title id="mine-title">[^<]+<\/title><desc id="mine-desc">[^<]+<\/desc>/,
    );
    expect(/<svg[^>]*\s(width|height|style)=/.test(svg)).toBe(false);
    expect([...svg.matchAll(/\sid="([^"]+)"/g)].filter(([, id]) => !id?.startsWith('mine-'))).toEqual([]);
    expect([...svg.matchAll(/url\(#([^)]+)\)/g)].filter(([, id]) => !id?.startsWith('mine-'))).toEqual([]);
  });

  it('needs no style sheet, script or file from elsewhere, and rounds to a tenth', () => {
    const svg = draw({});
    expect(svg).not.toMatch(/<style|<script|<image|href=|style=|class=/);
    expect(svg.match(/="[^"]*\d\.\d{3,}[^"]*"/g)).toBe(null);
  });

  it('is the same text twice', () => expect(draw({})).toBe(draw({})));
});

it('keeps no figure that is gone', () => {
  const files = all.flatMap(([name]) => [`${name}-320.svg`, `${name}-640.svg`]);
  expect(readdirSync(kept).sort()).toEqual(files.sort());
});

describe('escaping', () => {
  it('is total for the names of a spec', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1, maxLength: 60 }), (name) => {
        const spec = changed(changed(tiltDeck(), 'cargo.0.name', name), 'trailer.name', name);
        const answer = assess(spec);
        if (answer._tag === 'Left') return; // a name that the reader of specs refuses
        for (const svg of [sideView(answer.right), placementBar(answer.right), ratingBars(answer.right)])
          expect(faultsOfXml(svg)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
  it('is total for the names of a tornado and for the prefix', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'binary' }), (name, prefix) => {
        const bars = [{ factor: name, low: -1, high: 2, swing: 3 }];
        const svg = tornado({ what: name, unit: name, base: 1, bars }, { idPrefix: prefix });
        expect(faultsOfXml(svg)).toEqual([]);
      }),
    );
  });
  it('holds a name that would be markup as text', () => {
    const spec = changed(tiltDeck(), 'cargo.0.name', '<script>alert("&")</script>');
    const svg = sideView(rightOf(assess(spec)));
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;script&gt;');
  });
});

describe('what a figure says', () => {
  const drawn = (name: string, options = {}): string => (samples[name] as (typeof samples)[string])(options);
  it('is the figure of the assessment, loads up and capacities down', () => {
    const { checks } = rightOf(assess(tiltDeck()));
    const tongue = checks.find(({ id }) => id === 'tow/ball-mount/tongue');
    expect(tongue?.load.value.value.toFixed(2)).toBe('1490.59');
    expect(drawn('rating-bars')).toContain('>1,491 of 1,600 lb<');
    expect(drawn('rating-bars')).toContain('>109 lb left<');
    expect(drawn('side-view')).toContain('>1,491 lb<');
    expect(drawn('side-view', { units: 'metric' })).toContain('>677 kg<'); // 1490.588 lb = 676.12 kg, up
  });
  it('names the governing check and says over in words', () => {
    expect(drawn('rating-bars', { width: 320 })).toContain('tongue against ball mount tongue, governs');
    expect(drawn('rating-bars-over')).toContain('over by 1,050 lb');
    expect(drawn('side-view-over')).toContain('tongue, over');
  });
  it('says that a tongue lifts, whole inside the picture', () => {
    for (const width of [640, 320]) {
      const svg = drawn('side-view-lifting', { width });
      const place = /<text x="([\d.]+)"[^>]*>tongue lifts</.exec(svg)?.[1];
      expect(Number(place)).toBeGreaterThan(30);
      expect(svg).not.toContain('light lifts');
    }
  });
  it('names both ends of a window by the limit that sets them', () => {
    expect(drawn('placement')).toMatch(
      /Furthest forward.*Set by ball mount tongue.*Furthest back.*Set by guideline low/,
    );
  });
  it('leaves out of a picture what a spec does not say', () => {
    const bare = rightOf(assess({ trailer: { hitch: 'ball', axles: [{ gawr: '3,500 lb' }] } }));
    for (const svg of [sideView(bare), placementBar(bare), ratingBars(bare)]) expect(faultsOfXml(svg)).toEqual([]);
    expect(placementBar(bare)).toContain('No window is known');
    expect(ratingBars(bare)).toContain('nothing could be checked');
  });
});
