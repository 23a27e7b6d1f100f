package ringout.sheet.pack;

import java.util.List;
import ringout.sheet.document.Figure;

/**
 * Drawings that belong into the pack, drawn by the caller.
 *
 * @param maps of motors and surfaces
 * @param leads of made-up leads
 * @param faces of plugs
 */
public record Plates(List<Figure> maps, List<Figure> leads, List<Figure> faces) {
    /** No drawings. */
    public static final Plates NONE = new Plates(List.of(), List.of(), List.of());

    /** Keeps its own copies. */
    public Plates {
        maps = List.copyOf(maps);
        leads = List.copyOf(leads);
        faces = List.copyOf(faces);
    }
}
