import type {
  BreakEven,
  Decision,
  LedgerRow,
  LoanView,
  OptionResult,
  Swing,
} from '../../src/engine/answer/decision.ts';
import type { Category } from '../../src/engine/cashflow/posting.ts';
import type { Cents } from '../../src/engine/quantity/money.ts';
import { toCents } from '../../src/engine/quantity/money.ts';
import type { Facts, Mark, Quantity, Unit } from '../../src/engine/scenario/inputs/scenario.ts';

/**
 * An invented decision, worked out by a few lines of arithmetic that owe nothing to the engine: an old wagon with a
 * tired head gasket against a financed hatchback. The report can be tested without the engine that will feed it.
 */
const H = 60;
const EARNS = 0.035;
const HOUR = 12;
const v = (month: number): number => (1 + EARNS) ** (-month / 12);
const level = (g: number, month: number): number => (1 + g) ** Math.max(0, Math.floor((month - 1) / 12));
const months = Array.from({ length: H }, (_, i) => i + 1);

export const facts: Facts = {
  title: 'Mend the 2009 wagon, or hand it on?',
  date: '2026-11-25',
  note: '',
  invented: true,
  currency: 'USD',
  distanceUnit: 'miles',
  energyUnit: { vehicle: 'gallon', replacement: ['gallon'] },
  energyStated: { vehicle: 'perUnit', replacement: ['perUnit'] },
  perDollar: 1,
  mechanic: 'Ren',
  partner: 'Ada',
  vehicleName: '2009 wagon',
  needs: [],
  offers: { vehicle: {}, replacement: [{}] },
  mayBeDriven: false,
  recallChecked: false,
  recallStop: false,
  structuralRust: 'none',
  inspectionDueMonth: 5,
  inspectionDay: '',
  inspectionFailed: false,
  lenderRequiresCover: true,
  jobs: [
    {
      name: 'head gasket',
      dangers: ['lifting', 'exhaust'],
      qualifiedOnly: false,
      saidSafe: null,
      why: '',
      quoteEnds: '',
      someoneElsePays: '',
      firstTime: true,
      alreadySpent: 85,
    },
    {
      name: 'front brakes',
      dangers: ['lifting', 'brakes'],
      qualifiedOnly: false,
      saidSafe: false,
      why: '',
      quoteEnds: '2026-12-20',
      someoneElsePays: 'recall list checked, none open',
      firstTime: false,
      alreadySpent: 0,
    },
  ],
  sunk: [{ what: "last year's tyres", amount: 420, returns: 0 }],
  replacementNames: ['2021 hatchback'],
  offerEnds: ['2026-12-15'],
  creditConfirmed: [false],
  notMoney: ['crash protection', 'the dog fits in the back'],
  private: [],
  hoursPriced: true,
  chance: {
    seed: 1,
    futures: 16384,
    correlations: [],
    looks: [],
    monthsWithoutIncome: 3,
    mayRunDry: 0.05,
    setAside: 300,
    pair: null,
  },
  twoWay: null,
  claim: null,
};

const q = (
  key: string,
  label: string,
  unit: Unit,
  value: number,
  mark: Mark,
  source: string,
  isDefault = false,
): Quantity => ({
  key,
  moves: [],
  path: key
    .replace('vehicle.sellsFor.asItStands', 'vehicle.sells_for.as_it_stands')
    .replace('household.savings', 'savings_for_this'),
  standsAt: [],
  suffix: '',
  onlyRange: false,
  label,
  unit,
  value,
  range: null,
  varies: 'once',
  min: 0,
  max: Math.max(value * 10, 1),
  step: 1,
  integer: unit === 'months',
  mark,
  known: false,
  isDefault,
  source,
  note: '',
});

