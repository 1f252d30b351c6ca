import { expect, it } from 'vitest';
import { meantComponent } from '../../src/terminal/component.ts';

const NAMES = ['Gearbox', 'water pump', 'wheel bearing, front', 'water hose'];
const ALL = 'There are "Gearbox", "water pump", "wheel bearing, front", "water hose", "anything else".';

it.each([
  ['gearbox', 'Gearbox'],
  ['GEAR', 'Gearbox'],
  ['water-pump', 'water pump'],
  ['Water  P', 'water pump'],
  ['wh', 'wheel bearing, front'],
  ['anything else', null],
  ['any', null],
  ['Other', null],
])('"%s" means %s', (typed, name) => {
  expect(meantComponent(typed, NAMES)).toEqual({ name });
});

it.each([
  ['w', '"w" may be "water pump" or "wheel bearing, front" or "water hose".'],
  ['water', '"water" may be "water pump" or "water hose".'],
  ['gaerbox', `The scenario has no component "gaerbox". Did you mean "Gearbox"? ${ALL}`],
  ['turbine', `The scenario has no component "turbine". ${ALL}`],
  ['', `The scenario has no component "". ${ALL}`],
])('"%s" is told', (typed, told) => {
  expect(meantComponent(typed, NAMES)).toEqual({ told });
});

it('takes a name for a name, whatever else begins with it', () => {
  expect(meantComponent('pump', ['pump belt', 'pump'])).toEqual({ name: 'pump' });
  expect(meantComponent('other', ['Other'])).toEqual({ name: 'Other' });
  expect(meantComponent('gearbox', [])).toEqual({
    told: 'The scenario has no component "gearbox". It names none: say "anything else".',
  });
});

it('knows a private name, and tells the one that is shown', () => {
  const renamed = new Map([["Odile's pump", 'part 2']]);
  const meant = (typed: string) => meantComponent(typed, ['gearbox', 'part 2'], renamed);
  for (const typed of ["odile's PUMP", 'odile', 'part 2']) expect(meant(typed)).toEqual({ name: 'part 2' });
  expect(meant('turbine')).toEqual({
    told: 'The scenario has no component "turbine". There are "gearbox", "part 2", "anything else".',
  });
});
