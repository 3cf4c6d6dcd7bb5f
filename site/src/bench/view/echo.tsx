import type { JSX } from 'preact';
import type { Offer, Reading } from '../state/read/types.js';

/** Under a field: what was understood, or why it was not, with a button for what may be meant. */
export function Echo(props: {
  readonly id: string;
  readonly reading: Reading<unknown>;
  /** What stands there while the field is empty. */
  readonly idle?: string | undefined;
  readonly onOffer: (offer: Offer) => void;
}): JSX.Element {
  const { id, reading, idle = '', onOffer } = props;
  const isUnread = reading.kind === 'unread';
  const text = reading.kind === 'read' ? reading.echo : isUnread ? reading.reason : idle;
  const offers = reading.kind === 'empty' ? [] : reading.offers;
  return (
    <div class={isUnread ? 'echo unread' : 'echo'}>
      <span id={id}>{text}</span>
      {offers.map((offer) => (
        <button type="button" class="offer" key={offer.text} onClick={() => onOffer(offer)}>
          {offer.label}
        </button>
      ))}
    </div>
  );
}
