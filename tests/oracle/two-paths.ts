/**
 * The library twice: as it is, and on the exact path, where no double is ever believed.
 *
 * On the exact path every bound is without end. So every step works out its decimal where it stands, and every comparison,
 * rounding and print asks the decimals: the program as it was before figures carried doubles.
 */
import { vi } from 'vitest';

const doubles = '../../src/units/doubles.js';

async function library() {
  const [assessment, print, trace, units] = await Promise.all([
    import('../../src/assessment/index.js'),
    import('../../src/print/index.js'),
    import('../../src/trace/index.js'),
    import('../../src/units/index.js'),
  ]);
  const figure = await import('../../src/units/figure.js');
  return { ...assessment, ...print, trace, units, boundOf: figure.boundOf, doubleOf: figure.doubleOf };
}

export type Library = Awaited<ReturnType<typeof library>>;

const endless = (): number => Infinity;

/** Both copies; the exact one first, because it replaces a file for as long as it is read. */
export async function bothPaths(): Promise<{ readonly exact: Library; readonly lazy: Library }> {
  vi.resetModules();
  vi.doMock(doubles, async () => {
    const real = await vi.importActual<Record<string, unknown>>(doubles);
    const bounds = Object.keys(real).filter((name) => /^(bound|rounded)/.test(name));
    return { ...real, ...Object.fromEntries(bounds.map((name) => [name, endless])) };
  });
  const exact = await library();
  vi.doUnmock(doubles);
  vi.resetModules();
  return { exact, lazy: await library() };
}
