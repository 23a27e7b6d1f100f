package ringout.model;

import ringout.text.Span;

/** What another tail of the fleet is known by on its links. */
public record FleetTail(
        @Doc("where it stands in the user's file") Span at,
        @Doc("tail") String tail,
        @Doc("telemetry network id") Datum<String> networkId,
        @Doc("system id") Datum<String> systemId,
        @Doc("command link binding") Datum<String> binding) {}
