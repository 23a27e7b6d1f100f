package ringout.draw.card;

import ringout.draw.paper.Point;

/**
 * A card and where it stands.
 *
 * @param card the card
 * @param corner its upper left corner on the sheet
 */
record CardSpot(Card card, Point corner) {}
