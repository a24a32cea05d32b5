/** Rounding in Float64. A figure within the band of a step counts as on it; such rows are decided again with exact decimals. */
import type { RoundingMode } from '../../units/index.js';

const band = 1e-9;

export function applyRounding(x: number, step: number, mode: RoundingMode): number {
  const steps = x / step;
  const whole = Math.round(steps);
  if (Math.abs(steps - whole) <= band * Math.max(1, Math.abs(steps))) return whole * step;
  // A decimal half may be slightly off in binary: within the band it counts as the half.
  const size = Math.abs(steps);
  const half = Math.floor(size) + 0.5;
  const near = Math.abs(size - half) <= band * Math.max(1, size) ? half : size;
  switch (mode) {
    case 'down':
      return Math.floor(steps) * step;
    case 'up':
      return Math.ceil(steps) * step;
    case 'nearest':
      return Math.sign(steps) * Math.floor(near + 0.5) * step;
    case 'nearest-down':
      return Math.sign(steps) * Math.ceil(near - 0.5) * step;
  }
}
