package ringout.sheet.document;

import java.util.List;

/**
 * One document of a pack.
 *
 * @param kind for a file or a bookmark: lower case, words joined by a dash
 * @param title as a person calls it
 * @param mark what ties each of its pages to the aircraft and its data
 * @param sheet its number in the pack, from 1
 * @param of number of documents in the pack
 * @param form how its pages lie
 * @param foot the caution that stands at the foot of each of its pages; empty when none applies
 * @param sections its contents
 */
public record Document(
        String kind,
        String title,
        RevisionMark mark,
        int sheet,
        int of,
        Form form,
        String foot,
        List<Section> sections) {
    /** How the pages lie. */
    public enum Form {
        /** Higher than wide. */
        PORTRAIT,
        /** Wider than high. */
        LANDSCAPE,
        /** Nothing but figures, each a page of its own in its own size, with frame and title block. */
        DRAWINGS
    }

    /** Keeps its own copy. */
    public Document {
        sections = List.copyOf(sections);
    }

    /** {@return the same document with its place in a pack} */
    public Document numbered(int number, int all) {
        return new Document(kind, title, mark, number, all, form, foot, sections);
    }

    /** {@return all its figures, in order} */
    public List<Figure> figures() {
        return sections.stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Figure.class::isInstance)
                .map(Figure.class::cast)
                .toList();
    }

    /** {@return all its tables, in order} */
    public List<Table> tables() {
        return sections.stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .toList();
    }
}
