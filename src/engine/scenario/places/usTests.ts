/** The total-loss test of each state of the US and of its capital: law named, and how well the row is known. */
import type { Evidence, Operator, TotalLossTest } from './placeRule.ts';

const percent = (of: number, operator: Operator = 'not known'): TotalLossTest => ({
  kind: 'percent',
  percent: of,
  operator,
});
const formula = (operator: Operator = 'not known'): TotalLossTest => ({ kind: 'formula', operator });
const INSURER: TotalLossTest = { kind: 'insurer decides' };

/**
 * Code within the country, name, test, law, evidence. `read`: statute or agency text, some through republishers;
 * `secondary`: a law firm's or an adjuster's chart that names the law, whose operator it does not tell.
 */
export const US_TESTS: readonly (readonly [string, string, TotalLossTest, string, Evidence])[] = [
  ['AL', 'Alabama', percent(75, '>='), 'Ala. Code 32-8-87(d); Alabama Department of Revenue', 'read'],
  ['AK', 'Alaska', formula(), '2 AAC 92.170', 'secondary'],
  ['AZ', 'Arizona', formula(), 'A.R.S. 28-2091', 'secondary'],
  ['AR', 'Arkansas', percent(70), 'A.C.A. 27-14-2301(6)(B)', 'secondary'],
  ['CA', 'California', formula(), 'Veh. Code 544, 11515', 'secondary'],
  ['CO', 'Colorado', percent(100), 'C.R.S. 42-6-102(17)(C)', 'secondary'],
  ['CT', 'Connecticut', formula(), 'C.G.S.A. 38a-353', 'secondary'],
  ['DE', 'Delaware', formula(), '21 Del. C. 2512', 'secondary'],
  ['DC', 'District of Columbia', percent(75), 'D.C. Code 50-1331.01(12)(A)', 'secondary'],
  ['FL', 'Florida', percent(80, '>='), 'F.S. 319.30(3)(a), 2002 bill text', 'read'],
  ['GA', 'Georgia', formula(), 'O.C.G.A. 40-3-2(11)', 'secondary'],
  ['HI', 'Hawaii', formula(), 'H.R.S. 286-48', 'secondary'],
  ['ID', 'Idaho', formula(), 'Idaho Code 49-123(2)(o)', 'secondary'],
  ['IL', 'Illinois', formula(), '625 ILCS 5/3-117.1(b)', 'secondary'],
  ['IN', 'Indiana', percent(70), 'I.C. 9-22-3-3', 'secondary'],
  ['IA', 'Iowa', percent(70, '>'), 'Iowa Code 321.52; Iowa DOT', 'read'],
  ['KS', 'Kansas', percent(75), 'K.S.A. 8-197(b)(2)(B)', 'secondary'],
  ['KY', 'Kentucky', percent(75), 'K.R.S. 186A.520(1)(a)', 'secondary'],
  ['LA', 'Louisiana', percent(75), 'La. R.S. 32:702(13)', 'secondary'],
  ['ME', 'Maine', INSURER, '29-A M.R.S. 667', 'secondary'],
  ['MD', 'Maryland', percent(75, '>'), 'Md. Transp. 11-152', 'read'],
  ['MA', 'Massachusetts', INSURER, 'M.G.L. c.90D s.1', 'secondary'],
  ['MI', 'Michigan', percent(75, '>='), 'MCL 257.217c', 'read'],
  ['MN', 'Minnesota', percent(80), 'Minn. Stat. 168A.151', 'secondary'],
  ['MS', 'Mississippi', INSURER, 'Miss. Code 63-21-33', 'secondary'],
  ['MO', 'Missouri', percent(80), 'R.S.Mo. 301.010', 'secondary'],
  ['MT', 'Montana', INSURER, 'M.C.A. 61-3-211', 'secondary'],
  ['NE', 'Nebraska', percent(75), 'Neb. R.S. 60-171', 'secondary'],
  ['NV', 'Nevada', percent(65, '>='), 'NRS 487.790', 'read'],
  ['NH', 'New Hampshire', percent(75), 'N.H. R.S.A. 261:22 VI', 'secondary'],
  ['NJ', 'New Jersey', INSURER, 'agency practice', 'secondary'],
  ['NM', 'New Mexico', INSURER, 'N.M.S.A. 66-1-4.16', 'secondary'],
  ['NY', 'New York', percent(75), 'agency rule', 'secondary'],
  ['NC', 'North Carolina', percent(75), 'N.C.G.S. 20-71.3', 'secondary'],
  ['ND', 'North Dakota', percent(75), 'N.D. Century Code (section not shown)', 'secondary'],
  ['OH', 'Ohio', formula(), 'O.R.C. 4505.11', 'memory'],
  ['OK', 'Oklahoma', percent(60, '>'), '47 O.S. 1105; OAC 710:60-5-53', 'read'],
  ['OR', 'Oregon', percent(80), 'O.R.S. 801.527', 'memory'],
  ['PA', 'Pennsylvania', formula(), '75 Pa.C.S. 1161', 'memory'],
  ['RI', 'Rhode Island', formula(), 'R.I.G.L. 31-46-1.1', 'memory'],
  ['SC', 'South Carolina', percent(75), 'S.C. Code 56-19-480', 'memory'],
  ['SD', 'South Dakota', formula(), 'S.D.C.L. 32-3-51', 'memory'],
  ['TN', 'Tennessee', percent(75), 'T.C.A. 55-3-211', 'memory'],
  ['TX', 'Texas', percent(100, '>'), 'Tex. Transp. 501.091(15)', 'read'],
  ['UT', 'Utah', formula(), 'Utah Code 41-1a-1001', 'memory'],
  ['VT', 'Vermont', formula(), '23 V.S.A. 2091', 'memory'],
  ['VA', 'Virginia', formula('>'), 'Va. Code 46.2-1600', 'read'],
  ['WA', 'Washington', formula(), 'RCW 46.12.600; WAC 308-56A-460', 'memory'],
  ['WV', 'West Virginia', percent(75), 'W. Va. Code 17A-4-10', 'memory'],
  ['WI', 'Wisconsin', percent(70), 'Wis. Stat. 340.01(55g)', 'memory'],
  ['WY', 'Wyoming', percent(75), 'W.S. 31-2-106', 'memory'],
];
