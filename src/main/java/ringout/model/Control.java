package ringout.model;

import ringout.text.Span;

/** Something on a unit that a hand must set, press or fill: a bind button, a card slot, a selector. */
public record Control(
        @Doc("where it stands in the user's file") Span at,

        @Doc("button, slot or selector: bind button, card slot")
        String name,

        @Doc("where on the unit it is") Datum<String> place,
        @Doc("can be done over the link instead") Datum<Boolean> setOnLink) {}
