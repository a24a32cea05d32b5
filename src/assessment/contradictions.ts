export { contradictionsIn } from '../spec/index.js';
