/** Loops for linear forms. Each reads a few columns and writes several, so that each value is fetched once. */
import type { Column } from './columns.js';

export function oneFromOne(x: Column, y: Column, a: number, b: number, rows: number): void {
  for (let i = 0; i < rows; i += 1) y[i] = a * (x[i] as number) + b;
}

export function twoFromOne(
  x: Column,
  y: Column,
  z: Column,
  a: number,
  b: number,
  c: number,
  d: number,
  rows: number,
): void {
  for (let i = 0; i < rows; i += 1) {
    const v = x[i] as number;
    y[i] = a * v + b;
    z[i] = c * v + d;
  }
}

export function fourFromOne(
  x: Column,
  y: Column,
  z: Column,
  u: Column,
  w: Column,
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
  g: number,
  h: number,
  rows: number,
): void {
  for (let i = 0; i < rows; i += 1) {
    const v = x[i] as number;
    y[i] = a * v + b;
    z[i] = c * v + d;
    u[i] = e * v + f;
    w[i] = g * v + h;
  }
}

export function oneFromTwo(x: Column, v: Column, y: Column, a: number, b: number, c: number, rows: number): void {
  for (let i = 0; i < rows; i += 1) y[i] = a * (x[i] as number) + b * (v[i] as number) + c;
}

export function twoFromTwo(
  x: Column,
  v: Column,
  y: Column,
  z: Column,
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
  rows: number,
): void {
  for (let i = 0; i < rows; i += 1) {
    const p = x[i] as number;
    const q = v[i] as number;
    y[i] = a * p + b * q + c;
    z[i] = d * p + e * q + f;
  }
}

export function threeFromTwo(
  x: Column,
  v: Column,
  y: Column,
  z: Column,
  u: Column,
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
  g: number,
  h: number,
  k: number,
  rows: number,
): void {
  for (let i = 0; i < rows; i += 1) {
    const p = x[i] as number;
    const q = v[i] as number;
    y[i] = a * p + b * q + c;
    z[i] = d * p + e * q + f;
    u[i] = g * p + h * q + k;
  }
}

export function more(x: Column, y: Column, a: number, rows: number): void {
  for (let i = 0; i < rows; i += 1) y[i] = (y[i] as number) + a * (x[i] as number);
}
