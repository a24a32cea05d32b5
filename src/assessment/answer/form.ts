/** The form of a plain answer as a value: its keys and the form of each. */
import { ruleKinds } from '../../rules/index.js';
import { bases } from '../../trace/index.js';
import { anything, aText, aWholeNumber, byKind, exactly, listOf, oneOf } from '../../units/internal.js';

const place = aWholeNumber;
const texts = listOf(aText);
const basis = oneOf(bases);
const figure = exactly({ figure: aText }, { node: place });
const notes = listOf(exactly({ says: aText, tag: aText }, { figures: listOf(figure), paths: texts }));
const checks = listOf(
  exactly(
    {
      id: aText,
      load: aText,
      name: aText,
      rating: aText,
      reserve: aText,
      used: aText,
      verdict: oneOf(['within', 'over']),
    },
    { basis, nodes: listOf(place, 4) },
  ),
);
const payloadFigure = exactly(
  { figure: aText, governing: texts },
  { node: place, shares: exactly({ from: figure, to: figure }) },
);
const rules = listOf(
  exactly(
    {
      clause: aText,
      id: aText,
      kind: oneOf(ruleKinds),
      outcome: oneOf(['applies', 'kept', 'crossed', 'does not apply', 'cannot be told']),
      topic: aText,
      verify: oneOf([true, false]),
    },
    { effect: aText, missing: texts },
  ),
);
const source = exactly(
  { grade: aText, id: aText, title: aText },
  { address: aText, clause: aText, edition: aText, note: aText },
);

const leaf = { figure: aText, name: aText, basis };
/** Which keys a node has, by what it is: any other word is that of a step. */
const node = byKind(
  'is',
  {
    given: exactly({ ...leaf, is: aText }, { path: aText }),
    'looked up': exactly({ ...leaf, is: aText, key: aText, source: place, table: aText }),
    constant: exactly({ figure: aText, is: aText }, { name: aText, source: place }),
  },
  exactly(
    { basis, figure: aText, is: aText, of: listOf(place) },
    { name: aText, rounding: exactly({ mode: aText, step: aText }), source: place },
  ),
);

/** The whole answer. */
export const answerForm = exactly(
  {
    attention: notes,
    checks,
    checksum: aText,
    format: aText,
    library: aText,
    notes,
    open: listOf(exactly({ id: aText, missing: aText, paths: texts, what: aText })),
    partChecks: checks,
    partsChecked: place,
    tables: aText,
    uplift: listOf(exactly({ figure: aText, what: aText }, { node: place })),
    verdict: oneOf(['over', 'attention', 'within', 'unchecked']),
    version: place,
  },
  {
    inEffect: texts,
    payload: exactly({}, { best: payloadFigure, anywhere: payloadFigure }),
    rules,
    spec: anything,
    working: exactly({ nodes: listOf(node), sources: listOf(source) }),
  },
);
