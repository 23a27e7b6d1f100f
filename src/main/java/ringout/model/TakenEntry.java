package ringout.model;

import java.util.List;
import ringout.text.Span;

/** One thing written on a page: a tick, a reading, a signature, a photo or a note. */
public record TakenEntry(
        @Doc("where it stands in the user's file") Span at,
        @Doc("tick, reading, signature, photo or note") String kind,

        @Doc("what it is about: the lead of a tick, the pins of a reading, the item of a signature, photo or note")
        String item,

        @Doc("tick: from or to, or the plug it was ticked at")
        Datum<String> end,

        @Doc("tick: made, plugged, rung out, inspected") Datum<String> what,
        @Doc("reading: ohm, V, A") Datum<String> quantity,
        @Doc("reading: state of the aircraft") Datum<String> state,
        @Doc("reading: plugs pulled") List<String> pulled,
        @Doc("reading: the value") Datum<Double> value,
        @Doc("reading: instrument") Datum<String> instrument,
        @Doc("signature: made, inspected, released") Datum<String> role,
        @Doc("signature: page it was signed on") Datum<String> page,
        @Doc("photo: file") Datum<String> file,
        @Doc("photo: hash of the file, SHA-256") Datum<String> hash,

        @Doc("the remark; of a tick or a reading a remark beside it")
        Datum<String> text,

        @Doc("who") Datum<String> by,
        @Doc("when, YYYY-MM-DD") Datum<String> date) {}
