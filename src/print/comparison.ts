/** Several builds side by side, as a table. */
import type { Comparison, Print } from '../choose/index.js';
import type { Derived } from '../trace/index.js';
import { showBrief, type Unit } from '../units/index.js';
import { capacityInPrint, loadInPrint, remark, row, shareInPrint } from './text-layout.js';

function inPrint(figure: Derived<Unit> | undefined, print: Print): string {
  if (figure === undefined) return '-';
  if (figure.value.unit !== 'lb' && print !== 'share') return showBrief(figure.value, 1);
  switch (print) {
    case 'load':
      return loadInPrint((figure as Derived<'lb'>).value);
    case 'capacity':
      return capacityInPrint((figure as Derived<'lb'>).value);
    case 'share':
      return shareInPrint((figure as Derived<'ratio'>).value);
    case 'as it stands':
      return showBrief(figure.value, 1);
  }
}

/** The comparison as a table of at most 80 columns for two to four builds. @example comparisonText(comparison).includes('GVWR') // true */
export function comparisonText({ names, assessments, rows }: Comparison): string {
  const wide = Math.max(11, Math.floor(44 / Math.max(1, names.length)));
  const widths = names.map(() => wide);
  const line = (first: string, cells: readonly string[]): string =>
    row(
      first,
      cells.map((cell) => cell.slice(0, wide - 1)),
      34,
      widths,
    );
  return [
    line('', names),
    ...rows.map(({ what, print, figures }) =>
      line(
        `  ${what}`,
        figures.map((figure) => inPrint(figure, print)),
      ),
    ),
    line(
      '  checks over',
      assessments.map(({ checks, partChecks }) =>
        String([...checks, ...partChecks].filter(({ verdict }) => verdict === 'over').length),
      ),
    ),
    line(
      '  not well besides',
      assessments.map(({ attention, uplift }) => String(attention.length + uplift.lifted.length)),
    ),
    line(
      '  questions open',
      assessments.map(({ notChecked }) => String(notChecked.length)),
    ),
    ...assessments.map(({ tightest, payload: carry }, i) =>
      remark(
        `${names[i]}: closest to its limit is ${tightest.map(({ what }) => what).join(' and ') || 'nothing'}; payload set by ${carry?.best?.governing.map(({ name }) => name).join(' and ') ?? 'nothing'}`,
      ),
    ),
  ].join('\n');
}
