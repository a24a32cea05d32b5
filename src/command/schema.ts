/** The JSON Schema of a spec, as text for an editor or another program. */
import { specJsonSchema } from '../spec/index.js';

export const schemaText = (): string => JSON.stringify(specJsonSchema(), null, 2);
