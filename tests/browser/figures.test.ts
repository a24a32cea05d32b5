/** Every figure in Chromium: no text outside its picture, none below 11 px, none on another; light, dark and 320 pixels wide. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { samples } from '../figures/samples.js';
import { browserIsThere, launch } from '../helpers/browser.js';

interface Told {
  readonly figure: string;
  readonly text: string;
  readonly fault: string;
}

/** Runs in the page: what is wrong with the texts of every figure. */
function faultsOfTexts(): readonly Told[] {
  const faults: Told[] = [];
  for (const svg of document.querySelectorAll('svg')) {
    const frame = svg.getBoundingClientRect();
    const texts = [...svg.querySelectorAll('text')].map((text) => ({ text, box: text.getBoundingClientRect() }));
    for (const [i, { text, box }] of texts.entries()) {
      const tell = (fault: string): number => faults.push({ figure: svg.id, text: text.textContent ?? '', fault });
      if (
        box.left < frame.left - 1 ||
        box.right > frame.right + 1 ||
        box.top < frame.top - 2 ||
        box.bottom > frame.bottom + 2
      )
        tell('outside the picture');
      if (Number.parseFloat(getComputedStyle(text).fontSize) < 11) tell('smaller than 11 px');
      for (const { text: other, box: its } of texts.slice(i + 1)) {
        const wide = Math.min(box.right, its.right) - Math.max(box.left, its.left);
        const high = Math.min(box.bottom, its.bottom) - Math.max(box.top, its.top);
        if (wide > 1 && high > 4) tell(`on "${other.textContent}"`);
      }
    }
  }
  return faults;
}

describe.skipIf(!browserIsThere)('figures in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());

  it.each([
    ['light', 640, 'us'],
    ['dark', 640, 'metric'],
    ['light', 320, 'us'],
    ['light', 320, 'metric'],
  ] as const)('are legible: %s, %i wide, %s', async (colorScheme, width, units) => {
    const page = await browser.newPage({ colorScheme, viewport: { width, height: 800 } });
    const parts = Object.entries(samples).map(([name, draw]) =>
      draw({ width, units, standalone: true, idPrefix: name }),
    );
    await page.setContent(`<body style="margin:0;width:${width}px">${parts.join('')}</body>`);
    expect(await page.evaluate(faultsOfTexts)).toEqual([]);
    const colours = await page.evaluate(() => {
      const svg = document.querySelector('svg') as SVGElement;
      return [getComputedStyle(svg).color, getComputedStyle(svg).getPropertyValue('--trailer-paper')];
    });
    expect(colours).toEqual(
      colorScheme === 'dark' ? ['rgb(233, 231, 225)', '#16191c'] : ['rgb(28, 33, 38)', '#fbfaf6'],
    );
    await page.close();
  });
});
