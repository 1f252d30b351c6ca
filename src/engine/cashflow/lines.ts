import { remember } from '../quantity/remember.ts';
import type { Category, Line, Role } from './posting.ts';

/**
 * A line of what goes by one name in the scenario.
 *
 * @param at where it stands below that name's path
 * @param nth its place, where it stands in a list
 */
export type LineOf = (
  category: Category,
  what: string,
  at: string,
  reason: string,
  nth?: number,
  role?: Role,
) => Line;

interface Kept {
  readonly what: string;
  readonly at: string;
  readonly nth: number | undefined;
  readonly line: Line;
}

/**
 * The lines of one vehicle: "energy, the wagon" from "vehicle.fuel". Asked again they are the very same: their words are
 * not joined anew in every future.
 */
export const linesOf = remember(
  (name: string, path: string): LineOf => {
    const kept: Kept[] = [];
    // One future asks for them in the order that the one before did: the next one wanted comes after the last one found.
    let next = 0;
    return (category, what, at, reason, nth, role) => {
      for (let looked = 0; looked < kept.length; looked++) {
        const one = kept[next] as Kept;
        next = next + 1 < kept.length ? next + 1 : 0;
        if (
          one.what === what &&
          one.at === at &&
          one.nth === nth &&
          one.line.reason === reason &&
          one.line.category === category &&
          one.line.role === role
        )
          return one.line;
      }
      const place = nth === undefined ? at : `${at}[${nth}]`;
      const words = { category, what: `${what}, ${name}`, path: `${path}.${place}`, reason };
      const line: Line = role === undefined ? words : { ...words, role };
      kept.push({ what, at, nth, line });
      return line;
    };
  },
  (a, b) => a[0] === b[0] && a[1] === b[1],
);