export const quantities: readonly Quantity[] = [
  q(
    'household.distanceAYear',
    'distance driven a year',
    'distance a year',
    9000,
    'measured',
    'odometer, two inspections',
  ),
  q(
    'household.lookAhead',
    'how far ahead we look',
    'months',
    H,
    'table',
    'five years unless told, 2026',
    true,
  ),
  q('household.moneyEarns', 'what the money would earn elsewhere', 'rate a year', EARNS, 'guess', ''),
  q('household.priceOfOwnHour', 'price of one own hour', 'money an hour', HOUR, 'guess', ''),
  q('household.savings', 'savings for this', 'money', 2500, 'measured', 'bank, 20 November 2026'),
  q(
    'household.pricesRise.repairs',
    'yearly rise of repair prices',
    'rate a year',
    0.03,
    'table',
    'consumer price index, motor vehicle repair, 2016 to 2025',
    true,
  ),
  q('vehicle.sellsFor.asItStands', 'what the 2009 wagon sells for as it stands', 'money', 900, 'guess', ''),
  q(
    'vehicle.sellsFor.tradeIn',
    'trade-in offer, 2009 wagon',
    'money',
    600,
    'quoted',
    'dealer, 18 November 2026',
  ),
  q(
    'vehicle.cover.aYear',
    'yearly cost of insurance, 2009 wagon',
    'money a year',
    620,
    'measured',
    'last bill',
  ),
  q('vehicle.energy.economy', 'fuel economy, 2009 wagon', 'economy', 24, 'measured', 'fill-ups since May'),
  q(
    'vehicle.averageRepairs.statedAYear',
    'repairs nobody named, 2009 wagon',
    'money a year',
    1900,
    'table',
    'fleet-average repair cost by age, price year 2022',
    true,
  ),
  q('workNeeded.0.parts', 'head gasket, parts', 'money', 1240, 'quoted', 'parts counter, 22 November 2026'),
  q('workNeeded.0.hours', 'head gasket, own hours', 'hours', 22, 'guess', 'first time at this job'),
  q('workNeeded.0.shopPrice', 'head gasket, a shop', 'money', 2900, 'quoted', 'shop on the corner'),
  q('workNeeded.1.parts', 'front brakes, parts', 'money', 140, 'quoted', 'parts counter'),
  q('workNeeded.1.hours', 'front brakes, own hours', 'hours', 4, 'measured', 'done before'),
  q('workNeeded.1.shopPrice', 'front brakes, a shop', 'money', 520, 'quoted', 'shop on the corner'),
  q(
    'replacement.0.price',
    'price with all fees, 2021 hatchback',
    'money',
    13900,
    'quoted',
    'dealer, 18 November 2026',
  ),
  q(
    'replacement.0.payment.apr',
    'note rate of the loan, 2021 hatchback',
    'rate a year',
    0.089,
    'quoted',
    'dealer, 18 November 2026',
  ),
  q(
    'replacement.0.cover.aYear',
    'yearly cost of insurance, 2021 hatchback',
    'money a year',
    1080,
    'guess',
    'a friend pays this',
  ),
  q(
    'replacement.0.value.perYear',
    'yearly decline of value, 2021 hatchback',
    'share',
    0.13,
    'table',
    'asking prices by age, from memory',
    true,
  ),
];
export const quantity = (key: string): Quantity => {
  const found = quantities.find((x) => x.key === key);
  if (!found) throw new Error(`no quantity ${key}`);
  return found;
};

class Ledger {
  readonly rows: LedgerRow[] = [];
  /** Own hours turn into a shop's bill in the third reading. */
  post(
    category: Category,
    what: string,
    path: string,
    reason: string,
    month: number,
    cash: number,
    hours = 0,
    shop = cash,
  ): void {
    const at = (n: number) => ({ amount: toCents(n), present: toCents(n * v(month)) });
    const [a, b, c] = [at(cash + hours * HOUR), at(cash), at(shop)];
    this.rows.push({
      category,
      what,
      path,
      reason,
      month,
      hours,
      amount: { counted: a.amount, cash: b.amount, shop: c.amount },
      present: { counted: a.present, cash: b.present, shop: c.present },
    });
  }
}

