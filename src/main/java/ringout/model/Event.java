package ringout.model;

import java.util.List;
import ringout.text.Span;

/** Loads that peak together. */
public record Event(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name of the event") String name,
        @Doc("loads in it") List<EventLoad> loads) {
    // Its name is enough to tell it from the others, and much quicker than all its fields.
    @Override
    public int hashCode() {
        return name.hashCode();
    }
}
