/** Read by vitest before every file: figures are equal by unit and digits, wherever `toEqual` and its kin meet them. */
import { expect } from 'vitest';
import { sameFigure } from '../../src/units/arithmetic.js';

expect.addEqualityTesters([sameFigure]);
