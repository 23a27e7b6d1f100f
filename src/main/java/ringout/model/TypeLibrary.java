package ringout.model;

import java.util.List;
import ringout.text.Span;

/** Unit types that several aircraft share. */
public record TypeLibrary(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name of the library") Datum<String> name,
        @Doc("free remark") Datum<String> note,
        @Doc("unit types, in the order of the file") List<UnitType> types) {}
