package ringout.model;

/**
 * One end of a lead as the user wrote it: UNIT-PLUG, UNIT-PLUG-PIN or a joint. What it points to is found against the
 * units aboard, so that a loose end is a finding and not an unreadable file.
 *
 * @param text the end as written
 */
public record End(String text) {
    @Override
    public String toString() {
        return text;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || (other instanceof End that && text.equals(that.text));
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }
}