const LOAN = { advance: 11900, note: 0.089, months: 66, payment: 230 };
const balanceAt = (m: number, months = LOAN.months): number => {
  const i = LOAN.note / 12;
  const pay = (LOAN.advance * i) / (1 - (1 + i) ** -months);
  return Math.max(0, LOAN.advance * (1 + i) ** m - (pay * ((1 + i) ** m - 1)) / i);
};
const payFor = (n: number): number => {
  const i = LOAN.note / 12;
  return (LOAN.advance * i) / (1 - (1 + i) ** -n);
};
const oldWorth = (m: number): number => Math.max(400, 500 * 0.96 ** (m / 12));
const newWorth = (m: number): number => Math.max(500, 14100 * 0.87 ** (m / 12));

const running = (
  l: Ledger,
  name: string,
  path: string,
  from: number,
  to: number,
  c: { fuel: number; cover: number; first: number; fees: number; upkeep: number; repairs: number },
): void => {
  for (let m = from; m <= to; m++) {
    l.post(
      'energy',
      `petrol, ${name}`,
      `${path}.energy.economy`,
      'a twelfth of the yearly distance at the price of that year',
      m,
      (c.fuel / 12) * level(0.02, m),
    );
    l.post(
      'scheduled upkeep',
      `oil, filters, tyres, ${name}`,
      `${path}.average_upkeep`,
      'money for each mile, own hands for the most part',
      m,
      (c.upkeep / 12) * 0.6 * level(0.03, m),
      0.4,
      (c.upkeep / 12) * level(0.03, m),
    );
    l.post(
      'repairs',
      `repairs nobody named, ${name}`,
      `${path}.average_repairs`,
      'fleet average by age',
      m,
      (c.repairs / 12) * 0.55 * level(0.03, m) * (1 + 0.06 * (m / 12)),
      0.7,
      (c.repairs / 12) * level(0.03, m) * (1 + 0.06 * (m / 12)),
    );
    if ((m - c.first) % 12 === 0 && m < to + 1) {
      l.post(
        'insurance',
        `insurance, ${name}`,
        `${path}.insurance_a_year`,
        'once a year',
        m,
        c.cover * level(0.04, m),
      );
      l.post(
        'registration, tax, inspection',
        `registration and inspection, ${name}`,
        `${path}.registration_a_year`,
        'once a year',
        m,
        c.fees * level(0.02, m),
      );
    }
  }
};
const OLD = { fuel: 1350, cover: 620, first: 12, fees: 140, upkeep: 760, repairs: 1900 };
const NEW = { fuel: 980, cover: 1080, first: 0, fees: 190, upkeep: 430, repairs: 240 };

const sum = (rows: readonly LedgerRow[], pick: (r: LedgerRow) => number): Cents =>
  rows.reduce((s, r) => s + pick(r), 0) as Cents;

