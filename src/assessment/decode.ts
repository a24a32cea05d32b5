export { decodeSpec, readJson } from '../spec/index.js';
