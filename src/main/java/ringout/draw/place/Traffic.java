package ringout.draw.place;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.Link;
import ringout.draw.form.Tap;

/** Which slots the links join, channel by channel. */
final class Traffic {
    /**
     * One end of a piece of a link in a channel.
     *
     * @param slot the node or pass
     * @param offset steps from the slot's height to the line
     * @param leftEdge whether the slot stands left of the channel
     */
    record Terminal(int slot, int offset, boolean leftEdge) {}

    /** The piece of a link in one channel. */
    record Piece(int link, Terminal a, Terminal b) {}

    final List<List<Piece>> channels;

    private Traffic(int columns) {
        channels = new ArrayList<>();
        for (int c = 0; c <= columns; c++) {
            channels.add(new ArrayList<>());
        }
    }

    static Traffic of(Arrangement state, Shape shape) {
        Traffic traffic = new Traffic(state.columns);
        for (Link link : state.forms.links()) {
            if (!link.flagged()) {
                traffic.add(state, shape, link);
            }
        }
        return traffic;
    }

    private void add(Arrangement state, Shape shape, Link link) {
        Tap from = state.forms.taps().get(link.from());
        Tap to = state.forms.taps().get(link.to());
        int channel = state.channelOf(from);
        Terminal last = new Terminal(from.node(), shape.tapLine[from.index()], state.right[from.group()]);
        for (int column : state.passedColumns(link)) {
            int slot = state.pass(link.index(), column);
            boolean rightwards = column == channel;
            channels.get(channel).add(new Piece(link.index(), last, new Terminal(slot, 0, !rightwards)));
            last = new Terminal(slot, 0, rightwards);
            channel = rightwards ? column + 1 : column;
        }
        Terminal end = new Terminal(to.node(), shape.tapLine[to.index()], state.right[to.group()]);
        channels.get(channel).add(new Piece(link.index(), last, end));
    }
}