const option = (
  given: Pick<OptionResult, 'id' | 'side' | 'label' | 'replacement' | 'work' | 'letGo' | 'replaceMonth'>,
  l: Ledger,
  onTheDay: number,
  valueAtEnd: number,
  owedAtEnd: number,
  hoursOnTheDay: number,
  worth: (m: number) => number,
): OptionResult => {
  if (valueAtEnd - owedAtEnd !== 0)
    l.post(
      "what we'd own at the end",
      owedAtEnd > 0 ? 'its value, less what is still owed' : 'what it would still bring',
      'look_ahead',
      'sold privately on the last day',
      H,
      owedAtEnd - valueAtEnd,
    );
  const ledger = [...l.rows].sort((a, b) => a.month - b.month);
  const npc = {
    counted: sum(ledger, (r) => r.present.counted),
    cash: sum(ledger, (r) => r.present.cash),
    shop: sum(ledger, (r) => r.present.shop),
  };
  const i = (1 + EARNS) ** (1 / 12) - 1;
  const monthly = (n: number): Cents => Math.round((n * i) / (1 - (1 + i) ** -H)) as Cents;
  const upTo = (m: number, pick: (r: LedgerRow) => number): number =>
    ledger
      .filter((r) => r.month <= m && r.category !== "what we'd own at the end")
      .reduce((s, r) => s + pick(r), 0) / 100;
  return {
    ...given,
    netPresentCost: npc,
    equivalentMonthlyCost: {
      counted: monthly(npc.counted),
      cash: monthly(npc.cash),
      shop: monthly(npc.shop),
    },
    costPerDistance: {
      counted: npc.counted / 100 / 45000,
      cash: npc.cash / 100 / 45000,
      shop: npc.shop / 100 / 45000,
    },
    cashOnTheDay: toCents(onTheDay),
    savingsAfter: toCents(2500 - onTheDay),
    savingsLowest: toCents(2500 - onTheDay),
    hours: { onTheDay: hoursOnTheDay, total: sum(ledger, (r) => r.hours) },
    valueAtEnd: toCents(valueAtEnd),
    owedAtEnd: toCents(owedAtEnd),
    ledger,
    cumulative: [0, ...months].map((m) => upTo(m, (r) => r.present.counted) - v(m) * worth(m)),
    paidOut: [0, ...months].map((m) => upTo(m, (r) => r.amount.cash)),
  };
};

const needed = (l: Ledger): void => {
  l.post(
    'work needed now',
    'head gasket, parts',
    'work_needed.0.parts',
    'done properly on the day',
    0,
    1240,
    22,
    2900,
  );
  l.post(
    'work needed now',
    'front brakes, parts',
    'work_needed.1.parts',
    'safety: before it is driven again',
    0,
    140,
    4,
    520,
  );
};

const keep = (() => {
  const l = new Ledger();
  needed(l);
  running(l, '2009 wagon', 'vehicle', 1, H, OLD);
  return option(
    {
      id: 'keep',
      side: 'keep',
      label: 'Mend it and keep it',
      replacement: null,
      work: 'mended',
      letGo: null,
      replaceMonth: null,
    },
    l,
    1380,
    oldWorth(H),
    0,
    26,
    oldWorth,
  );
})();
const patched = (() => {
  const l = new Ledger();
  l.post(
    'work needed now',
    'head gasket, sealed for a while',
    'work_needed.0.patch',
    'holds for 14 months',
    0,
    90,
    3,
    400,
  );
  l.post(
    'work needed now',
    'front brakes, parts',
    'work_needed.1.parts',
    'safety: before it is driven again',
    0,
    140,
    4,
    520,
  );
  l.post(
    'work needed now',
    'head gasket, parts',
    'work_needed.0.parts',
    'the patch has given out',
    14,
    1650,
    22,
    3000,
  );
  running(l, '2009 wagon', 'vehicle', 1, H, OLD);
  return option(
    {
      id: 'keep/patched',
      side: 'keep',
      label: 'Patch it and keep it',
      replacement: null,
      work: 'patched',
      letGo: null,
      replaceMonth: null,
    },
    l,
    230,
    oldWorth(H),
    0,
    7,
    oldWorth,
  );
})();

