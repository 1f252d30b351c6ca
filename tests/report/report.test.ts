import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import type { Decision } from '../../src/engine/answer/decision.ts';
import type { Cents } from '../../src/engine/quantity/money.ts';
import { noticesAt } from '../../src/report/words/facts.ts';
import { decision, facts } from './fixture.ts';
import { read, render, text } from './page.ts';

const page = render();
const body = read(page);
const all = (selector: string): ReturnType<typeof Array.from<ReturnType<typeof read>>> => [
  ...body.querySelectorAll(selector),
];

describe('the page', () => {
  it('is the same, byte for byte, whenever it is made', () => {
    expect(render() === page).toBe(true);
  });

  it('is small', () => {
    expect(gzipSync(page, { level: 9 }).length).toBeLessThan(60_000);
  });

  it('has one outline: one title, questions below it, nothing skipped', () => {
    const levels = all('h1, h2, h3').map((h) => Number(h.tagName.slice(1)));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, i) => {
      expect(level).toBeLessThanOrEqual((levels[i - 1] ?? 0) + 1);
    });
    for (const question of all('h2')) expect(question.textContent).toMatch(/\?$/);
  });

  it('says safety before any amount of money', () => {
    const words = text(page);
    expect(words.indexOf("Don't drive it")).toBeGreaterThan(-1);
    expect(words.indexOf("Don't drive it")).toBeLessThan(words.indexOf('about $3,800'));
  });

  it('gives the three numbers a tired person looks for', () => {
    expect(body.querySelector('.three')?.textContent.replace(/\s+/g, ' ')).toMatch(
      /How much less\$3,800.*A month\$70.*Savings left the day after\$1,100 kept.*none, \$150 borrowed handed on/,
    );
  });

  it('places each notice where it belongs', () => {
    const places = {
      first: '.first',
      answer: '#answer',
      assumptions: '#assumed',
      payment: '#payment',
      work: '#work',
      change: '#change',
      method: '#method',
    };
    for (const notice of decision.notices) {
      const said = noticesAt({ ...decision, notices: [notice] }, notice.place);
      expect(said, notice.kind).toHaveLength(1);
      expect(body.querySelector(places[notice.place])?.textContent, notice.kind).toContain(said[0]);
    }
  });

  it('puts cautions beside the job they belong to', () => {
    const [first, second] = all('#work ul.care').map((ul) => ul.textContent);
    expect(first).toMatch(/^Lifting/);
    expect(second).toMatch(/^Brakes.*Lifting/);
  });

  it('says own hours to the tenth, whatever the average of their range is', () => {
    const quantities = decision.quantities.map((q) =>
      q.key === 'workNeeded.0.hours' ? { ...q, value: 9.93472 } : q,
    );
    expect(text(render({ ...decision, quantities }))).toContain('9.9 own hours (');
  });

  it('says whose every number is', () => {
    const rows = all('#assumed details tbody tr');
    expect(rows).toHaveLength(decision.quantities.length);
    for (const row of rows)
      expect(row.textContent).toMatch(/quoted|measured|our guess|our choice|from a table/);
  });

  it('uses one word for a way, and never the words of the engine', () => {
    expect(text(page)).not.toMatch(
      /\boptions?\b|\bplans?\b|\bNPC\b|net present|discount rate|break-even|horizon|ledger\b/i,
    );
  });

  it('shows no bare minus outside tables and pictures', () => {
    for (const p of all('p, figcaption, .note, .three')) expect(p.textContent).not.toMatch(/[\u2212-]\$/);
  });

  it('gives every picture a name, a description and an id of its own', () => {
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map((m) => m[1]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const svg of all('figure svg')) {
      expect(svg.getAttribute('role')).toBe('img');
      const [name, told] = ['aria-labelledby', 'aria-describedby'].map((a) =>
        body.querySelector(`#${svg.getAttribute(a)}`),
      );
      expect(name?.textContent).toMatch(/\w{3}/);
      expect(told?.textContent).toMatch(/\d/);
    }
    expect(/<g[^>]* aria-label=/.test(page)).toBe(false);
  });

  it('refers to nothing it does not hold', () => {
    for (const [, id] of page.matchAll(/url\(#([^)]+)\)|href="#([^"]+)"/g))
      if (id) expect(page).toContain(` id="${id}"`);
    for (const link of all('nav a'))
      expect(body.querySelector(link.getAttribute('href') ?? '')).not.toBeNull();
  });

  it('adds up: by year, by line and by posting, each total the sum of what stands above it', () => {
    const cents = (words: string): number =>
      Math.round(Number(words.replaceAll(',', '').replace('\u2212', '-')) * 100);
    const column = (table: ReturnType<typeof read>, part: string): string[] =>
      [...table.querySelectorAll(`${part} tr`)].map(
        (row) => [...row.querySelectorAll('td')].at(-1)?.textContent ?? '',
      );
    const sum = (amounts: readonly string[]): number =>
      amounts.reduce((total, words) => total + cents(words), 0);
    const tables = all('#arithmetic table.ledger');
    const ways = [decision.bestKeep, decision.bestReplace];
    expect(tables).toHaveLength(6);
    tables.forEach((table, i) => {
      const cost = ways[Math.floor(i / 3)]?.netPresentCost.counted;
      expect(sum(column(table, 'tbody'))).toBe(cost);
      if (i % 3 !== 1) expect(sum(column(table, 'tfoot'))).toBe(cost);
    });
    expect(body.querySelector('#arithmetic p')?.textContent).toContain(
      '20,977.42 and 24,804.10, which is 3,826.68 apart',
    );
  });

  it('keeps network and foreign script out', () => {
    expect(page).toContain(
      `content="default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'"`,
    );
    expect(page).not.toMatch(
      /<script|<link|<iframe|<img|<object|<form|\son\w+=|javascript:|@import|url\((?!#)/i,
    );
    expect(page.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:\/\//);
  });
});

describe('a decision of another shape', () => {
  const only = (d: Partial<Decision>): string => render({ ...decision, ...d });

  it('is a page with one side only', () => {
    const words = text(
      only({
        bestReplace: null,
        difference: null,
        crossing: null,
        payments: [],
        replaceLater: [],
        breakEvens: [],
        swings: [],
        breakEvenLine: null,
        verdict: { ...decision.verdict, kind: 'keepOnly' },
      }),
    );
    expect(words).toContain('Keeping the 2009 wagon is the only way open');
    expect(words).toContain('None of the ways brings a loan');
  });

  it('is a page with no way at all, which says what closes each', () => {
    const words = text(
      only({
        options: [],
        bestKeep: null,
        bestReplace: null,
        difference: null,
        crossing: null,
        payments: [],
        replaceLater: [],
        breakEvens: [],
        swings: [],
        breakEvenLine: null,
        ownHourTips: null,
        doubleHours: null,
        ifNotCured: null,
        shopFrom: [],
        atLoanRate: null,
        verdict: { ...decision.verdict, kind: 'none' },
      }),
    );
    expect(words).toContain('No way is open');
    for (const way of decision.closed) expect(words).toContain(way.why);
  });

  it('is a page when it is cheaper to hand it on, by little, over one month', () => {
    const words = text(
      only({
        horizon: 1,
        difference: { counted: -300 as Cents, cash: -200 as Cents, shop: -100 as Cents },
        crossing: { month: 1, cheaper: 'replace' },
        verdict: { ...decision.verdict, kind: 'replace', cheaper: 'replace', readingsDisagree: false },
      }),
    );
    expect(words).toContain('Handing it on for the 2021 hatchback costs about $3 less over 1 month');
  });
});

describe('whatever a scenario says', () => {
  const nasty = [
    '</script><script>alert(1)</script>',
    '<img src=x onerror=alert(1)>',
    '"><svg onload=alert(1)>',
    "' onmouseover='alert(1)",
    '\u202egnidliub\u2066',
    `${'Donaudampfschifffahrt'.repeat(12)}`,
    '</style></title></pre></textarea>',
    '{{constructor}} $& $1 $`',
  ];

  it.each(nasty)('is text and nothing else: %s', (words) => {
    const named: Decision = {
      ...decision,
      facts: {
        ...facts,
        title: words,
        mechanic: words,
        partner: words,
        vehicleName: words,
        replacementNames: [words],
        notMoney: [words],
        note: words,
        jobs: facts.jobs.map((j) => ({ ...j, name: words, someoneElsePays: words, quoteEnds: words })),
      },
      quantities: decision.quantities.map((q) => ({ ...q, label: words, source: words, note: words })),
      options: decision.options.map((o) => ({ ...o, label: words })),
      bestKeep: decision.bestKeep && {
        ...decision.bestKeep,
        label: words,
        ledger: decision.bestKeep.ledger.map((r) => ({ ...r, what: words, path: words, reason: words })),
      },
      closed: [{ id: words, label: words, why: words }],
      payments: decision.payments.map((p) => ({ ...p, name: words })),
      breakEvens: decision.breakEvens.map((b) => ({ ...b, quantity: { ...b.quantity, label: words } })),
      swings: decision.swings.map((s) => ({ ...s, quantity: { ...s.quantity, label: words } })),
      cautions: [{ job: words, dangers: ['lifting'] }],
      notices: [{ kind: 'x', place: 'first', text: words, cost: null }],
    };
    const hostile = render(named, words);
    const parsed = read(hostile);
    expect([
      ...parsed.querySelectorAll('script, img, iframe, [onerror], [onload], [onmouseover], textarea'),
    ]).toEqual([]);
    expect([...parsed.querySelectorAll('style')]).toHaveLength(1);
    const visible = words.replace(/[\u202e\u2066]/g, '');
    expect(parsed.querySelector('h1')?.textContent).toBe(visible);
    expect(/[\u202e\u2066]/.test(hostile.replace(/<pre[\s\S]*<\/pre>/, ''))).toBe(false);
  });
});
