package ringout.finding;

import ringout.text.Span;

/**
 * A row of the user's list a finding points to.
 *
 * @param span where it stands
 * @param row its identity in the list: lead, unit, type
 * @param words the row in words: {@code W68: LOG-C2 to GMC-C1}
 */
public record Place(Span span, String row, String words) {
    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Place that
                        && span.equals(that.span)
                        && row.equals(that.row)
                        && words.equals(that.words));
    }

    @Override
    public int hashCode() {
        return 31 * span.hashCode() + row.hashCode();
    }
}