const buy = (
  id: string,
  label: string,
  letGo: OptionResult['letGo'],
  brings: number,
  hours: number,
  mended = false,
): OptionResult => {
  const l = new Ledger();
  if (mended) needed(l);
  l.post(
    'selling the old one',
    `2009 wagon, ${letGo}`,
    letGo === 'trade-in' ? 'vehicle.sells_for.trade_in' : 'vehicle.sells_for.as_it_stands',
    'received on the day',
    0,
    -brings,
    hours,
    -brings,
  );
  l.post('buying', 'down payment, 2021 hatchback', 'replacement.down_payment', 'cash on the day', 0, 2000);
  l.post(
    'buying',
    'inspection before buying',
    'replacement.inspection_before',
    'a used one is looked over first',
    0,
    150,
  );
  for (const m of months)
    l.post('loan', 'payment, 2021 hatchback', 'replacement.loan', '66 payments from month 1', m, payFor(66));
  l.post(
    'scheduled upkeep',
    'catch-up of the first year, 2021 hatchback',
    'replacement.catch_up',
    'tyres, brakes, fluids',
    6,
    480,
    0,
    700,
  );
  running(l, '2021 hatchback', 'replacement', 0, H, { ...NEW });
  return option(
    {
      id,
      side: 'replace',
      label,
      replacement: 0,
      work: mended ? 'mended' : 'skipped',
      letGo,
      replaceMonth: 0,
    },
    l,
    2150 - brings + (mended ? 1380 : 0) + 1080 + 190,
    newWorth(H),
    balanceAt(H),
    hours + (mended ? 26 : 0),
    (m) => newWorth(m) - balanceAt(m),
  );
};
const asItStands = buy(
  'replace/2021-hatchback/as-it-stands',
  'Sell it as it stands, take the 2021 hatchback',
  'as it stands',
  900,
  3,
);
const tradeIn = buy(
  'replace/2021-hatchback/trade-in',
  'Trade it in for the 2021 hatchback',
  'trade-in',
  600,
  0,
);
const mendSell = buy(
  'replace/2021-hatchback/mended/private',
  'Mend it, sell it, take the 2021 hatchback',
  'private',
  3400,
  8,
  true,
);

const later = (() => {
  const l = new Ledger();
  needed(l);
  running(l, '2009 wagon', 'vehicle', 1, 24, OLD);
  l.post(
    'selling the old one',
    '2009 wagon, private',
    'vehicle.sells_for.running',
    'sold in month 24',
    24,
    -oldWorth(24),
    6,
  );
  l.post(
    'buying',
    'down payment, 2021 hatchback',
    'replacement.down_payment',
    'at the price of that month',
    24,
    2150,
  );
  for (const m of months.filter((x) => x > 24))
    l.post('loan', 'payment, 2021 hatchback', 'replacement.loan', 'from the month after', m, payFor(66));
  running(l, '2021 hatchback', 'replacement', 25, H, { ...NEW, first: 25 });
  return option(
    {
      id: 'later/24/2021-hatchback',
      side: 'later',
      label: 'Keep it for 24 months, then the 2021 hatchback',
      replacement: 0,
      work: 'mended',
      letGo: 'private',
      replaceMonth: 24,
    },
    l,
    1380,
    newWorth(H - 24),
    balanceAt(H - 24),
    26,
    (m) => (m < 24 ? oldWorth(m) : newWorth(m - 24) - balanceAt(m - 24)),
  );
})();

const D = (n: number): Cents => n as Cents;
const difference = {
  counted: D(asItStands.netPresentCost.counted - keep.netPresentCost.counted),
  cash: D(asItStands.netPresentCost.cash - keep.netPresentCost.cash),
  shop: D(asItStands.netPresentCost.shop - keep.netPresentCost.shop),
};
const d = difference.counted / 100;

const tips = (key: string, slope: number, above: 'keep' | 'replace'): BreakEven => {
  const it = quantity(key);
  const at = it.value - d / slope;
  const open = at > it.min && at < it.max;
  return {
    quantity: it,
    status: open ? 'one' : 'never',
    roots: open ? [{ at, kind: 'root', distance: Math.log(at / it.value), above }] : [],
    slope,
  };
};
const nearest = ({ roots }: BreakEven): number =>
  Math.min(...roots.map(({ distance }) => Math.abs(distance ?? Number.POSITIVE_INFINITY)));
