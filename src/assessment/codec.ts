export type {
  AxleSpec,
  CargoSpec,
  CurbSpec,
  RulesSpec,
  Spec,
  TiedownSpec,
  TireSpec,
  TowSpec,
  TrailerSpec,
} from '../spec/index.js';
export { specCodec } from '../spec/index.js';
