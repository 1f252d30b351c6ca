import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { helpText } from '../../src/terminal/help.ts';
import { RULES } from './rules.ts';

const text = (path: string): string => readFileSync(path, 'utf8');
const manifest: {
  readonly scripts: Record<string, string>;
  readonly devDependencies: Record<string, string>;
  readonly dependencies?: Record<string, string>;
} = JSON.parse(text('package.json'));

const DOCUMENTS = ['README.md', 'DEVELOPERS.md'];
const found = (document: string, pattern: RegExp): string[] =>
  [...text(document).matchAll(pattern)].map((match) => match[1] ?? '');

describe.each(DOCUMENTS)('%s', (document) => {
  it('links only to what is there', () => {
    const links = found(document, /\]\(([^)#]+)[^)]*\)/g).filter((link) => !link.startsWith('http'));
    expect(links.length).toBeGreaterThan(0);
    expect(links.filter((link) => !existsSync(link))).toEqual([]);
  });

  it('names only paths that exist', () => {
    const paths = found(document, /`((?:src|tests|scripts|scenarios)\/[\w./-]+)`/g);
    expect(paths.filter((path) => !existsSync(path))).toEqual([]);
  });

  it('names only scripts that exist', () => {
    const named = found(document, /npm run ([\w:-]+)/g);
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((name) => !(name in manifest.scripts))).toEqual([]);
  });
});

describe('the README', () => {
  it('tells of every command and option the help tells of', () => {
    const told = helpText('1.2.3').match(/stillworth (?!\d)[\w-]+|--[a-z]+/g) ?? [];
    expect(told.length).toBeGreaterThan(8);
    expect([...new Set(told)].filter((word) => !text('README.md').includes(word))).toEqual([]);
  });
});

describe('the scenarios in the README', () => {
  const [whole = '', number = '', changes = '', hidden = ''] = found('README.md', /```yaml\n([\s\S]*?)```/g);
  const problems = (scenario: string): unknown => {
    const parsed = parseScenario(scenario, { file: 'README.md', today: '2026-11-25' });
    return 'problems' in parsed ? parsed.problems : [];
  };

  it('are in order', () => {
    expect(whole).toContain('work_needed:');
    expect(problems(whole)).toEqual([]);
    expect(problems(whole.replace(/ {2}insurance_a_year: 1350\n/, number))).toEqual([]);
    expect(changes).toContain('changes:');
    expect(problems(whole.replace(/ {2}insurance_a_year: 1350\n/, changes))).toEqual([]);
    expect(problems(`${whole}household: { partner: Odile }\n${hidden}`)).toEqual([]);
  });

  it('fit into twenty lines', () => {
    expect(whole.trimEnd().split('\n').length).toBeLessThanOrEqual(20);
  });
});

describe('DEVELOPERS.md', () => {
  it('tells of every folder of the source and the tests, and every top-level one', () => {
    const folders = ['src', 'src/engine', 'src/engine/scenario', 'src/engine/plans', 'tests', '.'].flatMap(
      (parent) =>
        readdirSync(parent, { withFileTypes: true })
          .filter((entry) => entry.isDirectory() && !/^(\.git|node_modules|dist|demo)$/.test(entry.name))
          .map((entry) => entry.name),
    );
    expect(folders.filter((name) => !text('DEVELOPERS.md').includes(name))).toEqual([]);
  });

  it('says why each package is here', () => {
    const packages = Object.keys(manifest.devDependencies);
    expect(packages.filter((name) => !text('DEVELOPERS.md').includes(name))).toEqual([]);
  });
});

describe('the packages', () => {
  it('are pinned, bundled, and at home somewhere or only tools', () => {
    expect(manifest.dependencies).toBeUndefined();
    for (const [name, version] of Object.entries(manifest.devDependencies)) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
    }
    expect(Object.keys(RULES.homes).filter((name) => !(name in manifest.devDependencies))).toEqual([]);
  });

  it('are locked without the address of any registry', () => {
    expect(text('package-lock.json')).not.toMatch(/"resolved": *"http/);
  });
});
