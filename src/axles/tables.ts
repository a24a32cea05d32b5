/** The published tables of this chapter. */
import type { Table } from '../trace/index.js';
import { brakePerformance } from './data/brake-performance.js';
import { brakeSizes } from './data/brake-sizes.js';
import { hubConventions } from './data/hub-conventions.js';
import { wheelTorque } from './data/wheel-torque.js';

export const axlesTables: readonly Table<unknown>[] = [brakeSizes, wheelTorque, hubConventions, brakePerformance];
