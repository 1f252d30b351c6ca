import type { Replacement } from '../../scenario/inputs/inputs.ts';
import { type Content, contentOf, inOrder } from './contents.ts';
import type { Context } from './context.ts';
import { LIKE_OURS } from './likeOurs.ts';

const said = (offer: Replacement): Content =>
  contentOf(
    offer,
    '',
    () => null,
    () => null,
  );

/**
 * What is bought where its papers are refused: of the replacements the file names the cheapest to buy, of equals by what is
 * said of them and not by their names; another one like ours where it names none; null where there is neither. One that is
 * cheap to buy and dear to run is no answer to that, so it is not asked for its price.
 */
export const nextAfterEnd = ({ inputs }: Context): number | null => {
  const { replacement, anotherLikeOurs } = inputs;
  if (replacement.length === 0) return anotherLikeOurs === null ? null : LIKE_OURS;
  // Of one there is no choice, whatever it costs.
  if (replacement.length === 1) return 0;
  const [cheapest] = replacement
    .map((offer, index) => ({ index, offer }))
    .sort((a, b) => a.offer.price - b.offer.price || inOrder(said(a.offer), said(b.offer)));
  return cheapest?.index ?? null;
};
