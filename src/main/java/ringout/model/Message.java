package ringout.model;

import ringout.text.Span;

/** A message on a bus. */
public record Message(
        @Doc("where it stands in the user's file") Span at,
        @Doc("what it says") String name,
        @Doc("bus") Datum<String> bus,
        @Doc("unit that sends it") Datum<String> sender,
        @Doc("data bytes") Datum<Integer> bytes,
        @Doc("29-bit identifier") Datum<Boolean> extended,
        @Doc("priority, 0 highest") Datum<Integer> priority,
        @Doc("period") Datum<Double> periodMs,
        @Doc("release jitter") Datum<Double> jitterMs,
        @Doc("deadline") Datum<Double> deadlineMs) {}
