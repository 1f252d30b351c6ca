import { describe, expect, it } from 'vitest';
import { html, join, raw } from '../../src/report/markup/html.ts';

describe('markup', () => {
  it('escapes whatever is put into it', () => {
    expect(html`<p title="${`"'`}">${'<img src=x onerror=alert(1)> & more'}</p>`.markup).toBe(
      '<p title="&quot;&#39;">&lt;img src=x onerror=alert(1)&gt; &amp; more</p>',
    );
  });

  it('leaves markup as it is, and prints nothing for nothing', () => {
    expect(html`${raw('<b>x</b>')}${null}${undefined}${false}${0}${[1, html`<i></i>`]}`.markup).toBe(
      '<b>x</b>01<i></i>',
    );
  });

  it('puts something between', () => {
    expect(join(['a', '<'], html`<br>`).markup).toBe('a<br>&lt;');
  });

  it('drops what turns the direction of text, and what no one can see', () => {
    expect(html`${'a\u202eb\u2066c\u0000d\u0007e'}`.markup).toBe('abcde');
  });
});
