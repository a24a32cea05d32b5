/** The example line of each public function, run: what the comment says is what comes out. */
import { describe, expect, it } from 'vitest';
import * as tires from '../../src/tires/index.js';
import { inch, kPa, lb, mph, psi, show, showBrief } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';

const single = { fitment: 'single', on: 'trailer' } as const;

describe('examples in the comments', () => {
  const d = rightOf(tires.readTireDesignation('ST225/75R15 113/108L LRD'));
  it('designations', () => {
    expect([d.family, d.size.form === 'metric' && show(d.size.width), show(d.size.rim)]).toEqual([
      'ST-metric',
      '225 mm',
      '15 in',
    ]);
    expect([tires.showDesignation(d), tires.showSize(d), tires.isPassenger('P-metric')]).toEqual([
      'ST225/75R15 113/108L LRD',
      'ST225/75R15',
      true,
    ]);
    expect(tires.designationNotes(rightOf(tires.readTireDesignation('ST225/75R15 LRD')))).toEqual([]);
    expect(leftOf(tires.readTireDesignation('ST225/75R'))).toMatchObject({ fault: 'MissingRim', part: 'rim', at: 9 });
  });
  it('indices, symbols, letters', () => {
    const index = rightOf(tires.loadIndex(113));
    const symbol = rightOf(tires.speedSymbol('M'));
    expect([show(index.kg.value), show(index.lb.value), show(symbol.kmh.value), show(symbol.mph.value)]).toEqual([
      '1,150 kg',
      '2,535 lb',
      '130 km/h',
      '81 mph',
    ]);
    expect([
      rightOf(tires.loadRange('D')).plyRating,
      show(rightOf(tires.rangePressure('ST-metric', 'D')).pressure.value),
    ]).toEqual([8, '65 psi']);
  });
  it('loads and pressures', () => {
    const rated = rightOf(tires.tireLoadRating({ designation: 'ST225/75R15 LRD' }, single));
    expect([show(rated.rating.value), rated.from]).toEqual(['2,540 lb', 'table']);
    expect(show(rightOf(tires.tireLoadAsRun({ designation: 'ST225/75R15 LRD' }, single, psi(50))).load.value)).toBe(
      '2,150 lb',
    );
    expect(show(rightOf(tires.loadAtPressure('ST225/75R15 LRD', psi(62), 'single')).load.value)).toBe('2,380 lb');
    expect(show(rightOf(tires.pressureForLoad('ST225/75R15 LRD', lb(2400), 'single')).pressure.value)).toBe('65 psi');
    expect(
      show(
        rightOf(
          tires.tirePressureForLoad(
            rightOf(tires.tireLoadRating({ designation: 'ST225/75R15 LRD' }, { fitment: 'single', on: 'trailer' })),
            lb(2400),
          ),
        ).pressure.value,
      ),
    ).toBe('65 psi');
    expect(
      show(
        rightOf(tires.estimateLoadAtPressure('ST225/75R15', { load: lb(2540), pressure: psi(65) }, psi(50))).load.value,
      ),
    ).toBe('2,050 lb');
    expect(showBrief(rightOf(tires.estimatePMetricLoad('P235/75R15', kPa(240))).load.value, 0)).toBe('2,025 lb');
  });
  it('dimensions, rims, speed, dates, placard', () => {
    const geometry = rightOf(tires.tireGeometry('ST225/75R15'));
    expect([
      geometry.computed && show(geometry.computed.sectionHeight.value),
      geometry.computed && showBrief(geometry.computed.diameter.value),
      geometry.published.map(({ diameter }) => show(diameter.value)),
    ]).toEqual(['168.75 mm', '28.29 in', ['28.4 in']]);
    expect(showBrief(rightOf(tires.revolutionsPerMile(inch('31.7'))).value, 1)).toBe('655.3');
    expect([
      rightOf(tires.checkRimPressure(psi(80), psi(65))).verdict,
      ...Object.values(tires.checkRimWidth(inch(6), { least: inch(6), greatest: inch(7) })).map(
        ({ verdict }) => verdict,
      ),
    ]).toEqual(['over', 'within', 'within']);
    expect([
      rightOf(tires.speedInformation('ST205/75R15 LRD', mph(70))).says,
      rightOf(tires.dateCode('3416')).years,
    ]).toEqual(['more pressure', [2016]]);
    const words = rightOf(
      tires.placard({
        gvwr: lb(7000),
        unloaded: lb(2450),
        tires: [{ where: 'axle 1', designation: 'ST205/75R15 LRD', coldPressure: psi(65) }],
      }),
    );
    expect([show(words.cargo.value), show(words.cargoKg.value)]).toEqual(['4,550 lb', '2,063 kg']);
  });
});