const breakEvens: readonly BreakEven[] = [
  tips('replacement.0.cover.aYear', 5.0, 'keep'),
  tips('vehicle.averageRepairs.statedAYear', -5.4, 'replace'),
  tips('replacement.0.price', 0.78, 'keep'),
  tips('workNeeded.0.hours', -HOUR, 'replace'),
  tips('household.priceOfOwnHour', -80, 'replace'),
  tips('workNeeded.0.parts', -1, 'replace'),
  tips('vehicle.cover.aYear', -4.6, 'replace'),
  tips('vehicle.sellsFor.asItStands', -1, 'replace'),
  tips('replacement.0.payment.apr', 31000, 'keep'),
  tips('household.distanceAYear', -0.06, 'replace'),
].sort((a, b) => nearest(a) - nearest(b) || 0);
const swing = (key: string, slope: number, by: number): Swing => {
  const it = quantity(key);
  const [lo, hi] = [it.value * (1 - by), it.value * (1 + by)];
  return {
    quantity: it,
    low: { value: lo, difference: d + slope * (lo - it.value) },
    high: { value: hi, difference: d + slope * (hi - it.value) },
  };
};
const swings: readonly Swing[] = [
  swing('replacement.0.price', 0.78, 0.2),
  swing('replacement.0.cover.aYear', 5.0, 0.2),
  swing('vehicle.averageRepairs.statedAYear', -5.4, 0.2),
  swing('vehicle.cover.aYear', -4.6, 0.2),
  swing('replacement.0.payment.apr', 31000, 0.2),
  swing('household.priceOfOwnHour', -80, 0.2),
  swing('workNeeded.0.parts', -1, 0.2),
  swing('household.distanceAYear', -0.06, 0.2),
  swing('vehicle.sellsFor.asItStands', -1, 0.2),
];

const schedule = (() => {
  const rows: LoanView['schedule'][number][] = [];
  const payment = toCents(payFor(66));
  let balance = toCents(LOAN.advance);
  for (let m = 1; m <= 66; m++) {
    const interest = Math.round((balance * LOAN.note) / 12) as Cents;
    const last = m === 66;
    const principal = (last ? balance : payment - interest) as Cents;
    balance = (balance - principal) as Cents;
    rows.push({ month: m, payment: (principal + interest) as Cents, interest, principal, balance });
  }
  return rows;
})();
const balance = [
  { month: 0, owed: toCents(LOAN.advance), value: toCents(newWorth(0) * 0.8) },
  ...schedule.map((r) => ({ month: r.month, owed: r.balance, value: toCents(newWorth(r.month) * 0.8) })),
];
const total = schedule.reduce((s, r) => s + r.payment, 0) as Cents;

const crossingMonth = keep.cumulative.findIndex((_, m) =>
  keep.cumulative.slice(m).every((c, i) => c < (asItStands.cumulative[m + i] as number)),
);

