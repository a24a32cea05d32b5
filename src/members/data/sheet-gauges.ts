/** Sheet gauges: one number, four weights. Thickness in inches, weight in lb/ft2. */
import type { Table } from '../../trace/index.js';
import type { GaugeRow } from '../stock/stock-rows.js';

export const sheetGauges = {
  name: 'sheet gauges',
  source: { id: 'gauge-charts', title: 'two sheet-metal gauge charts agreeing to 3 decimals; legal gauge 15 U.S.C. 206, copy', grade: 'C', note: 'the legal gauge columns are grade B; the fourth digit of gauge 3 is from memory' },
  authoritative: 'weight in lb/ft2 of each gauge system',
  rows: [
    { gauge: '3', standard: '0.2391', standardWeight: '10.000', weightAt490: '9.7633', legal: '0.25', legalWeight: '10' },
    { gauge: '4', standard: '0.2242', standardWeight: '9.376', weightAt490: '9.1548', legal: '0.234375', legalWeight: '9.375' },
    { gauge: '5', standard: '0.2092', standardWeight: '8.748', weightAt490: '8.5423', legal: '0.21875', legalWeight: '8.75' },
    { gauge: '6', standard: '0.1943', standardWeight: '8.125', weightAt490: '7.9339', legal: '0.203125', legalWeight: '8.125' },
    { gauge: '7', standard: '0.1793', standardWeight: '7.498', weightAt490: '7.3214', legal: '0.1875', legalWeight: '7.5' },
    { gauge: '8', standard: '0.1644', standardWeight: '6.875', weightAt490: '6.7130', legal: '0.171875', legalWeight: '6.875' },
    { gauge: '9', standard: '0.1495', standardWeight: '6.252', weightAt490: '6.1046', legal: '0.15625', legalWeight: '6.25' },
    { gauge: '10', standard: '0.1345', standardWeight: '5.624', weightAt490: '5.4921', galvanized: '0.1382', galvanizedWeight: '5.779', legal: '0.140625', legalWeight: '5.625' },
    { gauge: '11', standard: '0.1196', standardWeight: '5.001', weightAt490: '4.8837', galvanized: '0.1233', galvanizedWeight: '5.156', legal: '0.125', legalWeight: '5' },
    { gauge: '12', standard: '0.1046', standardWeight: '4.374', weightAt490: '4.2712', galvanized: '0.1084', galvanizedWeight: '4.533', legal: '0.109375', legalWeight: '4.375' },
    { gauge: '13', standard: '0.0897', standardWeight: '3.751', weightAt490: '3.6628', galvanized: '0.0934', galvanizedWeight: '3.906', legal: '0.09375', legalWeight: '3.75' },
    { gauge: '14', standard: '0.0747', standardWeight: '3.124', weightAt490: '3.0503', galvanized: '0.0785', galvanizedWeight: '3.283', legal: '0.078125', legalWeight: '3.125' },
    { gauge: '15', standard: '0.0673', standardWeight: '2.814', weightAt490: '2.7481', galvanized: '0.0710', galvanizedWeight: '2.969', legal: '0.0703125', legalWeight: '2.8125' },
    { gauge: '16', standard: '0.0598', standardWeight: '2.501', weightAt490: '2.4418', galvanized: '0.0635', galvanizedWeight: '2.655', legal: '0.0625', legalWeight: '2.5' },
    { gauge: '17', standard: '0.0538', standardWeight: '2.250', weightAt490: '2.1968', galvanized: '0.0575', galvanizedWeight: '2.405', legal: '0.05625', legalWeight: '2.25' },
    { gauge: '18', standard: '0.0478', standardWeight: '1.999', weightAt490: '1.9518', galvanized: '0.0516', galvanizedWeight: '2.158', legal: '0.05', legalWeight: '2' },
    { gauge: '19', standard: '0.0418', standardWeight: '1.748', weightAt490: '1.7068', galvanized: '0.0456', galvanizedWeight: '1.907', legal: '0.04375', legalWeight: '1.75' },
    { gauge: '20', standard: '0.0359', standardWeight: '1.501', weightAt490: '1.4659', galvanized: '0.0396', galvanizedWeight: '1.656', legal: '0.0375', legalWeight: '1.5' },
    { gauge: '21', standard: '0.0329', standardWeight: '1.376', weightAt490: '1.3434', galvanized: '0.0366', galvanizedWeight: '1.531', legal: '0.034375', legalWeight: '1.375' },
    { gauge: '22', standard: '0.0299', standardWeight: '1.250', weightAt490: '1.2209', galvanized: '0.0336', galvanizedWeight: '1.405' },
    { gauge: '23', standard: '0.0269', standardWeight: '1.125', weightAt490: '1.0984', galvanized: '0.0306', galvanizedWeight: '1.280' },
    { gauge: '24', standard: '0.0239', standardWeight: '0.999', weightAt490: '0.9759', galvanized: '0.0276', galvanizedWeight: '1.154' },
    { gauge: '25', standard: '0.0209', standardWeight: '0.874', weightAt490: '0.8534', galvanized: '0.0247', galvanizedWeight: '1.033' },
    { gauge: '26', standard: '0.0179', standardWeight: '0.749', weightAt490: '0.7309', galvanized: '0.0217', galvanizedWeight: '0.907' },
    { gauge: '27', standard: '0.0164', standardWeight: '0.686', weightAt490: '0.6697', galvanized: '0.0202', galvanizedWeight: '0.845' },
    { gauge: '28', standard: '0.0149', standardWeight: '0.623', weightAt490: '0.6084', galvanized: '0.0187', galvanizedWeight: '0.782' },
    { gauge: '29', galvanized: '0.0172', galvanizedWeight: '0.719' },
    { gauge: '30', galvanized: '0.0157', galvanizedWeight: '0.657' },
  ],
} as const satisfies Table<GaugeRow>;
