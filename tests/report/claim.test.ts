import { describe, expect, it } from 'vitest';
import { answerLines } from '../../src/report/answerLines.ts';
import { decisionJson } from '../../src/report/exports/json.ts';
import { happenedSentence } from '../../src/report/words/claim/courses.ts';
import { afterCollision, claimFacts } from './claims.ts';
import { decision } from './fixture.ts';
import { read, render } from './page.ts';

const page = render(afterCollision);
const part = (id: string, of = page): string =>
  (read(of).querySelector(`#${id}`)?.textContent ?? '').replace(/\s+/g, ' ');

describe('a report without a collision', () => {
  it('has none of the chapters', () => {
    const body = read(render(decision));
    for (const id of ['insurers-money', 'offer', 'before-signing', 'cover'])
      expect(body.querySelector(`#${id}`)).toBeNull();
    expect(decisionJson(decision)).toMatchObject({ claim: null, cover: null });
    expect(answerLines(decision).join(' ')).not.toContain('collision');
  });
});

describe("what the insurer's money can do", () => {
  const words = part('insurers-money');

  it('says what happened and when', () => {
    expect(words).toContain(happenedSentence(claimFacts));
    expect(happenedSentence({ ...claimFacts, what: 'Parked; a cart hit it.', happened: '2026-11-12' })).toBe(
      'Parked; a cart hit it, on 12 November 2026.',
    );
    expect(happenedSentence({ ...claimFacts, what: 'a cart hit it', happened: '' })).toBe('A cart hit it.');
  });

  it('says first who pays, then what costs least and what is in hand', () => {
    expect(words).toContain('Your own insurer pays, less your share of the bill (the Harrow Mutual).');
    expect(words).toContain(
      "Cheapest: take the money and mend it at home. That costs about $9,100 over five years, in today's money, with $1,840 in hand the day it is settled.",
    );
  });

  it('tells what is closed, and why, before any picture', () => {
    expect(words).toContain('One way is closed to you.');
    expect(
      words.indexOf('Total loss, kept and rebuilt. The repair stays below the line of Harrowmere (70%).'),
    ).toBeLessThan(words.indexOf('Cheapest, and most in hand that day'));
    expect(words).toContain(
      'Total loss, kept and rebuilt. The repair stays below the line of Harrowmere (70%).',
    );
  });

  it('shows each way with cash, hours, cost and how often it is cheapest, and no bare minus', () => {
    const rows = [
      ...(read(page).querySelector('#insurers-money')?.querySelectorAll('table.ways tbody tr') ?? []),
    ];
    expect(rows.map((row) => row.textContent.replace(/\s+/g, ' '))).toEqual([
      'Take the money and mend it at home$1,8401½ weekends$9,100',
      'Make no claim$260 to paynone$9,900',
    ]);
    expect(words).not.toContain('\u2212$');
  });

  it('names what is ruled out, the risks, and where it tips', () => {
    expect(words).toContain(
      'What is not repaired comes off a later claim. Take the money and mend it at home.',
    );
    expect(words).toContain('More damage may show once it is opened.');
    expect(words).toContain('Own hours, about 41 hours (3½ weekends): own hours, a shop is as good.');
    expect(words).toContain('The bid for the wreck: no bid for the wreck matters');
  });

  it('says what was not told of the money around it', () => {
    expect(words).toContain('The lender. The credit union is paid first.');
    expect(words).toContain('What a total loss leaves owing to the lender is then yours to pay.');
  });

  it('takes care where it is about to be done', () => {
    for (const said of [
      'qualified look',
      'supplied air',
      'No welding near fuel',
      'Never fit used airbags or belts',
    ])
      expect(words).toContain(said);
  });
});

describe('the offer, line by line', () => {
  const words = part('offer');

  it('adds up to the cent', () => {
    expect(words).toContain('One in Eastbury6,400.00170,000\u221256.000.006,344.00');
    expect(words).toContain('Their average6,200.00');
    expect(words).toContain('The estimate3,100.00');
    expect(words).toContain("The part they won't pay because it's newer than yours\u221240.00");
    expect(words).toContain('The insurer pays2,560.00');
    expect(words).toContain('Or, as the rule may also be read2,600.00');
    expect(words).toContain('Of it to the lender2,000.00 Of it to you560.00 Still owed to the lender0.00');
  });

  it('holds the repair against the place, with its source, and says what is to be checked', () => {
    expect(words).toContain('A total loss when the repair comes to 70% of what it was worth (or more).');
    expect(words).toContain('a chart of adjusters (from a chart that names the law): check this');
    expect(words).toContain(
      'A repair of 4,340.00 or more would surely be one: up to 1,148.00 more may be found, before tax, and it still is none.',
    );
    expect(words).toContain('Local law and the policy decide');
  });

  it('says which line is not paid in full, and how to answer', () => {
    expect(words).toContain('a new part takes the place of a worn one: 40.00 of "tailgate".');
    expect(words).toContain('Ask which age and wear they counted');
  });

  it('says the lender is paid first', () => {
    expect(words).toContain('The credit union is paid first. It wants the vehicle repaired.');
  });
});

describe('what to ask before signing', () => {
  it('asks what cannot be undone', () => {
    const words = part('before-signing');
    for (const said of [
      'close the claim?',
      'May a supplement be claimed',
      'must not give up a claim for an injury',
      'What will be written on its papers',
      'until which day?',
      'Is the tax in it',
      'Tell the insurer the truth',
      'may break the law',
      'must be told to whoever buys or insures it',
      'Not legal, tax or insurance advice',
      '11 December 2026',
      '2 December 2026',
      'Lost market value and the days without it, if the release covers them',
      'A claim for an injury, if the release says "all claims"',
      'The damage itself, for a later claim',
      'a release given to the other side may stop your insurer from getting it back',
      'A cheque that names the lender too',
      'The claim, if it is not made or answered in time.',
      'What else should be asked of the Harrow Mutual?',
    ])
      expect(words).toContain(said);
  });

  it('says it louder where somebody was hurt', () => {
    const hurt = {
      ...afterCollision,
      facts: { ...afterCollision.facts, claim: { ...claimFacts, injured: true } },
    };
    expect(part('before-signing', render(hurt))).toContain('Somebody was hurt: sign no release');
  });
});

describe('cover on an old vehicle', () => {
  it('is told by average and by what can be borne', () => {
    const words = part('cover');
    expect(words).toContain('Collision cover costs about $110 a year more than going without, on average');
    expect(words).toContain('leaves $2,100 of the savings with it, $3,300 less than nothing without.');
    expect(words).toContain('Going without is closed to you: the lender requires it.');
    expect(words).toContain('7 losses in a hundred years');
  });
});

describe('elsewhere', () => {
  it('stands in the JSON as decimal strings', () => {
    expect(decisionJson(afterCollision)).toMatchObject({
      claim: {
        payer: 'own',
        value: '6200.00',
        threshold: { status: 'repair', from: '4340.00' },
        courses: [
          { statement: null },
          { inHand: '1840.00', statement: { payment: '2560.00' }, split: { lender: '2000.00' } },
        ],
        closed: [{ id: 'rebuild' }],
      },
      cover: { mustKeep: 'the lender requires it' },
    });
  });

  it('has a line in the terminal', () => {
    expect(answerLines(afterCollision)).toContainEqual(
      expect.stringMatching(
        /^Cheapest after the collision: take the money and mend it at home, with \$1,840 in hand/,
      ),
    );
  });
});
