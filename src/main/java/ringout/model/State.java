package ringout.model;

import java.util.List;
import ringout.text.Span;

/** Which plugs and switches are made. */
public record State(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name of the state") String name,
        @Doc("units taken off") List<String> absent,
        @Doc("plugs pulled") List<String> pulled,
        @Doc("switches and isolators open") List<String> open,
        @Doc("sources that are off") List<String> off,
        @Doc("settings that differ") List<StateSetting> settings,
        @Doc("on the bench, not flown") Datum<Boolean> bench,
        @Doc("free remark") Datum<String> note) {}
