package ringout.model;

import ringout.text.Span;

/** An addressed device inside a unit. */
public record HiddenDevice(
        @Doc("where it stands in the user's file") Span at,
        @Doc("what it is") String name,
        @Doc("bus port it hangs on") Datum<String> port,
        @Doc("address, decimal or 0x") Datum<String> address) {}
