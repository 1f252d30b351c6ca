import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { embeddedScenario, embedScenario, generator, isOurReport } from '../../src/report/embed.ts';
import { scenarioText } from './fixture.ts';
import { read, render } from './page.ts';

const wrapped = (scenario: string): string =>
  `<!doctype html><html><head><meta name="generator" content="${generator('1.0.0')}"></head><body>${embedScenario(scenario).markup}</body></html>`;

describe('the scenario inside a report', () => {
  it('comes back character for character', () => {
    expect(embeddedScenario(render())).toBe(scenarioText);
  });

  it.each([
    '',
    '\n\nleading lines',
    'a: "&lt;pre&gt;" # &amp;#13;',
    'line\r\nline\r\n',
    '</pre><script>alert(1)</script>',
    '<pre id="scenario" tabindex="0">\nnested',
    'nul \0 and \u202e turned',
  ])('comes back even when it is awkward: %j', (scenario) => {
    expect(embeddedScenario(wrapped(scenario))).toBe(scenario);
    expect(embeddedScenario(render(undefined, scenario))).toBe(scenario);
  });

  it('comes back whatever it is', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary' }),
        (scenario) => embeddedScenario(wrapped(scenario)) === scenario,
      ),
    );
    fc.assert(
      fc.property(
        fc.string({
          unit: fc.constantFrom('&', '<', '>', '#', '1', '3', '0', ';', 'amp', 'lt', '\r', '\n', '\0'),
        }),
        (scenario) => embeddedScenario(wrapped(scenario)) === scenario,
      ),
    );
  });

  it('can be read on the page, and nothing in it is alive', () => {
    const page = read(render(undefined, 'a: <script>alert(1)</script>'));
    expect(page.querySelector('#scenario')?.textContent.trim()).toBe('a: <script>alert(1)</script>');
    expect(page.querySelector('script')).toBeNull();
  });
});

describe('knowing our own', () => {
  it('knows a report of ours', () => {
    expect(isOurReport(render())).toBe(true);
  });

  it.each([
    '',
    '<html><head></head></html>',
    '<html><head><meta name="generator" content="another 1.0"></head></html>',
    // A page that only talks about one of ours, after its head.
    '<html><head></head><body><meta name="generator" content="stillworth 1.0"></body></html>',
    scenarioText,
  ])('knows what is not: %j', (file) => {
    expect(isOurReport(file)).toBe(false);
    expect(embeddedScenario(file)).toBeNull();
  });

  it('lets no version break out of its place', () => {
    expect(generator('1.0.0"><script>')).toBe('stillworth 1.0.0script');
  });
});