export const decision: Decision = {
  version: '0.1.0',
  facts,
  quantities,
  horizon: H,
  options: [keep, patched, asItStands, tradeIn, mendSell, later],
  closed: [
    {
      id: 'keep/left',
      label: 'Leave the work and keep it',
      why: 'front brakes are a safety job: left undone, it is not driven',
    },
    {
      id: 'drive-on',
      label: 'Drive on for some months while saving',
      why: 'front brakes are a safety job: left undone, it is not driven',
    },
  ],
  bestKeep: keep,
  bestReplace: asItStands,
  bestIn: {
    counted: { keep, replace: asItStands },
    cash: { keep, replace: asItStands },
    shop: { keep, replace: asItStands },
  },
  difference,
  grain: 0.5,
  verdict: {
    kind: 'keep',
    cheaper: 'keep',
    settledBy: [],
    readingsDisagree: true,
    deciding: { count: 3, guesses: 1, of: quantities.length },
  },
  crossing: crossingMonth > 0 ? { month: crossingMonth, cheaper: 'keep' } : null,
  breakEvens,
  breakEvenLine: {
    x: quantity('vehicle.averageRepairs.statedAYear'),
    y: quantity('replacement.0.price'),
    points: Array.from({ length: 31 }, (_, i) => ({
      x: i * 120,
      y: 13900 - (d - 5.4 * (i * 120 - 1900)) / 0.78,
    })),
    today: { x: 1900, y: 13900 },
    keepIs: 'above',
  },
  swings,
  ownHourTips: 68,
  doubleHours: toCents(d - 26 * HOUR),
  ifNotCured: toCents(d - 900),
  shopFrom: [
    { month: 0, difference: difference.shop },
    { month: 24, difference: toCents(d - 3900) },
  ],
  atLoanRate: { rate: 0.089, difference: toCents(d + 300) },
  leases: [],
  payments: [
    {
      replacement: 0,
      name: '2021 hatchback',
      amountFinanced: toCents(LOAN.advance),
      payment: toCents(payFor(66)),
      months: 66,
      noteRate: LOAN.note,
      apr: 0.0937,
      totalOfPayments: total,
      interest: (total - toCents(LOAN.advance)) as Cents,
      balance,
      monthsUnderWater: balance.filter((b) => b.owed > b.value).length,
      owedAtHorizon: toCents(balanceAt(H)),
      longer: { months: 78, payment: toCents(payFor(78)), totalOfPayments: toCents(payFor(78) * 78) },
      lowRateOrRebate: null,
      schedule,
    },
  ],
  replaceLater: [
    (() => {
      const now = asItStands.netPresentCost.counted / 100;
      const never = keep.netPresentCost.counted / 100;
      const curve = Array.from({ length: H + 1 }, (_, k) => ({
        month: k,
        netPresentCost:
          k === 0
            ? now
            : k === H
              ? never
              : never +
                (now - never) * (1 - k / H) ** 1.4 +
                900 * Math.exp(-k / 4) +
                Math.max(0, k - 48) * 12,
      }));
      return {
        replacement: 0,
        name: '2021 hatchback',
        curve,
        best: curve.reduce((a, b) => (b.netPresentCost < a.netPresentCost ? b : a)),
      };
    })(),
  ],
  economicLife: (() => {
    const curve = months.map((n) => ({ months: n, averageCost: 255 + 900 / n + n * 0.55 }));
    return {
      name: '2009 wagon',
      curve,
      best: curve.reduce((a, b) => (b.averageCost < a.averageCost ? b : a)),
    };
  })(),
  sunk: { spent: toCents(505), returns: toCents(0) },
  cautions: facts.jobs.map((j) => ({ job: j.name, dangers: j.dangers })),
  work: facts.jobs.map((j) => ({
    job: j.name,
    mayBeDriven: 'to_the_shop',
    safety: j.saidSafe === false ? 'yes' : 'not said',
    why: j.why,
    qualifiedOnly: j.qualifiedOnly,
  })),
  notices: [
    {
      kind: 'unsafe',
      place: 'first',
      text: "Don't drive it until the front brakes are done ($140 in parts).",
      cost: null,
    },
    {
      kind: 'recall',
      place: 'work',
      text: "Check the maker's recall list today; the remedy is free.",
      cost: null,
    },
    {
      kind: 'credit',
      place: 'payment',
      text: 'Only if the loan is granted: nobody has confirmed it yet.',
      cost: null,
    },
    {
      kind: 'optimist',
      place: 'change',
      text: 'A first time at a job takes 1.5 to 2 times the hours in the book (common practice, no source).',
      cost: null,
    },
    {
      kind: 'insurance',
      place: 'assumptions',
      text: 'Get two insurance quotes first; the figure for the hatchback is a guess.',
      cost: null,
    },
    {
      kind: 'sunk',
      place: 'answer',
      text: 'Already spent and not counted: $505. From here on, only what is still to come counts.',
      cost: null,
    },
    {
      kind: 'income',
      place: 'payment',
      text: 'Three months without income would take $920 in payments.',
      cost: null,
    },
  ],
  chances: null,
  walkAway: null,
  claim: null,
  cover: null,
};

/** The scenario text embedded with it: short, and awkward on purpose. */
export const scenarioText = `# An invented household.
miles_a_year: 9000
vehicle:
  what: 2009 wagon   # "quoted" & <angled>
`;
