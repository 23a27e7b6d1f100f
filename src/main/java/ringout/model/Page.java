package ringout.model;

import ringout.text.Span;

/** A printed page of the document pack. */
public record Page(
        @Doc("where it stands in the user's file") Span at,
        @Doc("page or sheet") String title,
        @Doc("check code printed on it") Datum<String> hash,
        @Doc("revision printed on it") Datum<String> revision) {}
