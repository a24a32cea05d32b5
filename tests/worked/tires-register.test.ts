/** EU product register (EPREL) tire information sheets, Regulation (EU) 2020/740, grade A: index to kilograms as registered. */
import { describe, expect, it } from 'vitest';
import { loadIndex, readTireDesignation, speedSymbol, tireLoadRating } from '../../src/tires/index.js';
import { rightOf } from '../helpers/either.js';

describe('registered service descriptions', () => {
  it.each([
    ['215/75R17.5 135/133J', 2180, 2060],
    ['215/75R17.5 136/134K', 2240, 2120],
    ['245/70R17.5 143/141J', 2725, 2575],
    ['7.50R16 121/120L', 1450, 1400],
    ['10R22.5 144/142M', 2800, 2650],
    ['315/70R17LT 121/118R', 1450, 1320],
    ['385/65R22.5 160K (158)', 4500, undefined],
    ['315/80R22.5 156/150L (154/150)', 4000, 3350],
    ['195/75R16C 107/105R', 975, 925],
    ['195/75R16C 110/108R', 1060, 1000],
    ['175R14C 99/98R', 775, 750],
    ['205/70R15C 106/104S', 950, 900],
    ['185/75R16C 104/102R', 900, 850],
    ['195/65R16C 104/102R', 900, 850],
    ['195/70R15C 104/102R', 900, 850],
  ])('%s is %i kg single, %i kg dual', (text, single, dual) => {
    const { service } = rightOf(readTireDesignation(text));
    if (service === undefined) throw new Error('no service description');
    expect(rightOf(loadIndex(service.single)).kg.value.value.toNumber()).toBe(single);
    expect(service.dual === undefined ? undefined : rightOf(loadIndex(service.dual)).kg.value.value.toNumber()).toBe(
      dual,
    );
    expect(rightOf(speedSymbol(service.symbol ?? '')).symbol).toBe(service.symbol);
  });
  it('finds the 17.5 inch rows from memory within 3 lb of the registered indices (2,180 and 2,060 kg; 2,725 and 2,575 kg)', () => {
    const load = (designation: string, fitment: 'single' | 'dual'): number =>
      rightOf(tireLoadRating({ designation }, { fitment, on: 'trailer' })).rating.value.value.toNumber();
    for (const [size, service] of [
      ['215/75R17.5', '135/133J'],
      ['235/75R17.5', '143/141J'],
    ] as const) {
      const range = size.startsWith('215') ? 'LRH' : 'LRJ';
      for (const fitment of ['single', 'dual'] as const)
        expect(Math.abs(load(`${size} ${range}`, fitment) - load(`${size} ${service}`, fitment))).toBeLessThanOrEqual(
          3,
        );
    }
  });
});
