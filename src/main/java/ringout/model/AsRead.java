package ringout.model;

import ringout.text.Span;

/** What a unit reported when it was read. */
public record AsRead(
        @Doc("where it stands in the user's file") Span at,
        @Doc("address as read") Datum<Integer> address,
        @Doc("firmware as read") Datum<String> firmware,
        @Doc("serial number as read") Datum<String> serial,
        @Doc("date of the reading") Datum<String> date) {}
