package ringout.model;

import java.util.List;
import ringout.text.Span;

/** What was written on the pages of one aircraft, taken back as a file. */
public record TakenFile(
        @Doc("where it stands in the user's file") Span at,

        @Doc("name or short designation of the aircraft, as on the page")
        String aircraft,

        @Doc("hash of the list the pages were made from; the first eight digits are enough")
        Datum<String> hash,

        @Doc("tail, when the page names one") Datum<String> tail,
        @Doc("what was written, in its order") List<TakenEntry> entries) {}
