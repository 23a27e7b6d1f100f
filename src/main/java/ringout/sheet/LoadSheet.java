package ringout.sheet;

import java.util.List;

/**
 * Electrical loads: every rail with what it must give and may give, the packs, and how long they last.
 *
 * @param aircraft its name
 * @param state the state it is in
 * @param rails packs first, then regulators and outputs
 * @param packs every pack that gives something
 * @param boards voltage at boards and inputs that packs feed
 * @param lasting endurance, one for packs that empty together
 * @param unfed loads aboard that no power reaches
 * @param open why something is not told, and what had to be assumed
 */
public record LoadSheet(
        String aircraft,
        String state,
        List<LoadRail> rails,
        List<PackLine> packs,
        List<BoardLine> boards,
        List<Lasting> lasting,
        List<String> unfed,
        List<String> open) {
    /** Keeps unmodifiable copies. */
    public LoadSheet {
        rails = List.copyOf(rails);
        packs = List.copyOf(packs);
        boards = List.copyOf(boards);
        lasting = List.copyOf(lasting);
        unfed = List.copyOf(unfed);
        open = List.copyOf(open);
    }
}
