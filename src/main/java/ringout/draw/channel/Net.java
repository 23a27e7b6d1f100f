package ringout.draw.channel;

/**
 * One net of a channel.
 *
 * @param link number of the wire it belongs to
 * @param leftA whether its first terminal is on the left edge
 * @param a height of its first terminal, steps
 * @param leftB whether its second terminal is on the left edge
 * @param b height of its second terminal, steps
 */
public record Net(int link, boolean leftA, int a, boolean leftB, int b) {
    /** {@return whether it crosses the channel without a turn} */
    public boolean straight() {
        return a == b && leftA != leftB;
    }

    /** {@return the upper end of its vertical piece} */
    public int top() {
        return Math.min(a, b);
    }

    /** {@return the lower end of its vertical piece} */
    public int bottom() {
        return Math.max(a, b);
    }

    /** {@return whether a height lies strictly within its vertical piece} */
    boolean spans(int height) {
        return height > top() && height < bottom();
    }

    /** {@return whether a height is that of one of its terminals} */
    boolean ends(int height) {
        return height == a || height == b;
    }

    /** {@return whether the vertical pieces of both may not share a track} */
    boolean touches(Net other) {
        return top() <= other.bottom() && other.top() <= bottom();
    }
}
