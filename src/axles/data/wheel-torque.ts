/** Wheel nut torques as running-gear makers' charts print them. Where charts disagree, each stands in its own row. */
import type { Table } from '../../trace/index.js';

/** From and to, ft lb. */
export type TorqueRange = readonly [low: string, high: string];

export interface WheelTorqueRow {
  readonly wheel: string;
  /** Stud diameter, inches; not printed for every wheel. */
  readonly stud?: string;
  /** The chart the row is from: charts of different makers do not always agree. */
  readonly chart: 'a' | 'b' | 'c';
  readonly stage1?: TorqueRange;
  readonly stage2?: TorqueRange;
  /** Absent where a chart is known only for another stage. */
  readonly final?: TorqueRange;
  readonly note?: string;
}

export const wheelTorque = {
  name: 'wheel nut torque',
  source: { id: 'wheel-torque', title: "axle and running-gear makers' manuals and pages, a trailer owner manual", edition: '2014 and undated', grade: 'B', note: "the wheel maker's own chart outranks these" },
  authoritative: 'ft lb',
  rows: [
    { wheel: '12-13 in', stud: '1/2', chart: 'a', stage1: ['20', '25'], stage2: ['35', '40'], final: ['50', '60'] },
    { wheel: '12-13 in', stud: '1/2', chart: 'b', final: ['50', '65'] },
    { wheel: '12-13 in', stud: '1/2', chart: 'c', stage1: ['20', '25'], stage2: ['40', '50'], final: ['50', '75'], note: '13 in wheels of 2,000 and 3,500 lb axles' },
    { wheel: '14-16 in and 16.5x6.75', stud: '1/2', chart: 'a', stage1: ['20', '25'], stage2: ['50', '60'], final: ['90', '120'] },
    { wheel: '16 in and 16.5x6.75', stud: '9/16', chart: 'a', stage1: ['20', '25'], stage2: ['60', '70'], final: ['120', '130'] },
    { wheel: '16 in and 16.5x6.75', stud: '9/16', chart: 'b', stage1: ['20', '25'], stage2: ['40', '50'], final: ['90', '120'], note: '16 in wheels of 7,000 and 7,200 lb axles' },
    { wheel: '16.5x9.75', chart: 'a', stage1: ['55', '60'], stage2: ['120', '125'], final: ['175', '225'] },
    { wheel: '14.5 demountable', stud: '5/8', chart: 'a', final: ['85', '95'], note: 'sequential' },
    { wheel: '16 dual and 17.5, cone nut', stud: '5/8', chart: 'a', stage1: ['50', '60'], stage2: ['100', '120'], final: ['190', '210'] },
    { wheel: '16 dual and 17.5, cone nut', stud: '5/8', chart: 'b', stage1: ['50', '60'], stage2: ['100', '120'], final: ['190', '220'], note: '17.5 in, hub pilot' },
    { wheel: '16 dual and 17.5, flange nut', stud: '5/8', chart: 'a', stage1: ['50', '60'], stage2: ['150', '200'], final: ['275', '325'] },
    { wheel: '16 dual and 17.5, flange nut', stud: '5/8', chart: 'b', stage1: ['50', '60'], stage2: ['90', '200'], final: ['275', '325'], note: '17.5 in, hub pilot' },
    { wheel: '16 in', stud: '5/8', chart: 'c', final: ['275', '325'], note: '7,000 and 7,200 lb axles' },
    { wheel: '17.5 in', stud: '5/8', chart: 'c', final: ['275', '325'], note: '8,000 lb axle' },
  ],
} as const satisfies Table<WheelTorqueRow>;
